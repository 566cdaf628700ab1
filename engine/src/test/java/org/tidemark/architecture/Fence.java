package org.tidemark.architecture;

import com.tngtech.archunit.lang.ArchRule;

/** One rule of the house under a short name. */
public record Fence(String name, ArchRule rule) {
  @Override
  public String toString() {
    return name;
  }
}

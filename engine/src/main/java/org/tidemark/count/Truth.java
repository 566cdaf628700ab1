package org.tidemark.count;

import java.util.List;

/** Whether something is so, as far as is known. */
enum Truth {
  NO,
  MAYBE,
  YES;

  static Truth of(boolean mayBe, boolean mayNotBe) {
    if (mayBe && mayNotBe) {
      return MAYBE;
    }
    return mayBe ? YES : NO;
  }

  Truth and(Truth other) {
    return compareTo(other) <= 0 ? this : other;
  }

  Truth or(Truth other) {
    return compareTo(other) >= 0 ? this : other;
  }

  Truth not() {
    return switch (this) {
      case NO -> YES;
      case MAYBE -> MAYBE;
      case YES -> NO;
    };
  }

  static Truth all(List<Truth> parts) {
    return parts.stream().reduce(YES, Truth::and);
  }

  static Truth any(List<Truth> parts) {
    return parts.stream().reduce(NO, Truth::or);
  }
}

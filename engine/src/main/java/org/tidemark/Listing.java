package org.tidemark;

import java.util.List;
import org.tidemark.model.Header;
import org.tidemark.source.Diagnostic;

/**
 * The policies that can be named.
 *
 * @param policies the headers of the sound ones, those of the folders first
 * @param problems what is wrong with the others; empty if there are none
 * @param remarks what is remarked on the sound ones, also what was accepted; each once
 */
public record Listing(List<Header> policies, List<Diagnostic> problems, List<Diagnostic> remarks) {
  public Listing {
    policies = List.copyOf(policies);
    problems = List.copyOf(problems);
    remarks = List.copyOf(remarks);
  }
}

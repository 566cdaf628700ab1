package org.tidemark.layer;

import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import org.tidemark.model.Contact;
import org.tidemark.model.Hours;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Problems;

/** Somebody can be reached at any hour: whoever is called, the chain of stand-ins ends there. */
final class ContactChecks {
  private final EffectivePolicy policy;
  private final Problems problems;

  ContactChecks(EffectivePolicy policy, Problems problems) {
    this.policy = policy;
    this.problems = problems;
  }

  void check() {
    policy.care().contacts().forEach(this::check);
  }

  private void check(Contact first) {
    Set<String> passed = new LinkedHashSet<>();
    BitSet reached = new BitSet(Hours.WEEK);
    Contact last = first;
    while (!last.isAlwaysThere() && passed.add(last.name())) {
      last.hours().ifPresent(h -> reached.or(h.minutes()));
      Optional<Contact> next = last.otherwise().flatMap(policy::contact);
      if (next.isEmpty()) {
        hole(first, last, reached);
        return;
      }
      last = next.get();
    }
    boolean somebody = last.isAlwaysThere() || reached.cardinality() == Hours.WEEK;
    if (!somebody && last.name().equals(first.name())) {
      round(first, passed, reached);
    }
  }

  /** Said at the contact that has no stand-in, once, and not at each that leads to it. */
  private void hole(Contact first, Contact last, BitSet reached) {
    if (first.name().equals(last.name())) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.CONTACT_CHAIN,
                  last.place().span(),
                  "nobody is called when `"
                      + last.name()
                      + "` is not there"
                      + forExample(first, reached))
              .help("add `else` with another contact, or write when: Always"));
    }
  }

  private void round(Contact first, Set<String> passed, BitSet reached) {
    problems.add(
        Diagnostic.error(
                DiagnosticCode.CONTACT_CHAIN,
                first.place().span(),
                "`else` leads from `"
                    + first.name()
                    + "` back to it"
                    + byWayOf(first, passed)
                    + ", and nobody on that way is always there"
                    + forExample(first, reached))
            .help("let the last `else` lead to a contact with when: Always"));
  }

  private static String byWayOf(Contact first, Set<String> passed) {
    Set<String> others = new LinkedHashSet<>(passed);
    others.remove(first.name());
    return others.isEmpty() ? "" : ", by way of `" + String.join("`, `", others) + "`";
  }

  /** The first minute of the week without anybody, where hours are given as data. */
  private static String forExample(Contact first, BitSet reached) {
    return first.hours().isEmpty()
        ? ""
        : "; for example on " + Hours.moment(reached.nextClearBit(0));
  }
}

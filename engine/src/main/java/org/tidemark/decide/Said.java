package org.tidemark.decide;

import java.util.List;
import java.util.Optional;
import org.tidemark.model.Contact;

/**
 * What one rule has to say, with the policy's numbers in it.
 *
 * @param reason why it fires
 * @param withoutForce the same where something sets it aside
 * @param next what to do next
 * @param call whom to call, the stand-in behind the one that it stands in for
 * @param caution what may still be so where it allows
 */
record Said(
    Reason reason,
    Reason withoutForce,
    List<String> next,
    List<Contact> call,
    Optional<String> caution) {
  Said {
    next = List.copyOf(next);
    call = List.copyOf(call);
  }
}

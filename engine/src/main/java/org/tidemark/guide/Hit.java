package org.tidemark.guide;

import java.util.List;
import java.util.Optional;
import org.tidemark.source.Span;

/**
 * An article that answers, cited: which policy, which edition, which article, which place in it.
 *
 * @param article its id
 * @param title its title
 * @param section the heading over the snippet; empty when it stands before the first heading
 * @param snippet the sentence that fits best
 * @param policy the policy whose values stand in the text
 * @param edition the policy's edition
 * @param origin the collection that the article comes from
 * @param place where the article was written
 * @param actNow whether minutes count
 * @param pointer whether it only points elsewhere
 * @param atThisNumber what the policy says at the number that was typed
 * @param score how well it fits; only good for comparing hits of one search
 * @param reasons why it is here, in plain words; empty unless asked for
 */
public record Hit(
    String article,
    String title,
    String section,
    Snippet snippet,
    String policy,
    String edition,
    String origin,
    Span place,
    boolean actNow,
    boolean pointer,
    Optional<String> atThisNumber,
    double score,
    List<String> reasons) {
  public Hit {
    reasons = List.copyOf(reasons);
  }
}

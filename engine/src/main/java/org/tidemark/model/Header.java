package org.tidemark.model;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import org.tidemark.source.Place;

/**
 * What a policy is, who owns it and where it stands.
 *
 * @param name its name, as other policies and programs call it
 * @param kind what it is for
 * @param title its title
 * @param owner the hospital or body
 * @param edition counts up from 1
 * @param status where it stands in its life
 * @param approval who approved it, when and under which reference
 * @param reviewBy the day after which it is no longer current
 * @param scope whom and where it is for
 * @param buildsOn the policy below it
 * @param changed what was changed since the edition before, if that is said
 * @param clock where its clocks stand, so that hours are counted right when they change
 * @param control what those who answer for it have settled
 * @param place where it is written
 */
public record Header(
    String name,
    PolicyKind kind,
    String title,
    String owner,
    int edition,
    Status status,
    Optional<Approval> approval,
    Optional<LocalDate> reviewBy,
    Scope scope,
    Optional<String> buildsOn,
    Optional<Changed> changed,
    Optional<ZoneId> clock,
    Control control,
    Place place) {

  /**
   * A policy that says neither what was changed nor where its clocks stand, and settles nothing.
   */
  public Header(
      String name,
      PolicyKind kind,
      String title,
      String owner,
      int edition,
      Status status,
      Optional<Approval> approval,
      Optional<LocalDate> reviewBy,
      Scope scope,
      Optional<String> buildsOn,
      Place place) {
    this(
        name,
        kind,
        title,
        owner,
        edition,
        status,
        approval,
        reviewBy,
        scope,
        buildsOn,
        Optional.empty(),
        Optional.empty(),
        Control.NONE,
        place);
  }

  /**
   * An approval, by a body or role and never by a person's name.
   *
   * @param on the day
   * @param by the body or role
   * @param reference its reference
   */
  public record Approval(LocalDate on, String by, String reference) {}

  /**
   * What was changed since the edition before.
   *
   * @param why the change and its reason, in words
   * @param size how much of the staff has to learn again
   */
  public record Changed(String why, Size size) {}

  /** How large a change is. */
  public enum Size implements Worded {
    MINOR,
    RETRAIN
  }

  /** Whether the review date lies before the day. */
  public boolean reviewPassed(LocalDate today) {
    return reviewBy.isPresent() && reviewBy.get().isBefore(today);
  }
}

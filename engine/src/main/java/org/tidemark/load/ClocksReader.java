package org.tidemark.load;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tidemark.model.Lapse;
import org.tidemark.model.PolicyValue;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Located;
import org.tidemark.source.Problems;

/** Reads the clock that a lapse goes by: a length of time, or shifts. */
final class ClocksReader {
  private static final String EACH_SHIFT = "each-shift";
  private static final Set<String> UNITS = Set.of("min", "h", "days");
  private static final int MINUTES_OF_A_DAY = 24 * 60;

  private final Known known;
  private final Problems problems;

  ClocksReader(Known known, Problems problems) {
    this.known = known;
    this.problems = problems;
  }

  Optional<Lapse.Clock> read(Fields fields) {
    Optional<Located<String>> every = fields.optionalText("every");
    boolean shifts = every.map(e -> e.value().equals(EACH_SHIFT)).orElse(false);
    if (shifts) {
      return Optional.of(shifts(fields));
    }
    fields.optional("shifts").ifPresent(node -> needsEachShift(fields));
    return every.flatMap(this::every);
  }

  private void needsEachShift(Fields fields) {
    problems.add(
        Diagnostic.error(
                DiagnosticCode.WRONG_SHAPE,
                fields.key("shifts"),
                "`shifts` belongs to a lapse with `every: " + EACH_SHIFT + "`")
            .help("write `every: " + EACH_SHIFT + "`, or delete `shifts`"));
  }

  private Optional<Lapse.Clock> every(Located<String> name) {
    return value(name).filter(v -> isLength(v, name)).map(v -> new Lapse.Every(v.name()));
  }

  private Optional<PolicyValue> value(Located<String> name) {
    Optional<PolicyValue> value = known.value(name.value());
    if (value.isEmpty()) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.UNKNOWN_VALUE,
                  name.span(),
                  "no value is called `" + name.value() + "`")
              .help(Fields.suggest(name.value(), known.valueNames())));
    }
    return value;
  }

  /** One length of time that a layer above can only shorten. */
  private boolean isLength(PolicyValue value, Located<String> name) {
    boolean length = value.content() instanceof PolicyValue.Single || !value.isStated();
    if (!length || !UNITS.contains(value.unit())) {
      return wrongClock(
          name,
          "`" + name.value() + "` is not one length of time",
          "a clock goes by a value with one number in h, min or days");
    }
    if (value.number().filter(n -> n.signum() <= 0).isPresent()) {
      return wrongClock(name, "`" + name.value() + "` is no time at all", "write a longer time");
    }
    if (value.stricter().filter(s -> s == PolicyValue.Stricter.HIGHER).isPresent()) {
      return wrongClock(
          name,
          "a layer above may make `" + name.value() + "` longer, and a longer clock is looser",
          "write `stricter: lower` at the value");
    }
    return true;
  }

  private boolean wrongClock(Located<String> at, String message, String help) {
    problems.add(Diagnostic.error(DiagnosticCode.LAPSE_CLOCK, at.span(), message).help(help));
    return false;
  }

  private Lapse.Clock shifts(Fields fields) {
    List<Located<String>> names = fields.someTexts("shifts");
    List<PolicyValue.Window> windows = new ArrayList<>();
    for (Located<String> name : names) {
      value(name).ifPresent(v -> window(v, name).ifPresent(windows::add));
    }
    if (windows.size() == names.size() && !names.isEmpty()) {
      fit(windows, fields);
    }
    return new Lapse.EachShift(names.stream().map(Located::value).toList());
  }

  private Optional<PolicyValue.Window> window(PolicyValue value, Located<String> name) {
    if (value.content() instanceof PolicyValue.Window window) {
      return Optional.of(window);
    }
    wrongClock(
        name,
        "`" + name.value() + "` has no hours",
        "a shift is a value with `from` and `until`, such as {from: \"07:00\", until: \"19:00\"}");
    return Optional.empty();
  }

  /** Each minute of the day should belong to one shift. */
  private void fit(List<PolicyValue.Window> windows, Fields fields) {
    int[] shifts = new int[MINUTES_OF_A_DAY];
    for (PolicyValue.Window window : windows) {
      int until = minute(window.until());
      for (int m = minute(window.from()); m != until; m = (m + 1) % MINUTES_OF_A_DAY) {
        shifts[m]++;
      }
    }
    for (int m = 0; m < MINUTES_OF_A_DAY; m++) {
      if (shifts[m] != 1) {
        problems.add(doNotFit(fields, m, shifts[m]));
        return;
      }
    }
  }

  private static int minute(java.time.LocalTime time) {
    return time.getHour() * 60 + time.getMinute();
  }

  private static Diagnostic doNotFit(Fields fields, int minute, int shifts) {
    String time = java.time.LocalTime.of(minute / 60, minute % 60).toString();
    return Diagnostic.warning(
            DiagnosticCode.SHIFTS_DO_NOT_FIT,
            fields.key("shifts"),
            time + (shifts == 0 ? " belongs to no shift" : " belongs to two shifts"))
        .help("let each shift begin where the one before it ends; `until` no longer belongs to it");
  }
}

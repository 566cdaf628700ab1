package org.tidemark.load;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.tidemark.model.Contact;
import org.tidemark.model.Hours;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Located;
import org.tidemark.source.Place;
import org.tidemark.source.Problems;
import org.tidemark.source.Typed;
import org.tidemark.yaml.YamlMap;
import org.tidemark.yaml.YamlNode;

/** Reads whom to call: the role, its hours, and the number as it is dialled. */
final class ContactReader {
  private static final List<String> DAYS =
      Arrays.stream(DayOfWeek.values()).map(d -> d.name().toLowerCase(Locale.ROOT)).toList();

  private final Problems problems;

  ContactReader(Problems problems) {
    this.problems = problems;
  }

  Contact read(YamlMap.Entry entry, Fields fields, Optional<String> otherwise) {
    String who = fields.text("who").value();
    Optional<Located<String>> number = fields.optionalText("number");
    number.filter(n -> n.value().chars().noneMatch(Character::isDigit)).ifPresent(this::noDigit);
    Optional<Hours> hours = fields.optional("hours").flatMap(this::hours);
    String when = fields.has("hours") ? bothOrOne(fields, hours) : fields.text("when").value();
    return new Contact(
        entry.key().text(),
        number.map(n -> who + ", " + n.value()).orElse(who),
        when,
        hours,
        otherwise,
        Place.at(entry.key().span()));
  }

  private String bothOrOne(Fields fields, Optional<Hours> hours) {
    fields
        .optionalText("when")
        .ifPresent(
            when ->
                problems.add(
                    Diagnostic.error(
                            DiagnosticCode.UNKNOWN_KEY,
                            fields.key("when"),
                            "`when` says the same as `hours` a second time")
                        .help("delete one of the two; `hours` can be reckoned with")));
    return hours.map(Hours::words).orElse("");
  }

  private void noDigit(Located<String> number) {
    problems.add(
        Diagnostic.error(
                DiagnosticCode.NO_DIGIT,
                number.span(),
                Typed.shown(number.value()) + " is no number to call")
            .help("write it as it is dialled, such as: bleep 0412; in quotes if it has a hash"));
  }

  private Optional<Hours> hours(YamlNode node) {
    Fields fields = Fields.of(node, "`hours`", problems);
    List<DayOfWeek> days = days(fields);
    Optional<LocalTime> from = fields.requiredText("from").flatMap(t -> Scalars.time(t, problems));
    Optional<LocalTime> until =
        fields.requiredText("until").flatMap(t -> Scalars.time(t, problems));
    fields.done();
    if (from.isEmpty() || until.isEmpty() || days.isEmpty()) {
      return Optional.empty();
    }
    if (from.get().equals(until.get())) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.CANNOT_HOLD,
                  node.span(),
                  "these hours end in the minute in which they begin")
              .help("for somebody who is always there write when: Always in place of `hours`"));
    }
    return Optional.of(new Hours(days, from.get(), until.get()));
  }

  private List<DayOfWeek> days(Fields fields) {
    if (!fields.has("days")) {
      return List.of(DayOfWeek.values());
    }
    List<DayOfWeek> days = new ArrayList<>();
    for (Located<String> day : fields.someTexts("days")) {
      if (DAYS.contains(day.value())) {
        days.add(DayOfWeek.of(DAYS.indexOf(day.value()) + 1));
      } else {
        fields.unknownWord(day, DAYS, "`days`");
      }
    }
    return days;
  }
}

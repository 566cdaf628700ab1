package org.tidemark.cli.options;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** The day that review dates are held against. */
public final class Today {
  @Option(
      names = "--today",
      paramLabel = "DATE",
      converter = Day.class,
      description = "The day to hold review dates against, such as 2026-11-25. Without it: today.")
  private @Nullable LocalDate day;

  public LocalDate day() {
    return day == null ? LocalDate.now(Clock.system(ZoneId.systemDefault())) : day;
  }

  /** Reads year-month-day and nothing else. */
  static final class Day implements ITypeConverter<LocalDate> {
    @Override
    public LocalDate convert(String text) {
      try {
        return LocalDate.parse(text);
      } catch (DateTimeParseException notADay) {
        throw new TypeConversionException(
            "`" + text + "` is not a day; write year-month-day, such as 2026-11-25");
      }
    }
  }
}

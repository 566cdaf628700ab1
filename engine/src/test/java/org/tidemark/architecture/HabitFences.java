package org.tidemark.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_THROW_GENERIC_EXCEPTIONS;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.List;
import org.jspecify.annotations.NullMarked;

/** Habits that hold in every module. */
final class HabitFences {
  private static final List<String> STREAMS =
      List.of(
          "*#printStackTrace()",
          "java.lang.System#setOut(*)",
          "java.lang.System#setErr(*)",
          "java.lang.System#setIn(*)",
          "java.lang.System#exit(*)",
          "java.lang.Runtime#exit(*)",
          "java.lang.Runtime#halt(*)");

  private HabitFences() {}

  /** The habits; {@code door} is the one class that may touch the process's own streams. */
  static List<Fence> of(String door) {
    return List.of(
        new Fence(
            "no standard streams",
            classes()
                .that()
                .doNotHaveFullyQualifiedName(door)
                .should(new StreamsUntouched())
                .andShould(new Untouched(STREAMS))
                .because("one class owns the streams and the exit; all others are handed writers")),
        new Fence(
            "no bare exceptions",
            NO_CLASSES_SHOULD_THROW_GENERIC_EXCEPTIONS.because(
                "an error says what went wrong by its own name")),
        new Fence(
            "sealed types end in records or enums",
            classes()
                .that(Sealed.LEAF)
                .should()
                .beRecords()
                .orShould()
                .beEnums()
                .allowEmptyShould(true)
                .because("a closed set of meanings is made of values")),
        new Fence(
            "packages say what they are for",
            classes()
                .should(new LieInMarkedPackage())
                .because("each package has a package-info with one sentence and @NullMarked")));
  }

  private static final class StreamsUntouched extends ArchCondition<JavaClass> {
    StreamsUntouched() {
      super("not touch System.in, System.out or System.err");
    }

    @Override
    public void check(JavaClass item, ConditionEvents events) {
      item.getFieldAccessesFromSelf().stream()
          .filter(a -> a.getTargetOwner().isEquivalentTo(System.class))
          .forEach(a -> events.add(SimpleConditionEvent.violated(a, a.getDescription())));
    }
  }

  private static final class LieInMarkedPackage extends ArchCondition<JavaClass> {
    LieInMarkedPackage() {
      super("lie in a package whose package-info says @NullMarked");
    }

    @Override
    public void check(JavaClass item, ConditionEvents events) {
      if (!item.getPackage().isAnnotatedWith(NullMarked.class)) {
        events.add(
            SimpleConditionEvent.violated(
                item, item.getPackageName() + " is not @NullMarked, seen from " + item.getName()));
      }
    }
  }
}

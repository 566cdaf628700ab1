package org.tidemark.architecture;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnitAccess;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A class that touches none of some classes and makes none of some calls. */
final class Untouched extends ArchCondition<JavaClass> {
  private final List<Pattern> classes;
  private final List<Pattern> calls;

  Untouched(List<String> words) {
    super("touch none of " + String.join(", ", words));
    this.classes = patterns(words.stream().filter(w -> !w.contains("#")).toList());
    this.calls = patterns(words.stream().filter(w -> w.contains("#")).toList());
  }

  private static List<Pattern> patterns(List<String> words) {
    return words.stream().map(w -> Pattern.compile(regex(w))).toList();
  }

  private static String regex(String word) {
    return "\\Q" + word.replace("*", "\\E.*\\Q") + "\\E";
  }

  @Override
  public void check(JavaClass item, ConditionEvents events) {
    for (Dependency use : item.getDirectDependenciesFromSelf()) {
      if (any(classes, use.getTargetClass().getBaseComponentType().getName())) {
        events.add(SimpleConditionEvent.violated(use, use.getDescription()));
      }
    }
    for (JavaCodeUnitAccess<?> call : item.getCodeUnitAccessesFromSelf()) {
      if (any(calls, signature(call))) {
        events.add(SimpleConditionEvent.violated(call, call.getDescription()));
      }
    }
  }

  private static String signature(JavaCodeUnitAccess<?> call) {
    String parameters =
        call.getTarget().getRawParameterTypes().stream()
            .map(JavaClass::getName)
            .collect(Collectors.joining(","));
    return call.getTargetOwner().getName() + "#" + call.getName() + "(" + parameters + ")";
  }

  private static boolean any(List<Pattern> patterns, String text) {
    return patterns.stream().anyMatch(p -> p.matcher(text).matches());
  }
}

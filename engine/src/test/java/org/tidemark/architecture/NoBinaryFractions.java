package org.tidemark.architecture;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.Set;
import java.util.stream.Stream;

/** A class without double or float in its fields and methods. */
final class NoBinaryFractions extends ArchCondition<JavaClass> {
  private static final Set<String> BINARY =
      Set.of("double", "float", "java.lang.Double", "java.lang.Float");

  NoBinaryFractions() {
    super("have no double or float in a field or a method's signature");
  }

  @Override
  public void check(JavaClass item, ConditionEvents events) {
    for (JavaField field : item.getFields()) {
      if (field.getAllInvolvedRawTypes().stream().anyMatch(NoBinaryFractions::binary)) {
        events.add(SimpleConditionEvent.violated(field, field.getDescription()));
      }
    }
    for (JavaCodeUnit method : item.getCodeUnits()) {
      if (involved(method).anyMatch(NoBinaryFractions::binary)) {
        events.add(SimpleConditionEvent.violated(method, method.getDescription()));
      }
    }
  }

  private static Stream<JavaClass> involved(JavaCodeUnit method) {
    return Stream.concat(
        method.getReturnType().getAllInvolvedRawTypes().stream(),
        method.getParameterTypes().stream().flatMap(t -> t.getAllInvolvedRawTypes().stream()));
  }

  private static boolean binary(JavaClass type) {
    return BINARY.contains(type.getBaseComponentType().getName());
  }
}

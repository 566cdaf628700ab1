package org.tidemark.report;

import java.util.List;
import java.util.Map;
import org.tidemark.load.Part.Between;

/** What must be so between fields, as a schema says it. */
final class SchemaLimits {
  private SchemaLimits() {}

  static Map<String, Object> of(Between limit) {
    if (limit instanceof Between.ExactlyOne one) {
      return SchemaTypes.of("oneOf", each(one.names()));
    } else if (limit instanceof Between.AtLeastOne one) {
      return SchemaTypes.of("anyOf", each(one.names()));
    } else if (limit instanceof Between.Needs needs) {
      return SchemaTypes.of(
          "dependentRequired", SchemaTypes.of(needs.name(), List.of(needs.other())));
    } else if (limit instanceof Between.Apart apart) {
      return SchemaTypes.of("not", there(apart.name(), apart.other()));
    } else if (limit instanceof Between.Alone alone) {
      return ifThen(there(alone.name()), SchemaTypes.of("maxProperties", 1));
    } else if (limit instanceof Between.When when) {
      return ifThen(holds(when.name(), when.word()), there(when.other()));
    }
    Between.OnlyWhen only = (Between.OnlyWhen) limit;
    return ifThen(there(only.other()), holds(only.name(), only.word()));
  }

  private static List<Map<String, Object>> each(List<String> names) {
    return names.stream().map(SchemaLimits::there).toList();
  }

  private static Map<String, Object> there(String... names) {
    return SchemaTypes.of("required", List.of(names));
  }

  private static Map<String, Object> holds(String name, String word) {
    return SchemaTypes.of(
        "properties",
        SchemaTypes.of(name, SchemaTypes.of("const", word)),
        "required",
        List.of(name));
  }

  private static Map<String, Object> ifThen(Object is, Object then) {
    return SchemaTypes.of("if", is, "then", then);
  }
}

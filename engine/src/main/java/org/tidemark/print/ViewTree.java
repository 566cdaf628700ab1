package org.tidemark.print;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Turns a view record into maps, lists, texts and flags, which is all that a template ever sees,
 * and describes the same to the fence. An optional part becomes a list of none or one.
 */
final class ViewTree {
  private ViewTree() {}

  static Object of(Object view) {
    if (view instanceof Record record) {
      Map<String, Object> parts = new LinkedHashMap<>();
      for (RecordComponent part : record.getClass().getRecordComponents()) {
        parts.put(part.getName(), of(value(record, part)));
      }
      return parts;
    }
    if (view instanceof List<?> list) {
      return list.stream().map(ViewTree::of).toList();
    }
    if (view instanceof Optional<?> part) {
      return part.stream().map(ViewTree::of).toList();
    }
    return view instanceof Boolean ? view : words(view);
  }

  private static String words(Object value) {
    if (value instanceof LocalDate date) {
      return CardDate.words(date);
    }
    return value instanceof CardMode mode ? mode.words() : value.toString();
  }

  private static Object value(Record record, RecordComponent part) {
    try {
      return part.getAccessor().invoke(record);
    } catch (IllegalAccessException | InvocationTargetException impossible) {
      throw new IllegalStateException("cannot read " + part, impossible);
    }
  }

  static Shape shape(Type type) {
    if (type instanceof ParameterizedType list) {
      return new Shape.ListOf(shape(list.getActualTypeArguments()[0]));
    }
    if (type instanceof Class<?> record && record.isRecord()) {
      Map<String, Shape> parts = new LinkedHashMap<>();
      for (RecordComponent part : record.getRecordComponents()) {
        parts.put(part.getName(), shape(part.getGenericType()));
      }
      return new Shape.Parts(parts);
    }
    return type.equals(boolean.class) ? Shape.Plain.FLAG : Shape.Plain.WORDS;
  }
}

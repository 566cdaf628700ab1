package org.tidemark.architecture;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import java.util.stream.Stream;

/** Which classes stand at the ends of sealed types. */
final class Sealed {
  static final DescribedPredicate<JavaClass> LEAF =
      DescribedPredicate.describe("are leaves of sealed types", Sealed::leaf);

  private Sealed() {}

  private static boolean leaf(JavaClass type) {
    Class<?> loaded = type.reflect();
    // The body of an enum's constant is a class of its own that nobody names.
    return !loaded.isSealed()
        && !loaded.isAnonymousClass()
        && parents(loaded).anyMatch(Class::isSealed);
  }

  private static Stream<Class<?>> parents(Class<?> type) {
    Stream<Class<?>> above = Stream.ofNullable(type.getSuperclass());
    return Stream.concat(above, Stream.of(type.getInterfaces()));
  }
}

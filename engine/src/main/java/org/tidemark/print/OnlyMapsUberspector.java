package org.tidemark.print;

import java.util.Iterator;
import java.util.List;
import java.util.Map;
import org.apache.velocity.util.introspection.Info;
import org.apache.velocity.util.introspection.SecureUberspector;
import org.apache.velocity.util.introspection.VelMethod;
import org.apache.velocity.util.introspection.VelPropertyGet;
import org.apache.velocity.util.introspection.VelPropertySet;
import org.jspecify.annotations.Nullable;

/**
 * The second wall behind {@link TemplateFence}: even a template that slipped through can only look
 * names up in maps and walk lists. There are no methods, no classes and nothing to set. Public
 * because Velocity makes it by its name.
 */
public final class OnlyMapsUberspector extends SecureUberspector {
  @Override
  public @Nullable Iterator<?> getIterator(Object list, Info where) {
    return list instanceof List<?> items ? items.iterator() : null;
  }

  @Override
  public @Nullable VelMethod getMethod(Object on, String name, Object[] with, Info where) {
    return null;
  }

  @Override
  public @Nullable VelPropertyGet getPropertyGet(Object on, String name, Info where) {
    return on instanceof Map<?, ?> map && map.containsKey(name) ? new Lookup(name) : null;
  }

  @Override
  public @Nullable VelPropertySet getPropertySet(Object on, String name, Object value, Info where) {
    return null;
  }

  private record Lookup(String name) implements VelPropertyGet {
    @Override
    public @Nullable Object invoke(Object on) {
      return on instanceof Map<?, ?> map ? map.get(name) : null;
    }

    @Override
    public boolean isCacheable() {
      return false;
    }

    @Override
    public String getMethodName() {
      return "get";
    }
  }
}

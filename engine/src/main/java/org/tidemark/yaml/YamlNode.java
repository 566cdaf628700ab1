package org.tidemark.yaml;

import org.tidemark.source.Span;

/**
 * A piece of YAML: named fields, a list or a text. Scalars stay text; whoever reads them knows what
 * they should be.
 */
public sealed interface YamlNode permits YamlMap, YamlList, YamlText {
  Span span();

  /** What kind of thing this is, in an author's words. */
  String kind();
}

package org.tidemark.yaml;

import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.tidemark.source.Problems;
import org.tidemark.source.Span;

/** What one pass of the parser made of the text: a tree, or how far it came. */
final class Draft {
  final Problems problems = new Problems();
  final NavigableMap<Integer, YamlText> values = new TreeMap<>();
  final NavigableMap<Integer, Span> texts = new TreeMap<>();
  Optional<YamlNode> root = Optional.empty();
  Optional<Stumble> stumble = Optional.empty();
}

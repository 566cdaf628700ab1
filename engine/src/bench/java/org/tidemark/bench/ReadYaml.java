package org.tidemark.bench;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.tidemark.source.Loaded;
import org.tidemark.source.SourceText;
import org.tidemark.yaml.YamlNode;
import org.tidemark.yaml.YamlReader;

/** A thousand lines of YAML to a tree with places. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class ReadYaml {
  private final SourceText text = SourceText.of("thousand.yaml", lines());
  private final YamlReader reader = new YamlReader();

  private static String lines() {
    StringBuilder lines = new StringBuilder();
    for (int i = 0; i < 1000; i++) {
      lines.append("name-").append(i).append(": value ").append(i).append('\n');
    }
    return lines.toString();
  }

  /** Reads the text. */
  @Benchmark
  public Loaded<YamlNode> thousandLines() {
    return reader.read(text);
  }
}

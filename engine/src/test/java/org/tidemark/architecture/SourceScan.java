package org.tidemark.architecture;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/**
 * What byte code does not show: sizes, catch clauses, local binary fractions, and the sentence of
 * each package. Reads a source tree with the compiler's own parser.
 *
 * @param methods the length of every method with a body
 * @param files the length of every file
 * @param faults each fault with its place
 */
public record SourceScan(List<Measure> methods, List<Measure> files, List<String> faults) {
  /** No method is longer. */
  public static final long LONGEST_METHOD = 60;

  /**
   * How long something is.
   *
   * @param place its file and line
   * @param lines its first to its last line, both counted
   */
  public record Measure(String place, long lines) {}

  /** Scans all Java files under a folder; a file longer than {@code longestFile} is a fault. */
  public static SourceScan of(Path root, long longestFile) {
    List<Path> paths = javaFiles(root);
    SourceScan scan = new SourceScan(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
    paths.forEach(path -> scan.measure(root, path, longestFile));
    scan.parse(root, paths);
    return scan;
  }

  /** The length that 19 of 20 stay within. */
  public static long p95(List<Measure> measures) {
    List<Long> sorted = measures.stream().map(Measure::lines).sorted().toList();
    return sorted.get((int) Math.ceil(sorted.size() * 0.95) - 1);
  }

  /** The methods over 20 lines, the longest first, each with its place. */
  public String longestMethods() {
    return methods.stream()
        .filter(m -> m.lines() > 20)
        .sorted(Comparator.comparingLong(Measure::lines).reversed())
        .map(m -> m.lines() + " lines at " + m.place())
        .collect(Collectors.joining("; "));
  }

  private void measure(Path root, Path path, long longestFile) {
    String text = read(path);
    Measure file = new Measure(name(root, path), text.lines().count());
    files.add(file);
    if (file.lines() > longestFile) {
      faults.add(file.place() + ": " + file.lines() + " lines; a file has at most " + longestFile);
    }
    if (path.endsWith("package-info.java") && !text.matches("(?s)/\\*\\* [A-Z].*\\.\\s+\\*/.*")) {
      faults.add(file.place() + ": no sentence says what the package is for");
    }
  }

  private void parse(Path root, List<Path> paths) {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    try (StandardJavaFileManager manager =
        compiler.getStandardFileManager(null, Locale.ROOT, StandardCharsets.UTF_8)) {
      JavacTask task =
          (JavacTask)
              compiler.getTask(
                  null, manager, null, null, null, manager.getJavaFileObjectsFromPaths(paths));
      SourcePositions positions = Trees.instance(task).getSourcePositions();
      for (CompilationUnitTree unit : task.parse()) {
        String name = name(root, Path.of(unit.getSourceFile().getName()));
        new SourceVisitor(unit, positions, name, this).scan(unit, null);
      }
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static String name(Path root, Path path) {
    return root.relativize(path).toString().replace('\\', '/');
  }

  private static List<Path> javaFiles(Path root) {
    try (Stream<Path> walk = Files.walk(root)) {
      return walk.filter(p -> p.toString().endsWith(".java")).sorted().toList();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static String read(Path path) {
    try {
      return Files.readString(path, StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}

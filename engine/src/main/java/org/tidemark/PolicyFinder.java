package org.tidemark;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tidemark.source.Loaded;
import org.tidemark.yaml.YamlNode;
import org.tidemark.yaml.YamlReader;

/** Finds a policy's file: where a path says, beside another policy, in a folder, or shipped. */
final class PolicyFinder {
  private static final String FILE = "policy.yaml";

  private final Resources resources;
  private final List<Path> folders;

  PolicyFinder(Resources resources, List<Path> folders) {
    this.resources = resources;
    this.folders = List.copyOf(folders);
  }

  /** The policy that a person names or points at; empty if nothing of that name is known. */
  Optional<Loaded<Copy>> asked(String nameOrPath) {
    if (!isName(nameOrPath)) {
      return Optional.of(at(Path.of(nameOrPath)));
    }
    Optional<Loaded<Copy>> named = named(nameOrPath, folders);
    return named.isEmpty() && Files.exists(Path.of(nameOrPath))
        ? Optional.of(at(Path.of(nameOrPath)))
        : named;
  }

  /** The policy that another one builds on: beside it, then in the folders, then shipped. */
  Optional<Loaded<Copy>> below(Copy above, String name) {
    if (!isName(name)) {
      return Optional.empty();
    }
    List<Path> places = new ArrayList<>();
    above
        .file()
        .map(Path::toAbsolutePath)
        .map(Path::getParent)
        .ifPresent(folder -> beside(folder, places));
    if (!above.shipped()) {
      places.addAll(folders);
    }
    return named(name, places);
  }

  private static void beside(Path folder, List<Path> places) {
    places.add(folder);
    Optional.ofNullable(folder.getParent()).ifPresent(places::add);
  }

  /** Names are also folder names, so nothing in one may lead elsewhere. */
  static boolean isName(String text) {
    return !text.isEmpty()
        && text.chars().allMatch(c -> (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-');
  }

  private Optional<Loaded<Copy>> named(String name, List<Path> places) {
    for (Path place : places) {
      Path file = place.resolve(name).resolve(FILE);
      if (Files.isRegularFile(file)) {
        return Optional.of(at(file));
      }
    }
    String shipped = "policies/" + name + "/" + FILE;
    return resources.has(shipped)
        ? Optional.of(copy(resources.read(shipped), Optional.empty()))
        : Optional.empty();
  }

  private static Loaded<Copy> at(Path path) {
    Path file = Files.isDirectory(path) ? path.resolve(FILE) : path;
    return copy(new YamlReader().read(file), Optional.of(file));
  }

  private static Loaded<Copy> copy(Loaded<YamlNode> read, Optional<Path> file) {
    return read.match(
        tree -> Loaded.good(new Copy(tree, file), read.diagnostics()), Loaded::broken);
  }

  /** The names in the folders, in the order of the folders and then of the alphabet. */
  List<Path> inFolders() {
    List<Path> all = new ArrayList<>();
    folders.forEach(folder -> all.addAll(Folders.within(folder, FILE)));
    return all;
  }
}

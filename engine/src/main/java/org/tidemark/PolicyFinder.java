package org.tidemark;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tidemark.load.PolicyLoader;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.Loaded;
import org.tidemark.source.Located;

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
    List<Loaded<Copy>> found = new ArrayList<>();
    places.stream()
        .map(place -> place.resolve(name).resolve(FILE).toAbsolutePath().normalize())
        .distinct()
        .filter(Files::isRegularFile)
        .forEach(file -> found.add(Copy.at(file)));
    String shipped = place(name);
    if (resources.has(shipped)) {
      found.add(resources.text(shipped).match(Copy::shipped, Loaded::broken));
    }
    return found.isEmpty() ? Optional.empty() : Optional.of(OneOwner.of(name, found));
  }

  /** A file may bear the name of a shipped policy, since it was asked for by its own path. */
  private Loaded<Copy> at(Path path) {
    Loaded<Copy> read = Copy.at(Files.isDirectory(path) ? path.resolve(FILE) : path);
    return read.match(
        copy -> Loaded.good(copy, OneOwner.namesake(copy, shippedNamesake(copy)).stream().toList()),
        Loaded::broken);
  }

  private Optional<Copy> shippedNamesake(Copy copy) {
    return PolicyLoader.named(copy.tree())
        .map(Located::value)
        .filter(PolicyFinder::isName)
        .map(PolicyFinder::place)
        .filter(resources::has)
        .flatMap(
            place ->
                resources
                    .text(place)
                    .match(Copy::shipped, Loaded::<Copy>broken)
                    .match(Optional::of, broken -> Optional.empty()));
  }

  private static String place(String name) {
    return "policies/" + name + "/" + FILE;
  }

  /** What is wrong with the folders themselves. */
  List<Diagnostic> unreadable() {
    return folders.stream()
        .filter(folder -> !Folders.readable(folder))
        .map(Folders::unreadable)
        .toList();
  }

  /** The names in the folders, in the order of the folders and then of the alphabet. */
  List<String> inFolders() {
    return folders.stream()
        .filter(Folders::readable)
        .flatMap(folder -> Folders.within(folder, FILE).stream())
        .map(child -> child.getFileName().toString())
        .toList();
  }

  /** One that the folders or the shipped list have. */
  Loaded<Copy> listed(String name) {
    return named(name, folders).orElseThrow();
  }
}

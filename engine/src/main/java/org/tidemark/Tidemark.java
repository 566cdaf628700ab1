package org.tidemark;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tidemark.decide.Decider;
import org.tidemark.guide.FilledArticle;
import org.tidemark.guide.GuidanceSearch;
import org.tidemark.guide.GuidanceShelf;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.load.BibliographyLoader;
import org.tidemark.model.Bibliography;
import org.tidemark.model.Vocabulary;
import org.tidemark.print.Cards;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.Loaded;
import org.tidemark.trial.CaseFile;
import org.tidemark.trial.Trial;

/**
 * The one door for people who embed Tidemark: policies by name or path, findings, answers. Whatever
 * it reads it reads once and only when it is wanted, so that an answer does not wait for a
 * bibliography that nobody asked for.
 */
public final class Tidemark {
  private final Lazy<Loaded<Bibliography>> bibliography;
  private final PolicyShelf shelf;
  private final Resources resources;
  private final GuidanceDesk guidance;

  private Tidemark(Builder builder) {
    this.resources = new Resources(builder.classPath);
    this.bibliography =
        new Lazy<>(
            () -> resources.read("content/sources/bibliography.yaml", BibliographyLoader::load));
    this.shelf = new PolicyShelf(resources, builder.folders, bibliography);
    this.guidance = new GuidanceDesk(new GuidanceFiles(resources, builder.folders), bibliography);
  }

  /** With the policies, the vocabulary and the bibliography that are shipped, and nothing else. */
  public static Tidemark shipped() {
    return builder().build();
  }

  public static Builder builder() {
    return new Builder();
  }

  /**
   * A policy on top of the policies that it builds on, checked as a whole.
   *
   * @param nameOrPath the name of a shipped policy or of one in a folder that was given; or the
   *     path of a policy's file or of the folder that it lies in
   */
  public Loaded<EffectivePolicy> policy(String nameOrPath) {
    return shelf.policy(nameOrPath);
  }

  /** The policy that is used when none is named. */
  public Loaded<EffectivePolicy> demo() {
    return shelf.demo().match(this::policy, Loaded::broken);
  }

  /** The name of that policy. */
  public Loaded<String> demoName() {
    return shelf.demo();
  }

  /**
   * The worked cases that lie beside a policy's file, as {@code cases.yaml}.
   *
   * @param nameOrPath the policy, by name or path
   * @param policy the same, loaded: its own findings may stand in the cases
   */
  public Loaded<CaseFile> cases(String nameOrPath, EffectivePolicy policy) {
    return shelf.cases(nameOrPath, policy);
  }

  /** The worked cases in a file, in the words of a policy. */
  public Loaded<CaseFile> cases(Path file, EffectivePolicy policy) {
    return shelf.cases(file, policy);
  }

  /**
   * Writes a blank policy into a folder that does not exist yet: prompts, and no clinical value.
   *
   * @param folder its name becomes the policy's
   * @param buildsOn the policy that it builds on, or {@code nothing}
   * @return the files that were written
   */
  public Loaded<List<Path>> newPolicy(Path folder, String buildsOn) {
    return new NewPolicy(resources, this::schema).write(folder, buildsOn);
  }

  /**
   * Lays a file out: a policy, worked cases, findings, a vocabulary or a bibliography. Nothing that
   * it says changes, and no comment is lost; a file with an error in it is left as it is.
   */
  public Loaded<Tidied> tidy(Path file) {
    return new TidyDesk(shelf).tidy(file);
  }

  /** The JSON Schema of a kind of file, with the findings of the vocabulary, for editors. */
  public Loaded<String> schema(FileKind kind) {
    return vocabulary().match(words -> Loaded.good(kind.schema(words)), Loaded::broken);
  }

  /** What tries a policy on worked cases. */
  public Loaded<Trial> trial(EffectivePolicy policy) {
    return shelf.trial(policy);
  }

  /**
   * What a policy must be able to show and does not; nothing of it is printed before this is empty.
   * Loading does not wait for it, since an answer at a bedside has no time for it.
   */
  public List<Diagnostic> notProved(EffectivePolicy policy) {
    return Claims.notProved(policy);
  }

  /** All policies that can be named, and what is wrong with those that cannot be used. */
  public Listing policies() {
    return shelf.list();
  }

  /** The findings that policies speak of. */
  public Loaded<Vocabulary> vocabulary() {
    return shelf.vocabulary();
  }

  /** What every citation resolves into. */
  public Loaded<Bibliography> bibliography() {
    return bibliography.get();
  }

  /** The findings in a file, in the words of a policy. */
  public Loaded<Asked> findings(Path file, EffectivePolicy policy) {
    return Asked.read(file, policy.vocabulary());
  }

  /**
   * What answers a question of a policy at a bedside. A floor and a reading of somebody's page are
   * refused: neither was made to be answered from.
   */
  public Loaded<Decider> bedside(EffectivePolicy policy, String question) {
    return Bedside.decider(policy, question);
  }

  /**
   * The guidance with a policy's numbers in it, ready to be searched: that which is shipped, as the
   * folders change it. Read anew each time.
   */
  public Loaded<GuidanceSearch> guidance(EffectivePolicy policy) {
    return guidance.search(policy);
  }

  /**
   * The same for a program that runs on while people edit the folders. Each call reads the files
   * again; when something in them is broken, what was good for these numbers of this policy stays.
   */
  public GuidanceShelf keptGuidance(EffectivePolicy policy) {
    return guidance.shelf(policy);
  }

  /** One article of the guidance in full, with the policy's numbers in it. */
  public Loaded<FilledArticle> article(EffectivePolicy policy, String name) {
    return guidance.article(policy, name);
  }

  /** The cards of a policy; none is printed after its review date. */
  public Cards cards(EffectivePolicy policy, LocalDate today) {
    return new Cards(policy, name -> resources.text("content/cards/" + name), today);
  }

  /**
   * The sheet for those who approve a policy, as a page that stands alone.
   *
   * @param policy the policy, with what was remarked on it
   * @param earlier the edition that it takes the place of, if there is one
   * @param today the day of the sheet
   */
  public Loaded<String> signOff(
      Loaded<EffectivePolicy> policy, Optional<EffectivePolicy> earlier, LocalDate today) {
    return new SignOffDesk(shelf, bibliography, resources).page(policy, earlier, today);
  }

  /** Where everything comes from. */
  public static final class Builder {
    private final List<Path> folders = new ArrayList<>();
    private ClassLoader classPath = Tidemark.class.getClassLoader();

    private Builder() {}

    /**
     * A folder with a hospital's own policies, each in a folder of its name, and with its own
     * guidance: {@code guidance/*.md} and {@code words.yaml}.
     */
    public Builder folder(Path folder) {
      folders.add(folder);
      return this;
    }

    /** Where the shipped policies and the shipped content lie; ordinarily beside this class. */
    public Builder classPath(ClassLoader loader) {
      this.classPath = loader;
      return this;
    }

    public Tidemark build() {
      return new Tidemark(this);
    }
  }
}

package org.tidemark.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import java.util.ArrayList;
import java.util.List;

/** The rooms an answer rests on hear nothing of the machine they run on. */
final class QuietFences {
  static final List<String> QUIET = List.of("model", "layer", "decide", "prove");

  private QuietFences() {}

  static List<Fence> of(House house) {
    List<Fence> fences = new ArrayList<>();
    Tables.read("/architecture/quiet.txt")
        .forEach((name, words) -> fences.add(quiet(house, name, words)));
    fences.add(noBinaryFractions(house));
    fences.add(usualAnswers(house));
    return fences;
  }

  private static Fence quiet(House house, String name, List<String> words) {
    return new Fence(
        name,
        classes()
            .that()
            .resideInAnyPackage(house.packages(QUIET))
            .should(new Untouched(words))
            .because(
                "the same policy and findings must give the same answer on every machine, every day"));
  }

  private static Fence noBinaryFractions(House house) {
    return new Fence(
        "no double or float",
        classes()
            .that()
            .resideInAnyPackage(house.packages(QUIET))
            .should(new NoBinaryFractions())
            .because("a limit of 5.5 must mean 5.5; decimals are held at the declared step"));
  }

  private static Fence usualAnswers(House house) {
    return new Fence(
        "usual answers stay with worked cases",
        noClasses()
            .that()
            .resideOutsideOfPackages(house.packages(List.of("model", "load", "trial")))
            .should()
            .dependOnClassesThat()
            .haveFullyQualifiedName(house.base() + ".model.UsualAnswers")
            .because("no answer at a bedside may rest on what a finding usually is"));
  }
}

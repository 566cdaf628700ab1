package org.tidemark.policies;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.tidemark.model.Bibliography;
import org.tidemark.model.Finding;
import org.tidemark.model.NamedBand;
import org.tidemark.model.Policy;
import org.tidemark.model.PolicyKind;
import org.tidemark.model.PolicyValue;
import org.tidemark.model.PublishedLimits;
import org.tidemark.model.Rule;
import org.tidemark.model.Standing;
import org.tidemark.model.Tray;

/** Every policy that is shipped loads without an error, and says what its sources say. */
class ShippedPoliciesLoadTest {
  private static String number(Policy policy, String value) {
    return policy.values().stream()
        .filter(v -> v.name().equals(value))
        .findFirst()
        .flatMap(PolicyValue::number)
        .orElseThrow()
        .toPlainString();
  }

  private static List<Rule> rules(Policy policy) {
    return policy.questions().stream().flatMap(q -> q.rules().stream()).toList();
  }

  /** Source: NHS England, Enduring standards that remain valid, medical device safety. */
  @Test
  void theFloorHasTheNationalRange() {
    Policy floor = Shipped.floor();
    assertEquals(PolicyKind.FLOOR, floor.header().kind());
    assertEquals("1", number(floor, "lowest-pass"));
    assertEquals("5.5", number(floor, "ph-cut-off"));
  }

  /** Source: the same page; it names these tests as ones that must not be used. */
  @Test
  void theFloorBarsWhatThePageBars() {
    Set<String> barred = new TreeSet<>();
    Shipped.floor().barred().forEach(b -> barred.add(b.finding()));
    assertTrue(
        barred.containsAll(Set.of("air-listening", "bubbling", "strip", "calm", "aspirate-look")),
        barred::toString);
  }

  /** Source: NHS England as above, "pH 1 to 5.5"; NHS Greater Glasgow and Clyde, "6 or more". */
  @Test
  void publishedLimitsAreRead() {
    Finding ph = Shipped.words().vocabulary().require("ph");
    PublishedLimits limits = ph.published().orElseThrow();
    assertEquals("1 to 6", limits.atLeast() + " to " + limits.atMost());
    for (String source : limits.sources()) {
      assertEquals(
          Standing.READ, Shipped.bibliography().entry(source).orElseThrow().standing(), source);
    }
  }

  @Test
  void nothingRestsOnMemory() {
    Bibliography sources = Shipped.bibliography();
    Stream.of(Shipped.floor(), Shipped.hospital())
        .flatMap(p -> rules(p).stream())
        .map(Rule::backing)
        .forEach(
            backing -> {
              assertTrue(backing.standing() != Standing.FROM_MEMORY);
              backing.sources().forEach(id -> isRead(sources.entry(id), id));
            });
  }

  private static void isRead(Optional<Bibliography.Entry> entry, String id) {
    assertEquals(Optional.of(Standing.READ), entry.map(Bibliography.Entry::standing), id);
  }

  @Test
  void theHospitalIsStricterThanItsFloor() {
    Policy hospital = Shipped.hospital();
    assertEquals(Optional.of("floor-england-adult"), hospital.header().buildsOn());
    assertEquals("5", number(hospital, "ph-cut-off"));
    assertEquals("12", number(hospital, "check-every"));
  }

  @Test
  void theHospitalHasATrayForEachKindOfTube() {
    List<String> trays = Shipped.hospital().care().trays().stream().map(Tray::name).toList();
    assertEquals(List.of("fine-feeding", "wide-single", "double-sump"), trays);
  }

  /**
   * Source: Queen Alexandra Hospital, Portsmouth, Department of Critical Care, Nasogastric tubes,
   * version 3.1, 2018.
   */
  @Test
  void portsmouthNeedsTwoFindingsAtOnce() {
    Policy policy = Shipped.alone(Shipped.PORTSMOUTH);
    assertEquals("4.5", number(policy, "ph-cut-off"));
    assertEquals("10", number(policy, "least-volume"));
  }

  /** Source: Region Nordjylland, Kontrol af ernæringssonde, tolkning af pH. */
  @Test
  void nordjyllandLeavesAGapBetweenFiveAndSix() {
    List<String> open =
        Shipped.alone(Shipped.NORDJYLLAND).bands().stream()
            .filter(b -> b.notStated().isPresent())
            .map(NamedBand::name)
            .toList();
    assertEquals(List.of("gap", "under-one"), open);
  }
}

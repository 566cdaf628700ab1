package org.tidemark.print;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Header;
import org.tidemark.model.PolicyKind;
import org.tidemark.model.Scope;
import org.tidemark.model.Tray;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Loaded;
import org.tidemark.source.SourceText;
import org.tidemark.source.Suggestion;

/** The cards of one policy. */
public final class Cards {
  private static final String CHECKLIST = "before-first-use";
  private static final String TRAY = "tray-";

  private final EffectivePolicy policy;
  private final LocalDate today;
  private final CardPrinter printer;

  /**
   * The cards of a policy.
   *
   * @param policy the policy
   * @param files where pages and wordings come from
   * @param today the day, since a card of a policy past its review date is not printed
   */
  public Cards(EffectivePolicy policy, CardFiles files, LocalDate today) {
    this.policy = policy;
    this.today = today;
    this.printer = new CardPrinter(files);
  }

  /** The names of the cards that this policy has. */
  public List<String> names() {
    return Stream.concat(Stream.of(CHECKLIST), trays().map(tray -> TRAY + tray.name())).toList();
  }

  /** What a floor says of every tray is for those who write policies, and is no tray of its own. */
  private Stream<Tray> trays() {
    Set<String> floors =
        policy.layers().stream()
            .filter(layer -> layer.kind() == PolicyKind.FLOOR)
            .map(Header::name)
            .collect(Collectors.toSet());
    return policy.care().trays().stream()
        .filter(tray -> !floors.contains(tray.layer()) && !scope(tray).isEmpty());
  }

  /** Whom a tray is for, of those whom the policy is for. */
  private Scope scope(Tray tray) {
    return policy.header().scope().narrowed(tray.forWhom());
  }

  /** A card, or why it cannot be printed. */
  public Loaded<CardPage> page(String name) {
    Optional<Diagnostic> no = new StripChecks(policy, today).notPrintable();
    if (no.isPresent()) {
      return Loaded.broken(no.get());
    }
    if (name.equals(CHECKLIST)) {
      return checklist();
    }
    return trays()
        .filter(tray -> name.equals(TRAY + tray.name()))
        .findFirst()
        .map(this::tray)
        .orElseGet(() -> Loaded.broken(unknown(name)));
  }

  /**
   * What is looser than the floor is the first thing that the reader of a card must know; then that
   * a reading at a limit of the card is not enough, where readings may be off.
   */
  private List<String> banners() {
    List<String> banners = new ArrayList<>(looser());
    policy.howFarOff().forEach(far -> banners.add(far.brief()));
    return banners;
  }

  private List<String> looser() {
    List<String> names =
        policy.departed().stream().map(d -> d.departure().name().replace('-', ' ')).toList();
    return names.isEmpty()
        ? List.of()
        : List.of("Looser than its floor in: " + String.join(", ", names) + ".");
  }

  private Loaded<CardPage> checklist() {
    CardStrip strip = strip("Before first use", CHECKLIST, policy.header().scope());
    Loaded<CardView> view = printer.checklist(CHECKLIST, strip, banners(), PolicyViews.of(policy));
    return view.match(
        card ->
            done(CHECKLIST, strip, Fingerprint.of(card), printer.page(card), view.diagnostics()),
        Loaded::broken);
  }

  private Loaded<CardPage> tray(Tray tray) {
    CardStrip strip = strip("Tray: " + tray.title(), TRAY + tray.name(), scope(tray));
    TrayView view = trayView(tray, strip);
    Optional<Diagnostic> tooLong = CardFit.check(view, tray.place().span());
    return tooLong.isPresent()
        ? Loaded.broken(tooLong.get())
        : done(TRAY + tray.name(), strip, Fingerprint.of(view), printer.page(view), List.of());
  }

  private TrayView trayView(Tray tray, CardStrip strip) {
    List<String> items = tray.items().stream().map(policy::fill).toList();
    List<String> never = tray.never().stream().map(policy::fill).toList();
    List<String> said = new ArrayList<>(items);
    said.addAll(never);
    return new TrayView(
        strip, tray.title(), looser(), items, never, ShortForms.in(said), tray.backing().sources());
  }

  private static Loaded<CardPage> done(
      String name,
      CardStrip strip,
      String fingerprint,
      Loaded<String> page,
      List<Diagnostic> remarks) {
    return page.match(
        html ->
            Loaded.good(new CardPage(name, strip.card(), strip.code(), fingerprint, html), remarks),
        Loaded::broken);
  }

  private CardStrip strip(String title, String name, Scope scope) {
    return new StripChecks(policy, today)
        .strip(
            title,
            Fingerprint.letters(policy.name() + "/" + name, 3),
            new ForWhom(policy.vocabulary()).words(scope));
  }

  private Diagnostic unknown(String name) {
    SourceText typed = SourceText.of("card name", name);
    return Diagnostic.error(
            DiagnosticCode.UNKNOWN_WORD,
            typed.span(0, name.length()),
            "this policy has no card called `" + name + "`")
        .help(
            Suggestion.nearest(name, names())
                .map(near -> "did you mean `" + near + "`?")
                .orElse("it has: " + String.join(", ", names())));
  }
}

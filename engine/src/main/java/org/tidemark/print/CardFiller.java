package org.tidemark.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Loaded;
import org.tidemark.source.Located;
import org.tidemark.source.Problems;
import org.tidemark.source.Span;
import org.tidemark.source.Suggestion;

/** Makes a checklist of its wording and one policy's values, or says why it cannot. */
final class CardFiller {
  private static final int ITEMS_THAT_ARE_MANY = 10;
  private static final int ITEMS_THAT_ARE_TOO_MANY = 13;
  private static final int PAUSES = 3;
  private static final int WORDS = 12;

  private final TemplateFiller filler;
  private final PolicyView policy;
  private final Problems problems = new Problems();
  private final Set<String> sources = new TreeSet<>();
  private final List<String> said = new ArrayList<>();
  private int number;

  CardFiller(TemplateFiller filler, PolicyView policy) {
    this.filler = filler;
    this.policy = policy;
  }

  Loaded<CardView> fill(CardText card, CardStrip strip, List<String> banners) {
    if (card.pauses().size() > PAUSES) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.CARD_TOO_LONG,
                  card.pauses().get(PAUSES).heading().span(),
                  "the card has " + card.pauses().size() + " pauses")
              .help("at most " + PAUSES + " on a side; make a second card"));
    }
    List<CardView.Pause> pauses = card.pauses().stream().map(this::pause).toList();
    List<String> never = sentences(card.never());
    CardView view =
        new CardView(
            strip, card.mode(), banners, pauses, never, ShortForms.in(said), List.copyOf(sources));
    CardFit.check(view, card.title().span()).ifPresent(problems::add);
    return problems.conclude(() -> view);
  }

  private CardView.Pause pause(CardText.Part part) {
    List<CardView.Item> items = part.items().stream().flatMap(l -> items(l).stream()).toList();
    length(part, items.size());
    return new CardView.Pause(
        part.heading().value(), items, part.stop().map(bar -> stop(part.heading().span(), bar)));
  }

  private void length(CardText.Part part, int items) {
    if (items >= ITEMS_THAT_ARE_MANY) {
      String message = "the pause has " + items + " items";
      Span at = part.heading().span();
      Diagnostic many =
          items >= ITEMS_THAT_ARE_TOO_MANY
              ? Diagnostic.error(DiagnosticCode.CARD_TOO_LONG, at, message)
              : Diagnostic.warning(DiagnosticCode.CARD_TOO_LONG, at, message);
      problems.add(many.help("5 to 9 can be worked through; split the pause or the card"));
    }
  }

  private CardView.Stop stop(Span at, CardText.Bar bar) {
    List<String> call = sentences(bar.call());
    if (call.isEmpty()) {
      problems.add(
          Diagnostic.warning(DiagnosticCode.NO_CONTACT, at, "the card's stop says nobody to call")
              .help("add a contact to the policy's `fallback`"));
    }
    return new CardView.Stop(sentences(bar.goOnIf()), sentences(bar.otherwise()), call);
  }

  private List<CardView.Item> items(CardText.Line line) {
    List<CardView.Item> items = new ArrayList<>();
    Optional<CardView.Blank> blank =
        line.write().map(label -> new CardView.Blank(label, line.unit().orElse("")));
    blank.ifPresent(b -> said.add(b.label() + " " + b.unit()));
    for (String says : sentences(List.of(line))) {
      wordy(says, line.says().span());
      items.add(new CardView.Item(++number, says, blank));
    }
    return items;
  }

  private void wordy(String says, Span at) {
    int words = says.split("\\s+", -1).length;
    if (words > WORDS) {
      problems.add(
          Diagnostic.warning(
                  DiagnosticCode.CARD_WORDY, at, "the item has " + words + " words: " + says)
              .help("one action in at most " + WORDS + " words is read at a glance"));
    }
  }

  private List<String> sentences(List<CardText.Line> lines) {
    List<String> all = new ArrayList<>();
    for (CardText.Line line : lines) {
      List<String> these = line.each() ? each(line.says()) : one(line.says());
      all.addAll(these);
      if (!these.isEmpty()) {
        line.sources().forEach(source -> sources.add(source.value()));
      }
    }
    said.addAll(all);
    return all;
  }

  private List<String> each(Located<String> list) {
    List<String> items = policy.lists().get(list.value());
    if (items == null) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.TEMPLATE_NAME, list.span(), "there is no list " + list.value())
              .help(
                  Suggestion.nearest(list.value(), policy.lists().keySet())
                      .map(near -> "did you mean " + near + "?")
                      .orElse("these exist: " + String.join(", ", policy.lists().keySet()))));
      return List.of();
    }
    return items;
  }

  /** A sentence that comes out empty, since the policy does not state its value, is left out. */
  private List<String> one(Located<String> sentence) {
    String filled =
        problems.keep(filler.sentence(unquoted(sentence.span()), policy), () -> "").strip();
    return filled.isEmpty() ? List.of() : List.of(filled);
  }

  private static Span unquoted(Span span) {
    String text = span.text();
    boolean quoted =
        text.length() > 1
            && (text.startsWith("\"") || text.startsWith("'"))
            && text.charAt(0) == text.charAt(text.length() - 1);
    return quoted ? new Span(span.source(), span.start() + 1, span.end() - 1) : span;
  }
}

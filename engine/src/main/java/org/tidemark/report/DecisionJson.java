package org.tidemark.report;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.tidemark.decide.CountsAs;
import org.tidemark.decide.Decision;
import org.tidemark.decide.Grounds;
import org.tidemark.decide.Need;
import org.tidemark.decide.Reason;
import org.tidemark.model.Bibliography;
import org.tidemark.model.Worded;
import org.tidemark.source.Diagnostic;

/** An answer as JSON. Field names are fixed for good; DEVELOPERS.md lists them. */
public final class DecisionJson {
  private final Sources sources;

  private DecisionJson(Sources sources) {
    this.sources = sources;
  }

  /**
   * The answer.
   *
   * @param decision the answer
   * @param grounds what lies behind it
   * @param bibliography what citations resolve into, when it is at hand
   * @param remarks what there is to say about the files that it came from
   */
  public static String of(
      Decision decision,
      Grounds grounds,
      Optional<Bibliography> bibliography,
      List<Diagnostic> remarks) {
    DecisionJson writer = new DecisionJson(new Sources(bibliography));
    return Json.object(
        json -> {
          writer.decision(json, decision, grounds);
          json.objects("remarks", remarks, DiagnosticsJson::problem);
        });
  }

  private void decision(Json json, Decision decision, Grounds grounds) throws IOException {
    json.text("question", decision.question());
    json.text("asks", decision.asks());
    json.text("outcome", decision.outcome().word());
    json.text("word", decision.word());
    json.text("kind", decision.kind().word());
    json.flag("settled", decision.settled());
    json.texts("possible", decision.possible().stream().map(Worded::word).toList());
    json.texts("next", decision.next());
    json.objects("call", decision.call(), DecisionJson::contact);
    json.objects("reasons", decision.reasons(), this::reason);
    LeastJson.write(json, "forced-by", grounds.forcedBy());
    LeastJson.write(json, "would-proceed-if", grounds.wouldProceed());
    json.objects("does-not-count", decision.doesNotCount(), this::doesNotCount);
    json.objects("counts-as", decision.countsAs(), DecisionJson::counts);
    json.objects("ask", decision.ask(), DecisionJson::need);
    RoutesJson.write(json, grounds.routes());
    json.texts("write-down", decision.writeDown());
    json.texts("cautions", decision.cautions());
    json.object("policy", policy -> stamp(policy, decision.stamp()));
  }

  private static void contact(Json json, org.tidemark.model.Contact contact) throws IOException {
    json.text("contact", contact.name());
    json.text("who", contact.who());
    json.text("when", contact.when());
  }

  private void reason(Json json, Reason reason) throws IOException {
    json.text("rule", reason.rule());
    json.text("layer", reason.layer());
    json.text("effect", reason.effect().word());
    json.text("about", reason.about().word());
    json.text("because", reason.because());
    json.text("does-not-rule-out", reason.doesNotRuleOut());
    json.flag("set-aside", reason.setAside());
    json.text("standing", reason.standing().word());
    cited(json, reason.sources());
  }

  private void doesNotCount(Json json, org.tidemark.decide.DoesNotCount test) throws IOException {
    json.text("finding", test.finding());
    json.text("found", test.found());
    json.text("because", test.because());
    cited(json, test.sources());
  }

  private static void counts(Json json, CountsAs each) throws IOException {
    json.text("finding", each.finding());
    json.text("asks", each.asks());
    json.text("read", each.read());
    json.text("counts-as", each.counts());
    json.text("off-by", each.off());
  }

  private void cited(Json json, List<String> ids) throws IOException {
    json.objects(
        "sources",
        ids,
        (source, id) -> {
          source.text("id", id);
          source.text("publication", sources.publication(id));
        });
  }

  static void need(Json json, Need need) throws IOException {
    json.text("finding", need.finding());
    json.text("asks", need.asks());
    json.text("unit", Optional.of(need.unit()).filter(unit -> !unit.isEmpty()));
    json.objects(
        "options",
        need.options(),
        (option, o) -> {
          option.text("name", o.name());
          option.text("label", o.label());
        });
  }

  private static void stamp(Json json, org.tidemark.decide.Stamp stamp) throws IOException {
    json.text("name", stamp.policy());
    json.text("title", stamp.title());
    json.text("owner", stamp.owner());
    json.number("edition", stamp.edition());
    json.text("status", stamp.status().word());
    json.text("review-by", stamp.reviewBy().map(Object::toString));
    json.texts("built-on", stamp.builtOn());
  }
}

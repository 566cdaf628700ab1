package org.tidemark.report;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.xml.stream.XMLStreamException;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.EffectiveQuestion;
import org.tidemark.model.Days;
import org.tidemark.model.Finding;
import org.tidemark.model.Header;
import org.tidemark.print.Fingerprint;

/**
 * A policy as decision tables of the OMG's Decision Model and Notation, version 1.3, for programs
 * that read those. The tables are a copy for fully known cases: what Tidemark answers when
 * something is open has no counterpart there, and is a hold.
 *
 * @param xml the document
 * @param code a short name for exactly what the tables say
 */
public record DmnExport(String xml, String code) {
  private static final String NAMESPACE = "https://www.omg.org/spec/DMN/20191111/MODEL/";
  private static final String FEEL = "https://www.omg.org/spec/DMN/20191111/FEEL/";

  /**
   * Why a policy cannot be exported, if it cannot. A table takes each input as it is; where
   * readings may be off it would proceed on some for which the policy holds.
   */
  public static Optional<String> refused(
      EffectivePolicy policy, List<EffectiveQuestion> questions) {
    Set<String> inputs = new HashSet<>();
    graphs(policy, questions).forEach(g -> g.inputs().forEach(i -> inputs.add(i.finding().name())));
    List<String> off =
        policy.howFarOff().stream()
            .map(far -> far.finding().name())
            .filter(inputs::contains)
            .map(name -> "`" + name + "`")
            .toList();
    return off.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "Not exported: the policy says how far readings of "
                + String.join(", ", off)
                + " may be off, and a decision table takes each reading as it is.");
  }

  /** Some questions of a policy; none that {@link #refused} names a reason for. */
  public static DmnExport of(EffectivePolicy policy, List<EffectiveQuestion> questions) {
    refused(policy, questions)
        .ifPresent(
            why -> {
              throw new IllegalArgumentException(why);
            });
    List<DmnQuestion> graphs = graphs(policy, questions);
    String code = Fingerprint.of("dmn", document(policy.header(), graphs, List.of()));
    return new DmnExport(document(policy.header(), graphs, about(policy, code)), code);
  }

  private static List<DmnQuestion> graphs(
      EffectivePolicy policy, List<EffectiveQuestion> questions) {
    return questions.stream().map(q -> new DmnQuestion(policy, q)).toList();
  }

  private static String document(Header policy, List<DmnQuestion> graphs, List<String> about) {
    return Xml.document(
        xml ->
            xml.element(
                "definitions",
                definitions -> {
                  definitions.text("description", String.join("\n", about));
                  contents(definitions, graphs);
                },
                "xmlns",
                NAMESPACE,
                "expressionLanguage",
                FEEL,
                "id",
                "policy_" + policy.name(),
                "name",
                policy.name(),
                "namespace",
                "urn:tidemark:policy:" + policy.name() + ":" + policy.edition(),
                "exporter",
                "Tidemark"));
  }

  private static void contents(Xml xml, List<DmnQuestion> graphs) throws XMLStreamException {
    Map<Finding, DmnInput> inputs = new LinkedHashMap<>();
    graphs.forEach(g -> g.inputs().forEach(i -> inputs.putIfAbsent(i.finding(), i)));
    DmnTypes.write(xml);
    for (DmnInput input : inputs.values()) {
      input.types(xml);
    }
    for (DmnInput input : inputs.values()) {
      input.data(xml);
    }
    for (DmnQuestion graph : graphs) {
      graph.write(xml);
    }
  }

  private static List<String> about(EffectivePolicy policy, String code) {
    Header header = policy.header();
    List<String> below =
        policy.layers().stream().map(Header::name).filter(n -> !n.equals(header.name())).toList();
    return List.of(
        "A copy of the policy " + header.name() + ", edition " + header.edition() + ".",
        header.title() + ", " + header.owner() + ", " + header.status().word() + ".",
        below.isEmpty() ? "It stands alone." : "Built on " + String.join(", ", below) + ".",
        header
            .reviewBy()
            .map(day -> "Review by " + Days.of(day) + ". After that day nobody works by it.")
            .orElse("No review date is stated."),
        "Code of these tables: " + code + ". It changes with every word that they say.",
        "The tables are not the policy. Nobody changes them: change the policy and export again.",
        "They answer only when every input is known. Not recorded and does not apply are values;"
            + " an input that is missing, out of range, off its step or at odds with another never"
            + " proceeds.",
        "They support trained staff. Your hospital's policy and licensed practice decide.");
  }
}

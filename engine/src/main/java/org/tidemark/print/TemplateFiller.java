package org.tidemark.print;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.velocity.exception.VelocityException;
import org.apache.velocity.runtime.parser.ParseException;
import org.apache.velocity.runtime.parser.TemplateParseException;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Loaded;
import org.tidemark.source.Located;
import org.tidemark.source.Problems;
import org.tidemark.source.Span;

/** Fills the template of a guidance text with one policy's values, or says why it cannot. */
public final class TemplateFiller {
  /** No list on a page is longer; a longer one is an error and is never cut. */
  static final int LONGEST_LIST = 200;

  /** No text that goes into a template is longer. */
  static final int LONGEST_TEXT = 4000;

  /** No template is longer. */
  static final int LONGEST_TEMPLATE = 100_000;

  private final VelocityRoom room = new VelocityRoom();

  /**
   * The guidance in the given part of a file, filled with a view's values.
   *
   * @param body the template, without the file's front matter
   * @param view what it may name
   * @return Markdown, or every reason against it with its place
   */
  public Loaded<String> fill(Span body, PolicyView view) {
    return fill(body, TemplateKind.GUIDANCE, Refs.namesOf(view), tree(view), view.stated());
  }

  /** One sentence of a card, filled; plain text that a page escapes later. */
  Loaded<String> sentence(Span body, PolicyView view) {
    return fill(body, TemplateKind.SENTENCE, Refs.namesOf(view), tree(view), view.stated());
  }

  /** A page of a card, filled with a view's parts. */
  Loaded<String> page(Span body, Map<String, Shape> shapes, Map<String, Object> tree) {
    return fill(body, TemplateKind.PAGE, shapes, tree, Map.of());
  }

  private Loaded<String> fill(
      Span span,
      TemplateKind kind,
      Map<String, Shape> names,
      Map<String, Object> tree,
      Map<String, Boolean> stated) {
    Problems problems = new Problems();
    new SizeCheck(span, problems).check(tree);
    TemplateBody body = new TemplateBody(span, kind);
    if (problems.anyError() || !new SignScan(body, problems).clean()) {
      return Loaded.broken(problems.sorted());
    }
    try {
      VelocityRoom.Parsed parsed = room.parse(span.source().name(), body.text());
      Uses uses = new TemplateFence(body, kind, problems).walk(parsed.tree(), names);
      everyValueIsStated(uses.unguarded(), stated, problems);
      return problems.anyError()
          ? Loaded.broken(problems.sorted())
          : Loaded.good(TemplateBody.shown(room.fill(parsed, kind, tree)));
    } catch (ParseException unreadable) {
      return Loaded.broken(unreadable(body, unreadable));
    } catch (VelocityException failed) {
      return Loaded.broken(failed(body, "the template could not be filled"));
    } catch (StackOverflowError tooDeep) {
      return Loaded.broken(failed(body, "the template is nested too deep to be read"));
    }
  }

  private static void everyValueIsStated(
      List<Located<String>> unguarded, Map<String, Boolean> stated, Problems problems) {
    for (Located<String> use : unguarded) {
      if (!stated.getOrDefault(use.value(), false)) {
        problems.add(
            Diagnostic.error(
                    DiagnosticCode.VALUE_NOT_STATED,
                    use.span(),
                    "the policy does not state " + use.value().replace('_', '-'))
                .help("write #if($stated." + use.value() + ") ... #{else} ... #end around it"));
      }
    }
  }

  private static Diagnostic unreadable(TemplateBody body, ParseException why) {
    if (!(why instanceof TemplateParseException at) || at.getLineNumber() < 1) {
      return failed(body, "the template cannot be read");
    }
    int offset = body.offset(at.getLineNumber(), at.getColumnNumber());
    return Diagnostic.error(
            DiagnosticCode.TEMPLATE_FAILED,
            body.at(offset, offset + 1),
            "the template cannot be read from here on")
        .help("each #if and #foreach is closed by one #end, and each bracket is closed");
  }

  private static Diagnostic failed(TemplateBody body, String message) {
    return Diagnostic.error(DiagnosticCode.TEMPLATE_FAILED, body.at(0, 1), message)
        .help("look for a bracket, a quote or an #if that is left open");
  }

  private static Map<String, Object> tree(PolicyView view) {
    Map<String, Object> tree = new LinkedHashMap<>();
    tree.put("values", view.values());
    tree.put("stated", view.stated());
    tree.put("lists", view.lists());
    tree.put("policy", view.policy());
    return tree;
  }
}

package org.tidemark.print;

import java.io.StringReader;
import java.io.StringWriter;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import org.apache.velocity.Template;
import org.apache.velocity.VelocityContext;
import org.apache.velocity.app.event.EventCartridge;
import org.apache.velocity.runtime.RuntimeInstance;
import org.apache.velocity.runtime.parser.ParseException;
import org.apache.velocity.runtime.parser.node.SimpleNode;
import org.apache.velocity.runtime.resource.loader.StringResourceLoader;

/**
 * Velocity with everything taken out that guidance and cards do not need: no files, no macros, no
 * evaluation, no inclusion, strict names. It is asked to parse a text and to fill what it parsed.
 */
final class VelocityRoom {
  /** Far above every list limit: a loop that Velocity cut short would drop lines in silence. */
  private static final String MORE_LOOPS_THAN_ANY_LIST_HAS = "5000";

  private static final List<String> REMOVED =
      List.of("evaluate", "include", "parse", "define", "stop", "break", "macro");

  private final RuntimeInstance engine = new RuntimeInstance();

  VelocityRoom() {
    Properties settings = new Properties();
    settings.setProperty("introspector.uberspect.class", OnlyMapsUberspector.class.getName());
    settings.setProperty("runtime.strict_mode.enable", "true");
    settings.setProperty("runtime.strict_math", "true");
    settings.setProperty("velocimacro.inline.allow", "false");
    settings.setProperty("velocimacro.library.path", "");
    settings.setProperty("directive.foreach.max_loops", MORE_LOOPS_THAN_ANY_LIST_HAS);
    // A loader over a repository of this engine's own that stays empty: nothing can be found.
    settings.setProperty("resource.loaders", "string");
    settings.setProperty("resource.loader.string.class", StringResourceLoader.class.getName());
    settings.setProperty("resource.loader.string.repository.static", "false");
    engine.init(settings);
    REMOVED.forEach(engine::removeDirective);
  }

  /** A text, parsed; each time anew, since filling changes the tree. */
  Parsed parse(String name, String text) throws ParseException {
    Template template = new Template();
    template.setName(name);
    template.setRuntimeServices(engine);
    return new Parsed(template, engine.parse(new StringReader(text), template));
  }

  /** Fills a parsed text; every printed value goes through the kind's escape. */
  String fill(Parsed parsed, TemplateKind kind, Map<String, Object> names) {
    Template template = parsed.template();
    template.setData(parsed.tree());
    template.initDocument();
    VelocityContext context = new VelocityContext(new HashMap<>(names));
    EventCartridge handlers = new EventCartridge();
    handlers.addReferenceInsertionEventHandler(
        (where, reference, value) -> kind.escape(value.toString()));
    handlers.attachToContext(context);
    StringWriter out = new StringWriter();
    template.merge(context, out);
    return out.toString();
  }

  /**
   * A parsed text.
   *
   * @param template its holder
   * @param tree its nodes
   */
  record Parsed(Template template, SimpleNode tree) {}
}

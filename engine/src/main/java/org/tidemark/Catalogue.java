package org.tidemark;

import java.util.List;
import org.tidemark.load.Fields;
import org.tidemark.source.Loaded;
import org.tidemark.source.Located;
import org.tidemark.source.Problems;
import org.tidemark.yaml.YamlNode;

/**
 * Which policies are shipped.
 *
 * @param policies their names, the floors first
 * @param demo the one that is used when none is named
 */
record Catalogue(List<String> policies, String demo) {
  Catalogue {
    policies = List.copyOf(policies);
  }

  static Loaded<Catalogue> read(YamlNode root) {
    Problems problems = new Problems();
    Fields fields = Fields.of(root, "the catalogue", problems);
    fields.text("catalogue");
    List<String> policies = fields.texts("policies").stream().map(Located::value).toList();
    String demo = fields.text("demo").value();
    fields.done();
    return problems.conclude(() -> new Catalogue(policies, demo));
  }
}

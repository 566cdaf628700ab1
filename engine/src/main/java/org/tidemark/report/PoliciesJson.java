package org.tidemark.report;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import org.tidemark.model.Header;
import org.tidemark.source.Diagnostic;

/** The policies that there are, as JSON. */
public final class PoliciesJson {
  private PoliciesJson() {}

  /**
   * The list.
   *
   * @param policies the sound ones
   * @param problems what is wrong with the others
   * @param remarks what is remarked on the sound ones, also what was accepted
   */
  public static String of(
      List<Header> policies, List<Diagnostic> problems, List<Diagnostic> remarks, LocalDate today) {
    return Json.object(
        json -> {
          json.objects("policies", policies, (one, header) -> policy(one, header, today));
          json.objects("problems", problems, DiagnosticsJson::problem);
          json.objects("remarks", remarks, DiagnosticsJson::problem);
        });
  }

  private static void policy(Json json, Header header, LocalDate today) throws IOException {
    json.text("name", header.name());
    json.text("title", header.title());
    json.text("owner", header.owner());
    json.number("edition", header.edition());
    json.text("kind", header.kind().word());
    json.flag("answers-at-bedside", header.kind().servesBedside());
    json.texts("population", Populations.of(header));
    json.text("status", header.status().word());
    json.text("review-by", header.reviewBy().map(LocalDate::toString));
    json.flag("review-passed", header.reviewPassed(today));
    json.text("builds-on", header.buildsOn());
    json.text("approved-on", header.approval().map(a -> a.on().toString()));
    json.text("approved-by", header.approval().map(Header.Approval::by));
  }
}

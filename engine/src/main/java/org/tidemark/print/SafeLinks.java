package org.tidemark.print;

import java.util.Locale;
import java.util.regex.Pattern;
import org.commonmark.renderer.html.UrlSanitizer;

/** Lets links lead to the web, a mail or telephone address, or another article; nowhere else. */
final class SafeLinks implements UrlSanitizer {
  private static final Pattern SCHEME = Pattern.compile("(?:https?|mailto|tel):.*");
  private static final Pattern ARTICLE = Pattern.compile("[a-z0-9][a-z0-9.-]*(?:#[a-z0-9-]*)?|#.*");

  @Override
  public String sanitizeLinkUrl(String url) {
    String plain = url.strip();
    boolean known =
        SCHEME.matcher(plain.toLowerCase(Locale.ROOT)).matches()
            || ARTICLE.matcher(plain).matches();
    return known && plain.chars().noneMatch(c -> Harmless.isHidden((char) c)) ? plain : "";
  }

  @Override
  public String sanitizeImageUrl(String url) {
    return "";
  }
}

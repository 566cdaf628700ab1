package org.tidemark.print;

import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.List;
import java.util.Map;

/**
 * A short name for exactly what a card says. It is worked out from the card's words, not from the
 * page's bytes: a change of layout keeps it, a change of one number does not.
 */
public final class Fingerprint {
  /** Without the letters and digits that are mistaken for one another: 0 O, 1 I, 5 S, 8 B. */
  static final String ALPHABET = "ACDEFGHJKLMNPQRTUVWXYZ234679";

  private static final int GROUP = 4;

  private Fingerprint() {}

  public static String of(CardView card) {
    return twoGroups("checklist", ViewTree.of(card));
  }

  public static String of(TrayView tray) {
    return twoGroups("tray", ViewTree.of(tray));
  }

  static String of(SignOffView sheet) {
    return twoGroups("sign-off", ViewTree.of(sheet));
  }

  /** Of a text of some kind that is no card. */
  public static String of(String kind, String text) {
    return twoGroups(kind, text);
  }

  private static String twoGroups(String kind, Object tree) {
    StringBuilder text = new StringBuilder(kind);
    write(tree, text);
    String all = letters(text.toString(), 2 * GROUP);
    return all.substring(0, GROUP) + " " + all.substring(GROUP);
  }

  /** A number of letters that stand for a text. */
  static String letters(String text, int count) {
    BigInteger rest = new BigInteger(1, sha256(text));
    BigInteger base = BigInteger.valueOf(ALPHABET.length());
    StringBuilder letters = new StringBuilder();
    for (int i = 0; i < count; i++) {
      BigInteger[] split = rest.divideAndRemainder(base);
      letters.append(ALPHABET.charAt(split[1].intValue()));
      rest = split[0];
    }
    return letters.toString();
  }

  private static byte[] sha256(String text) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException("every Java has SHA-256", impossible);
    }
  }

  /** Each text with its length before it, so that no two trees write the same. */
  private static void write(Object tree, StringBuilder out) {
    if (tree instanceof Map<?, ?> map) {
      out.append('{');
      map.forEach(
          (name, part) -> {
            out.append(name).append('=');
            write(part, out);
          });
      out.append('}');
    } else if (tree instanceof List<?> list) {
      out.append('[');
      list.forEach(item -> write(item, out));
      out.append(']');
    } else {
      String text = tree.toString();
      out.append(text.length()).append(':').append(text);
    }
  }
}

package org.tidemark.print;

/**
 * A card, ready to print.
 *
 * @param name its name, such as {@code before-first-use}
 * @param title its title
 * @param code its short code
 * @param fingerprint the short name of exactly what it says
 * @param html the page
 */
public record CardPage(String name, String title, String code, String fingerprint, String html) {}

package org.tidemark.print;

import java.util.List;

/** The names that guidance may use whether or not a policy states them. */
final class KnownNames {
  private KnownNames() {}

  static final List<String> VALUES =
      List.of(
          "check_every",
          "drain_call_within",
          "fallback_air",
          "fallback_wait",
          "flush_medicine",
          "flush_volume",
          "hang_closed",
          "hang_opened",
          "head_up",
          "head_up_after",
          "lowest_pass",
          "night_from",
          "night_until",
          "ph_cut_off",
          "residual_limit",
          "retest_wait",
          "sample_least",
          "second_reader_above",
          "signs_contact",
          "set_change",
          "tries_limit",
          "tube_change_polyurethane",
          "tube_change_pvc");

  static final List<String> LISTS =
      List.of(
          "barred_steps",
          "fallback_call",
          "fallback_steps",
          "fallback_then",
          "never_count",
          "ph_not_enough",
          "recheck_triggers",
          "record_at_check",
          "record_at_feed",
          "record_at_passing",
          "retest_call",
          "retest_steps",
          "retest_then");

  /** A policy's name for something, as templates write it. */
  static String of(String name) {
    return name.replace('-', '_');
  }
}

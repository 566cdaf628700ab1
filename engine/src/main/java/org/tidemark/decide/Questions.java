package org.tidemark.decide;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.tidemark.model.Effect;

/**
 * Asks a compiled question about whole regions of cases: what they come to, and which rules fire in
 * all or some of them.
 */
final class Questions {
  private final CompiledQuestion compiled;
  private final int budget;
  private final Layout layout;

  Questions(CompiledQuestion compiled, int budget) {
    this.compiled = compiled;
    this.budget = budget;
    this.layout = new Layout(compiled);
  }

  static List<Box> join(List<Box> some, List<Box> more) {
    return Stream.concat(some.stream(), more.stream()).toList();
  }

  Layout layout() {
    return layout;
  }

  Outlook outlook(long[] region) {
    Possible possible = possible(region);
    return new Outlook(possible, firing(region, possible));
  }

  /**
   * Every state that a case of the region comes to. Each state is looked for among the cases that
   * dodge all that would come before it, so the search only ever gets more boxes in its way.
   */
  Possible possible(long[] region) {
    Search search = possibleCases(region);
    Map<State, long[]> cases = new EnumMap<>(State.class);
    boolean settled = in(layout.escalate(), search, State.ESCALATE, cases);
    enter(layout.escalate(), search);
    settled &= in(layout.hold(), search, State.HELD, cases);
    enter(layout.hold(), search);
    settled &= in(layout.force(), search, State.PROCEED, cases);
    enter(layout.force(), search);
    settled &= in(layout.speaks(), search, State.NOT_YET, cases);
    enter(layout.speaks(), search);
    if (note(search.look(), search, State.NOT_COVERED, cases)) {
      return new Possible(cases, settled);
    }
    return new Possible(cases, settled && cut(region, cases));
  }

  /**
   * Looks for a case that no rule takes by cutting the region, where leaving one rule after another
   * took too long.
   */
  private boolean cut(long[] region, Map<State, long[]> cases) {
    CutSplit split = CutSplit.in(compiled.withSwitches(region), layout.obstacles(), budget);
    if (split.result() == Search.Result.FOUND) {
      cases.put(State.NOT_COVERED, split.witness());
    }
    return split.result() != Search.Result.UNDECIDED;
  }

  /** A search over the cases of the region that can occur, with no rule in the way. */
  private Search possibleCases(long[] region) {
    Search search = Search.over(compiled.withSwitches(region), layout.obstacles(), budget);
    enter(layout.impossible(), search);
    return search;
  }

  private static void enter(Layout.Run run, Search search) {
    search.enter(List.of(run));
  }

  private boolean in(Layout.Run run, Search search, State state, Map<State, long[]> cases) {
    return note(search.lookIn(layout.boxes(run)), search, state, cases);
  }

  private static boolean note(
      Search.Result result, Search search, State state, Map<State, long[]> cases) {
    if (result == Search.Result.FOUND) {
      cases.put(state, search.witness());
    }
    return result != Search.Result.UNDECIDED;
  }

  /** The rules that fire in every case of a region, of which one case for each state is known. */
  Firing firing(long[] region, Possible possible) {
    Search search = possibleCases(region);
    List<CompiledRule> certain =
        compiled.rules().stream().filter(r -> fires(r, search, possible)).toList();
    List<CompiledRule> without =
        certain.stream().filter(r -> r.has(Effect.ALLOW) && isSetAside(r, search)).toList();
    return new Firing(certain, without);
  }

  private boolean fires(CompiledRule rule, Search search, Possible possible) {
    if (rule.boxes().isEmpty() || !possible.cases().stream().allMatch(rule::fires)) {
      return false;
    }
    return search.lookBeside(List.of(layout.rule(rule))) == Search.Result.NONE;
  }

  /** Whether in every case some rule that sets the allow rule aside fires. */
  private boolean isSetAside(CompiledRule allow, Search search) {
    List<Layout.Run> setsAside =
        compiled.rules().stream().filter(r -> r.setsAside(allow)).map(layout::rule).toList();
    return !setsAside.isEmpty() && search.lookBeside(setsAside) == Search.Result.NONE;
  }
}

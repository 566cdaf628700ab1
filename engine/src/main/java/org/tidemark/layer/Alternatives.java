package org.tidemark.layer;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.tidemark.model.Band;
import org.tidemark.model.Condition;
import org.tidemark.model.Limit;
import org.tidemark.model.NamedBand;
import org.tidemark.model.Option;
import org.tidemark.model.Term;
import org.tidemark.model.Value;

/**
 * Spells a condition out: a list of alternatives, each a list of atoms that must all hold. Terms,
 * named bands and named values are gone; what the policy does not state can hold for nothing.
 */
public final class Alternatives implements Condition.Visitor<List<List<Atom>>> {
  private final EffectivePolicy policy;

  private Alternatives(EffectivePolicy policy) {
    this.policy = policy;
  }

  public static List<List<Atom>> of(EffectivePolicy policy, Condition condition) {
    return condition.accept(new Alternatives(policy));
  }

  @Override
  public List<List<Atom>> allOf(Condition.AllOf all) {
    List<List<Atom>> product = List.of(List.of());
    for (Condition part : all.parts()) {
      product = product(product, part.accept(this));
    }
    return product;
  }

  private static List<List<Atom>> product(List<List<Atom>> left, List<List<Atom>> right) {
    List<List<Atom>> all = new ArrayList<>();
    for (List<Atom> l : left) {
      for (List<Atom> r : right) {
        List<Atom> both = new ArrayList<>(l);
        both.addAll(r);
        all.add(List.copyOf(both));
      }
    }
    return all;
  }

  @Override
  public List<List<Atom>> anyOf(Condition.AnyOf any) {
    return any.alternatives().stream().flatMap(a -> a.accept(this).stream()).toList();
  }

  @Override
  public List<List<Atom>> someOf(Condition.SomeOf some) {
    return choose(some.howMany(), some.parts().stream().map(p -> p.accept(this)).toList());
  }

  /** Every way to take so many of the parts and have all of those hold. */
  private static List<List<Atom>> choose(int howMany, List<List<List<Atom>>> parts) {
    if (howMany == 0) {
      return List.of(List.of());
    }
    List<List<Atom>> all = new ArrayList<>();
    for (int first = 0; first <= parts.size() - howMany; first++) {
      List<List<List<Atom>>> rest = parts.subList(first + 1, parts.size());
      all.addAll(product(parts.get(first), choose(howMany - 1, rest)));
    }
    return all;
  }

  @Override
  public List<List<Atom>> options(Condition.Options options) {
    return one(Atom.options(options.finding(), options.options(), false));
  }

  @Override
  public List<List<Atom>> otherThan(Condition.OtherThan other) {
    if (other.excluded() instanceof Value.Word word) {
      return one(Atom.options(other.finding(), excluded(other.finding(), word), true));
    }
    BigDecimal number = ((Value.Amount) other.excluded()).number();
    Atom.Stretch stretch = stretch(other.finding(), Band.exactly(new Limit.Fixed(number)));
    return one(Atom.stretch(other.finding(), stretch, true));
  }

  /**
   * "Other than" asks for something recorded anyway, so a word for nothing recorded excludes
   * nothing more.
   */
  private Set<String> excluded(String finding, Value.Word word) {
    boolean nothing =
        policy
            .vocabulary()
            .require(finding)
            .domain()
            .option(word.name())
            .map(Option::nothingRecorded)
            .orElse(false);
    return nothing ? Set.of() : Set.of(word.name());
  }

  @Override
  public List<List<Atom>> inBand(Condition.InBand in) {
    return one(Atom.stretch(in.finding(), stretch(in.finding(), in.band()), false));
  }

  @Override
  public List<List<Atom>> inNamedBand(Condition.InNamedBand in) {
    NamedBand band =
        policy.band(in.band()).orElseThrow(() -> new IllegalStateException("no band " + in.band()));
    return one(Atom.stretch(in.finding(), stretch(in.finding(), band.band()), false));
  }

  @Override
  public List<List<Atom>> termIs(Condition.TermIs is) {
    Term term =
        policy.term(is.term()).orElseThrow(() -> new IllegalStateException("no term " + is.term()));
    return is.holds()
        ? anyOf(new Condition.AnyOf(term.alternatives()))
        : noneOf(term.alternatives());
  }

  private List<List<Atom>> noneOf(List<Condition> conditions) {
    List<List<Atom>> product = List.of(List.of());
    for (Condition condition : conditions) {
      product = product(product, fails(condition));
    }
    return product;
  }

  /**
   * A condition fails when it is recorded and false: of parts that must all hold one does, and of
   * parts of which so many must hold too few are left.
   */
  private List<List<Atom>> fails(Condition condition) {
    if (condition instanceof Condition.AllOf all) {
      return all.parts().stream().flatMap(p -> fails(p).stream()).toList();
    }
    if (condition instanceof Condition.AnyOf any) {
      return noneOf(any.alternatives());
    }
    if (condition instanceof Condition.SomeOf some) {
      int enough = some.parts().size() - some.howMany() + 1;
      return choose(enough, some.parts().stream().map(this::fails).toList());
    }
    if (condition instanceof Condition.TermIs is) {
      return termIs(new Condition.TermIs(is.term(), !is.holds()));
    }
    return one(condition.accept(this).get(0).get(0).negate());
  }

  private static List<List<Atom>> one(Atom atom) {
    return List.of(List.of(atom));
  }

  private Atom.Stretch stretch(String finding, Band band) {
    return Stretches.of(policy, finding, band);
  }
}

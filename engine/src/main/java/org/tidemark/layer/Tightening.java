package org.tidemark.layer;

import java.math.BigDecimal;
import java.util.Optional;
import org.tidemark.model.Departure;
import org.tidemark.model.PolicyValue;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;

/**
 * Decides whether a layer may give a value another number: only where the layer below says which
 * way is stricter, and only that way.
 */
final class Tightening {
  private final Departures departures;
  private final String layer;

  /**
   * Looks at the values of one layer.
   *
   * @param departures what is declared to be looser
   * @param layer the layer's name
   */
  Tightening(Departures departures, String layer) {
    this.departures = departures;
    this.layer = layer;
  }

  void check(PolicyValue below, PolicyValue above) {
    if (below.content().equals(above.content()) && below.unit().equals(above.unit())) {
      return;
    }
    Optional<BigDecimal> was = below.number();
    Optional<BigDecimal> is = above.number();
    boolean comparable = was.isPresent() && is.isPresent() && below.unit().equals(above.unit());
    if (below.stricter().isEmpty() || !comparable) {
      refuse(below, above, "`" + above.name() + "` may not be changed by a layer above");
    } else if (looser(below.stricter().get(), was.get(), is.get())) {
      String way = below.stricter().get().word();
      refuse(
          below,
          above,
          "`"
              + above.name()
              + "` is "
              + is.get().toPlainString()
              + " here and "
              + was.get().toPlainString()
              + " in the layer below, where only "
              + way
              + " is stricter");
    }
  }

  static boolean looser(PolicyValue.Stricter way, BigDecimal was, BigDecimal is) {
    return way == PolicyValue.Stricter.LOWER ? is.compareTo(was) > 0 : is.compareTo(was) < 0;
  }

  private void refuse(PolicyValue below, PolicyValue above, String what) {
    departures.looser(
        layer,
        Departure.Kind.VALUE,
        above.name(),
        Optional.of(below.place()),
        Diagnostic.error(DiagnosticCode.LOOSER_THAN_FLOOR, above.place().span(), what)
            .and(below.place().span(), "the layer below has it here")
            .help("keep the number of the layer below, or a stricter one" + Departures.OR_DECLARE));
  }
}

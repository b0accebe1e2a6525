package fineweight.refresh.column;

import fineweight.column.Appraisal;
import fineweight.column.MeltFormula;
import fineweight.metal.Metal;
import fineweight.refresh.worth.Spot;
import fineweight.sheet.SheetFunctions;
import fineweight.sheet.function.Argument;
import fineweight.sheet.function.Outcome;
import fineweight.sheet.function.SheetFunction;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * The call of the add-in's function that gives the melt of a row: of the standard that stands in
 * our column, at the price on the spot sheet. A row whose figure rests on more than that (a weight
 * off the scale, several metals with a price, a standard of the collector's own) gets none.
 */
final class CalledMelt {
  private final SheetFunction melt = SheetFunctions.ofMethod("melt");
  private final Spot spot;

  CalledMelt(Spot spot) {
    this.spot = spot;
  }

  /**
   * @param standardCell the cell with the id of the row's standard
   * @param result the library's figure, which the function must come to
   */
  Optional<String> formula(Appraisal appraisal, String standardCell, BigDecimal result) {
    String standard = appraisal.figures().standardId();
    List<Metal> priced =
        appraisal.content().masses().keySet().stream()
            .filter(metal -> metal.isPrecious() || spot.prices().of(metal).isPresent())
            .toList();
    if (standard.isEmpty() || appraisal.pieces().isEmpty() || priced.size() != 1) {
      return Optional.empty();
    }
    BigDecimal pieces = new BigDecimal(appraisal.pieces().get().toString());
    BigDecimal price = spot.prices().of(priced.get(0)).orElseThrow().perTroyOunce();
    Outcome outcome =
        melt.evaluate(
            List.of(
                new Argument.Text(standard),
                new Argument.Number(price),
                new Argument.Number(pieces),
                new Argument.Number(spot.wear())));
    boolean same =
        outcome instanceof Outcome.Number number && number.value().compareTo(result) == 0;
    return same
        ? Optional.of(
            "%s(%s,%s,%s,%s)"
                .formatted(
                    melt.name(),
                    standardCell,
                    MeltFormula.priceName(priced.get(0)),
                    pieces.toPlainString(),
                    MeltFormula.wearName()))
        : Optional.empty();
  }
}

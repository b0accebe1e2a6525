package fineweight.assay;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import fineweight.metal.Metal;
import fineweight.quantity.Mass;
import fineweight.quantity.MassUnit;
import fineweight.standard.CoinStandard;
import fineweight.standard.Years;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * How far a single piece might differ from its standard mass when it left the mint. Known for coins
 * of the United States only. Immutable.
 *
 * @param allowance plus or minus
 * @param source the law that grants it
 */
public record MintTolerance(Mass allowance, String source) {
  private static final List<Row> ROWS = load();

  private record Row(
      String country, List<BigDecimal> faces, Metal metal, Years years, MintTolerance tolerance) {
    boolean fits(CoinStandard standard, int year) {
      return standard.issue().country().equals(country)
          && years.contains(year)
          && standard
              .issue()
              .faceValue()
              .filter(face -> faces.stream().anyMatch(own -> own.compareTo(face) == 0))
              .isPresent()
          && isOf(standard);
    }

    private boolean isOf(CoinStandard standard) {
      Optional<Metal> precious = standard.specification().composition().mainPreciousMetal();
      return precious
          .map(metal::equals)
          .orElseGet(
              () ->
                  !metal.isPrecious()
                      && standard.specification().composition().metals().contains(metal));
    }
  }

  private static List<Row> load() {
    List<Row> rows = new ArrayList<>();
    for (NamedCsvRecord row : AssayRows.of("mint-tolerances.csv")) {
      List<BigDecimal> faces = new ArrayList<>();
      for (String face : row.getField("faces").split(";", -1)) {
        faces.add(new BigDecimal(face));
      }
      MassUnit unit = MassUnit.valueOf(row.getField("unit").toUpperCase(Locale.ROOT));
      rows.add(
          new Row(
              row.getField("country"),
              List.copyOf(faces),
              Metal.ofCode(row.getField("metal")).orElseThrow(),
              Years.parse(row.getField("years")),
              new MintTolerance(
                  Mass.of(new BigDecimal(row.getField("allowance")), unit),
                  row.getField("source"))));
    }
    return List.copyOf(rows);
  }

  /** The tolerance for a coin of that year; empty where none is known. */
  public static Optional<MintTolerance> of(CoinStandard standard, int year) {
    return ROWS.stream().filter(row -> row.fits(standard, year)).map(Row::tolerance).findFirst();
  }
}

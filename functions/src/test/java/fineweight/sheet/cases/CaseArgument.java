package fineweight.sheet.cases;

import fineweight.sheet.function.Argument;
import java.util.List;

/**
 * One argument of a case.
 *
 * @param rows its cells; one row of one cell unless it is an area
 * @param area whether it is written as an area
 */
public record CaseArgument(List<List<CaseCell>> rows, boolean area) {
  static CaseArgument single(CaseCell cell) {
    return new CaseArgument(List.of(List.of(cell)), false);
  }

  /** The only cell of an argument that is no area. */
  public CaseCell cell() {
    return rows.get(0).get(0);
  }

  /** The argument as the library takes it. */
  public Argument argument() {
    return area
        ? new Argument.Area(
            rows.stream().map(row -> row.stream().map(CaseCell::within).toList()).toList())
        : cell().single();
  }
}

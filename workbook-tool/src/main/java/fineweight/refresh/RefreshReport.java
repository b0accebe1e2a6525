package fineweight.refresh;

import fineweight.metal.FineContent;
import fineweight.metal.Metal;
import fineweight.refresh.collection.ByPlace;
import fineweight.refresh.collection.Gains;
import fineweight.refresh.collection.SaleLine;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a run understood and did. Immutable.
 *
 * @param inventory where the list was found
 * @param figures sums over all rows
 * @param open rows that need a person, most money at stake first
 * @param badCells sentences about cells that could not be used
 * @param notCalculated sentences about formulas of the owner that call our functions and could not
 *     be calculated
 * @param changedCells how many cells change
 * @param selling what is for sale, and what was gained on what is gone
 * @param backup where the former file is kept; empty if nothing was written
 */
public record RefreshReport(
    Understood inventory,
    Figures figures,
    List<OpenRow> open,
    List<String> badCells,
    List<String> notCalculated,
    long changedCells,
    Optional<Path> backup,
    Selling selling) {

  /**
   * @param sheet empty in a text table
   * @param headingRow from 1
   * @param columns meaning by heading, in the order of the sheet
   * @param unused headings that were not understood or are not used
   * @param otherSheets further sheets that look like lists of coins
   */
  public record Understood(
      Path file,
      String sheet,
      int headingRow,
      Map<String, String> columns,
      List<String> unused,
      List<String> otherSheets) {}

  /**
   * @param states number of rows by the state's word
   * @param pricesFromWorkbook metals whose price stood in the workbook's spot sheet
   * @param unpriced rows that hold a metal without a price
   */
  public record Figures(
      int rows,
      long pieces,
      Map<String, Integer> states,
      FineContent content,
      String currency,
      LocalDate spotDate,
      Money money,
      List<Metal> pricesFromWorkbook,
      int unpriced) {}

  public record Money(BigDecimal least, BigDecimal most, BigDecimal fromMemory) {}

  /**
   * @param place sheet and row for a person
   * @param words what stands in the row
   * @param note the question or the reason
   * @param atStake highest melt less lowest
   */
  public record OpenRow(String place, String words, String note, BigDecimal atStake) {}

  /**
   * What is for sale and what is gone.
   *
   * @param lines one for each row with pieces for sale
   * @param gains of pieces that are gone
   * @param byPlace every piece that is still there
   */
  public record Selling(List<SaleLine> lines, Gains gains, ByPlace byPlace) {}
}

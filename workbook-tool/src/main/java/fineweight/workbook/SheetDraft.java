package fineweight.workbook;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A whole sheet of our own: added if the workbook has none of this name, otherwise put in the place
 * of the old one (which the caller knows to be ours).
 *
 * @param name at most 31 characters, none of {@code : \ / ? * [ ]}
 * @param hidden whether the owner shall not see it
 * @param rows the cells, row by row from the top; a null row or cell is left out
 * @param widths in characters by column, from 0
 * @param frozenRows rows that stay visible when scrolling; 0 for none
 * @param dropDowns lists to choose from: by the cells they stand in, such as {@code C2:C40}, the
 *     formula or quoted list
 * @param charts none in a file of a kind that we put no charts into (.xls)
 * @param page how it is printed; empty leaves it to the office
 */
public record SheetDraft(
    String name,
    boolean hidden,
    List<List<DraftCell>> rows,
    Map<Integer, Double> widths,
    int frozenRows,
    Map<String, String> dropDowns,
    List<SheetChart> charts,
    Optional<PageSetup> page) {
  public SheetDraft {
    charts = List.copyOf(charts);
  }

  /** A sheet without charts that is printed as the office likes. */
  public SheetDraft(
      String name,
      boolean hidden,
      List<List<DraftCell>> rows,
      Map<Integer, Double> widths,
      int frozenRows,
      Map<String, String> dropDowns) {
    this(name, hidden, rows, widths, frozenRows, dropDowns, List.of(), Optional.empty());
  }

  /** This sheet with these charts. */
  public SheetDraft with(List<SheetChart> more) {
    return new SheetDraft(name, hidden, rows, widths, frozenRows, dropDowns, more, page);
  }

  /** This sheet printed so. */
  public SheetDraft printed(PageSetup setup) {
    return new SheetDraft(
        name, hidden, rows, widths, frozenRows, dropDowns, charts, Optional.of(setup));
  }

  /**
   * @param kind its part in the sheet, which gives the look
   * @param link a place in this workbook to jump to, such as {@code 'My coins'!B7}; empty for none
   */
  public record DraftCell(CellContent content, CellLook look, Kind kind, String link) {
    public static DraftCell of(CellContent content, CellLook look) {
      return new DraftCell(content, look, Kind.PLAIN, "");
    }

    public static DraftCell text(String text, Kind kind) {
      return new DraftCell(new CellContent.Text(text), CellLook.GENERAL, kind, "");
    }
  }

  /** The part a cell plays. */
  public enum Kind {
    TITLE,
    HEADER,
    PLAIN,
    /** A cell the owner may type into. */
    INPUT,
    TOTAL,
    REMARK
  }
}

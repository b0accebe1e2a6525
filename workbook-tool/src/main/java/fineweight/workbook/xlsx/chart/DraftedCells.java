package fineweight.workbook.xlsx.chart;

import fineweight.workbook.CellContent;
import fineweight.workbook.CellPlace;
import fineweight.workbook.SheetDraft;
import fineweight.workbook.SheetDraft.DraftCell;
import fineweight.workbook.xlsx.sheet.CellWriter;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** The cells of all sheets that one edit drafts: what charts refer to. */
public final class DraftedCells {
  private final List<SheetDraft> drafts;

  public DraftedCells(List<SheetDraft> drafts) {
    this.drafts = drafts;
  }

  private CellContent content(CellPlace place) {
    SheetDraft draft =
        drafts.stream().filter(each -> each.name().equals(place.sheet())).findFirst().orElseThrow();
    List<DraftCell> row = place.row() < draft.rows().size() ? draft.rows().get(place.row()) : null;
    DraftCell cell = row != null && place.column() < row.size() ? row.get(place.column()) : null;
    return cell == null ? CellContent.EMPTY : cell.content();
  }

  /** Empty where the cell holds no number. */
  Optional<BigDecimal> number(CellPlace place) {
    CellContent content = content(place);
    if (content instanceof CellContent.Number number) {
      return Optional.of(number.value());
    }
    return content instanceof CellContent.Formula formula
        ? Optional.ofNullable(formula.result())
        : Optional.empty();
  }

  /** Empty where the cell holds nothing. */
  String text(CellPlace place) {
    CellContent content = content(place);
    if (content instanceof CellContent.Text text) {
      return text.value();
    }
    if (content instanceof CellContent.Formula formula && formula.text() != null) {
      return formula.text();
    }
    return number(place).map(CellWriter::plain).orElse("");
  }
}

package fineweight.refresh.sheet;

import fineweight.workbook.CellContent;
import fineweight.workbook.CellLook;
import fineweight.workbook.SheetDraft.DraftCell;
import fineweight.workbook.SheetDraft.Kind;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** The lines of a sheet of ours, written from the top. */
final class Lines {
  static final CellLook OUNCES = CellLook.number("0.0000");
  static final CellLook MONEY = CellLook.number("#,##0.00");
  static final CellLook WHOLE = CellLook.number("0");
  static final CellLook SHARE = CellLook.number("0.0%");

  private final List<List<DraftCell>> rows = new ArrayList<>();

  void title(String words) {
    rows.add(List.of(DraftCell.text(words, Kind.TITLE)));
  }

  void remark(String words) {
    rows.add(List.of(DraftCell.text(words, Kind.REMARK)));
  }

  void blank() {
    rows.add(List.of());
  }

  void headings(List<String> words) {
    rows.add(words.stream().map(heading -> DraftCell.text(heading, Kind.HEADER)).toList());
  }

  /** One line; a cell that is null is left out. */
  void line(List<DraftCell> cells) {
    rows.add(Collections.unmodifiableList(new ArrayList<>(cells)));
  }

  /** How many lines there are. */
  int size() {
    return rows.size();
  }

  List<List<DraftCell>> rows() {
    return Collections.unmodifiableList(rows);
  }

  static DraftCell text(String text) {
    return DraftCell.text(text, Kind.PLAIN);
  }

  static DraftCell number(BigDecimal number, CellLook look) {
    return DraftCell.of(new CellContent.Number(number), look);
  }

  static DraftCell whole(long number) {
    return number(BigDecimal.valueOf(number), WHOLE);
  }

  static DraftCell money(BigDecimal amount) {
    return number(amount, MONEY);
  }

  /** The cell of an amount; without one, a cell without content. */
  static DraftCell money(Optional<BigDecimal> amount) {
    return amount.map(Lines::money).orElse(text(""));
  }

  /** The same cell as part of a total. */
  static DraftCell total(DraftCell cell) {
    return new DraftCell(cell.content(), cell.look(), Kind.TOTAL, cell.link());
  }
}

package fineweight.refresh.sheet;

import fineweight.column.Appraisal;
import fineweight.column.MeltFormula;
import fineweight.column.RowState;
import fineweight.identification.Candidate;
import fineweight.identification.Identification.SeveralStandards;
import fineweight.metal.FineContent;
import fineweight.refresh.inventory.Answers;
import fineweight.refresh.inventory.OurMarks;
import fineweight.refresh.inventory.ReadRow;
import fineweight.refresh.inventory.SheetReference;
import fineweight.workbook.CellContent;
import fineweight.workbook.CellLook;
import fineweight.workbook.CellPlace;
import fineweight.workbook.NamedCell;
import fineweight.workbook.PageSetup;
import fineweight.workbook.SheetDraft;
import fineweight.workbook.SheetDraft.DraftCell;
import fineweight.workbook.SheetDraft.Kind;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * The rows that need a person, most money at stake first, each with its question and the answers to
 * choose from.
 */
public final class ReviewSheet {
  private static final int FIRST_ROW = 3;
  private static final int FIRST_CHOICE = 6;
  private static final int MOST_ROWS = 2000;

  private final String name;
  private final String inventorySheet;
  private final Function<ReadRow, String> keys;
  private final MeltFormula melt;
  private final List<Open> open = new ArrayList<>();

  private record Open(ReadRow row, BigDecimal atStake) {}

  /**
   * @param keys the number of the piece in a row
   */
  public ReviewSheet(
      String name,
      String inventorySheet,
      List<ReadRow> rows,
      MeltFormula melt,
      Function<ReadRow, String> keys) {
    this.name = name;
    this.inventorySheet = inventorySheet;
    this.keys = keys;
    this.melt = melt;
    for (ReadRow row : rows) {
      if (row.isCoin() && needsAPerson(row.appraisal().state())) {
        open.add(new Open(row, atStake(row.appraisal())));
      }
    }
    open.sort(Comparator.comparing(Open::atStake).reversed());
  }

  public static boolean needsAPerson(RowState state) {
    return state == RowState.SEVERAL || state == RowState.NOT_KNOWN;
  }

  private BigDecimal atStake(Appraisal appraisal) {
    BigDecimal low = melt.result(appraisal.content()).orElse(BigDecimal.ZERO);
    return melt.result(appraisal.mostContent()).orElse(low).subtract(low);
  }

  public boolean isEmpty() {
    return open.isEmpty();
  }

  public SheetDraft draft() {
    List<List<DraftCell>> rows = new ArrayList<>();
    rows.add(List.of(DraftCell.text("Rows that need you, most money at stake first", Kind.TITLE)));
    rows.add(
        List.of(
            DraftCell.text(
                open.isEmpty()
                    ? "Nothing is open."
                    : "Choose an answer in the framed cells and refresh: the answer stays with the piece, and the row leaves this sheet.",
                Kind.REMARK)));
    rows.add(headings());
    Map<String, String> dropDowns = new HashMap<>();
    for (Open row : open.subList(0, Math.min(open.size(), MOST_ROWS))) {
      rows.add(line(row, rows.size(), dropDowns));
    }
    return new SheetDraft(
            name,
            false,
            rows,
            Map.of(0, 10.0, 1, 10.0, 2, 46.0, 3, 90.0, 4, 11.0, 5, 34.0, 6, 44.0, 7, 44.0, 8, 44.0),
            FIRST_ROW,
            dropDowns)
        .printed(PageSetup.wide(FIRST_ROW));
  }

  private static List<DraftCell> headings() {
    List<DraftCell> headings = new ArrayList<>();
    for (String heading :
        List.of(
            "Piece",
            "Row",
            "What stands there",
            "Question or reason",
            "At stake",
            "Your answer",
            "Possible answers")) {
      headings.add(DraftCell.text(heading, Kind.HEADER));
    }
    return headings;
  }

  private List<DraftCell> line(Open open, int at, Map<String, String> dropDowns) {
    Appraisal appraisal = open.row().appraisal();
    List<DraftCell> line = new ArrayList<>();
    line.add(DraftCell.text(keys.apply(open.row()), Kind.PLAIN));
    CellPlace place = new CellPlace(inventorySheet, open.row().row(), 0);
    line.add(
        new DraftCell(
            new CellContent.Text("row " + (open.row().row() + 1)),
            CellLook.GENERAL,
            Kind.PLAIN,
            SheetReference.of(place).replace("$", "")));
    line.add(
        new DraftCell(new CellContent.Text(open.row().words()), CellLook.GENERAL, Kind.PLAIN, ""));
    String note = appraisal.notes().isEmpty() ? "" : appraisal.notes().get(0);
    line.add(new DraftCell(new CellContent.Text(note), CellLook.GENERAL, Kind.PLAIN, ""));
    line.add(DraftCell.of(new CellContent.Number(open.atStake()), CellLook.number("#,##0.00")));
    line.add(new DraftCell(CellContent.EMPTY, CellLook.GENERAL, Kind.INPUT, ""));
    choices(appraisal, line);
    int row = at + 1;
    if (line.size() > FIRST_CHOICE) {
      String last = CellPlace.letters(line.size() - 1);
      dropDowns.put(
          CellPlace.letters(Answers.REVIEW_COLUMN) + row,
          "$" + CellPlace.letters(FIRST_CHOICE) + "$" + row + ":$" + last + "$" + row);
    }
    return line;
  }

  private void choices(Appraisal appraisal, List<DraftCell> line) {
    if (appraisal.identification() instanceof SeveralStandards several) {
      for (Candidate candidate : several.candidates()) {
        line.add(DraftCell.text(choice(candidate, appraisal), Kind.PLAIN));
      }
    }
  }

  /** "arrows beside the date: melt 1.08 (us-half-dime-1853-1873-900)". */
  private String choice(Candidate candidate, Appraisal appraisal) {
    String id = candidate.standard().id();
    String answer = candidate.answer().replace(" (" + id + ")", "");
    FineContent content =
        candidate.content().times(BigDecimal.valueOf(appraisal.pieces().orElse(1L)));
    String worth =
        content.hasPrecious()
            ? melt.result(content).map(sum -> ", melt " + sum.toPlainString()).orElse("")
            : ", no precious metal";
    return answer + worth + " (" + id + ")";
  }

  public List<NamedCell> names() {
    return List.of(OurMarks.sheet("review", name));
  }
}

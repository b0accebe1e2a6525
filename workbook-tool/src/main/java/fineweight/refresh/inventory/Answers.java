package fineweight.refresh.inventory;

import fineweight.workbook.Cell;
import fineweight.workbook.CellContent;
import fineweight.workbook.CellLook;
import fineweight.workbook.NamedCell;
import fineweight.workbook.SheetDraft;
import fineweight.workbook.SheetDraft.DraftCell;
import fineweight.workbook.SheetDraft.Kind;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookRefusal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The answers a person gave, by the number of the piece: sorting, inserting and deleting rows does
 * not part them from it. They stand in a sheet of their own, where they can be looked at and
 * deleted. Immutable.
 *
 * @param byPiece the id of the chosen standard by the number of the piece
 */
public record Answers(Map<String, String> byPiece) {
  public static final Answers NONE = new Answers(Map.of());

  /** The column of the review sheet in which a person answers, from 0. */
  public static final int REVIEW_COLUMN = 5;

  private static final int FIRST_ROW = 3;

  /** An answer ends with the id of its standard in brackets; a bare id does too. */
  private static final Pattern ID =
      Pattern.compile("\\(([a-z0-9][A-Za-z0-9-]+)\\)\\s*$|^\\s*([a-z]+-[A-Za-z0-9-]+)\\s*$");

  public Answers {
    byPiece = Collections.unmodifiableMap(new TreeMap<>(byPiece));
  }

  /** The answers kept so far, and those picked in the review sheet since the last run. */
  public static Answers read(Workbook workbook, OurMarks marks) throws WorkbookRefusal {
    Map<String, String> answers = new TreeMap<>();
    readSheet(workbook, marks.sheets().get("answers"), 1, answers);
    readSheet(workbook, marks.sheets().get("review"), REVIEW_COLUMN, answers);
    return new Answers(answers);
  }

  private static void readSheet(
      Workbook workbook, String sheet, int answerColumn, Map<String, String> answers)
      throws WorkbookRefusal {
    if (sheet == null) {
      return;
    }
    workbook.read(
        sheet,
        column -> column == 0 || column == answerColumn,
        Integer.MAX_VALUE,
        cells -> {
          if (cells.size() == 2 && cells.get(0).place().row() >= FIRST_ROW) {
            add(cells, answers);
          }
        });
  }

  private static void add(List<Cell> cells, Map<String, String> answers) {
    String id = idIn(CellTexts.text(cells.get(1).value()));
    if (!id.isEmpty()) {
      answers.put(CellTexts.text(cells.get(0).value()).strip(), id);
    }
  }

  /** The id of a standard in an answer; empty if there is none. */
  public static String idIn(String answer) {
    Matcher found = ID.matcher(answer);
    if (!found.find()) {
      return "";
    }
    return found.group(1) != null ? found.group(1) : found.group(2);
  }

  /** These answers and newer ones, which count before. */
  public Answers with(Map<String, String> newer) {
    Map<String, String> all = new TreeMap<>(byPiece);
    all.putAll(newer);
    return new Answers(all);
  }

  public String of(String piece) {
    return byPiece.getOrDefault(piece, "");
  }

  public SheetDraft draft(String name) {
    List<List<DraftCell>> rows = new ArrayList<>();
    rows.add(List.of(DraftCell.text("Answers you gave", Kind.TITLE)));
    rows.add(
        List.of(
            DraftCell.text(
                "Each stays with its piece for ever. Delete a line to be asked again.",
                Kind.REMARK)));
    rows.add(
        List.of(DraftCell.text("Piece", Kind.HEADER), DraftCell.text("Standard", Kind.HEADER)));
    byPiece.forEach(
        (piece, id) ->
            rows.add(
                List.of(
                    DraftCell.of(new CellContent.Text(piece), CellLook.GENERAL),
                    DraftCell.of(new CellContent.Text(id), CellLook.GENERAL))));
    return new SheetDraft(name, false, rows, Map.of(0, 14.0, 1, 44.0), FIRST_ROW, Map.of());
  }

  public static List<NamedCell> names(String name) {
    return List.of(OurMarks.sheet("answers", name));
  }
}

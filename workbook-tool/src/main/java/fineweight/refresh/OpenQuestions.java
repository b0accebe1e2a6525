package fineweight.refresh;

import fineweight.refresh.inventory.Answers;
import fineweight.refresh.inventory.CellTexts;
import fineweight.refresh.inventory.OurMarks;
import fineweight.workbook.Cell;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookRefusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The questions of a workbook that was refreshed, read from its review sheet. */
public final class OpenQuestions {
  private static final int FIRST_ROW = 3;
  private static final int PIECE = 0;
  private static final int ROW = 1;
  private static final int WORDS = 2;
  private static final int QUESTION = 3;
  private static final int FIRST_CHOICE = 6;

  private OpenQuestions() {}

  /**
   * @return the questions that have answers to choose from, most money at stake first; empty if the
   *     workbook has no review sheet yet
   */
  public static Optional<List<OpenQuestion>> read(Workbook workbook) throws WorkbookRefusal {
    String sheet = OurMarks.read(workbook.names()).sheets().get("review");
    if (sheet == null) {
      return Optional.empty();
    }
    List<OpenQuestion> questions = new ArrayList<>();
    workbook.read(sheet, column -> true, Integer.MAX_VALUE, cells -> add(cells, questions));
    return Optional.of(questions);
  }

  private static void add(List<Cell> cells, List<OpenQuestion> questions) {
    if (cells.isEmpty() || cells.get(0).place().row() < FIRST_ROW) {
      return;
    }
    Map<Integer, String> texts = new TreeMap<>();
    cells.forEach(cell -> texts.put(cell.place().column(), CellTexts.text(cell.value())));
    List<OpenQuestion.Choice> choices = new ArrayList<>();
    texts.forEach(
        (column, text) -> {
          String id = column >= FIRST_CHOICE ? Answers.idIn(text) : "";
          if (!id.isEmpty()) {
            choices.add(new OpenQuestion.Choice(text, id));
          }
        });
    if (!choices.isEmpty()) {
      questions.add(
          new OpenQuestion(
              texts.getOrDefault(PIECE, ""),
              texts.getOrDefault(ROW, ""),
              texts.getOrDefault(WORDS, ""),
              texts.getOrDefault(QUESTION, ""),
              choices));
    }
  }
}

package fineweight.workbook.fuzz;

import fineweight.workbook.SheetSummary;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookEdit;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.corpus.Filling;
import fineweight.workbook.corpus.Opening;
import fineweight.workbook.corpus.RoundTrip;
import fineweight.workbook.oracle.Expected;
import fineweight.workbook.oracle.Oracle;
import fineweight.workbook.oracle.parts.RawZip;
import fineweight.workbook.oracle.parts.XmlElement;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

/** One spoiled file through all that the program does with a file. */
final class FuzzCase {
  /** How it ended. */
  enum Ending {
    REFUSED,
    FILLED,
    /** Filled, but too odd for the oracle to read. */
    UNJUDGED
  }

  private final Path file;

  FuzzCase(Path file) {
    this.file = file;
  }

  /**
   * Anything but a refusal or a clean result leaves this method as an unchecked exception, an error
   * or a failed assertion.
   */
  Ending run() throws IOException {
    byte[] original = Files.readAllBytes(file);
    Filling filling;
    try (Workbook workbook = Opening.ANY.open(file)) {
      for (SheetSummary sheet : workbook.sheets()) {
        if (sheet.isTable()) {
          workbook.read(sheet.name(), column -> true, Integer.MAX_VALUE, row -> {});
          workbook.layout(sheet.name());
        }
      }
      workbook.names();
      filling = filling(workbook);
    } catch (WorkbookRefusal refusal) {
      checkSentence(refusal);
      return unchanged(original);
    }
    if (judgeable()) {
      RoundTrip.Outcome outcome =
          new RoundTrip(Opening.ANY, file, filling, original.length % 2 == 0)
              .withOracleOnly()
              .run();
      if (!outcome.problems().isEmpty()) {
        throw new AssertionError(String.join("; ", outcome.problems()));
      }
      outcome.refusal().ifPresent(FuzzCase::checkSentence);
      return outcome.passed() ? Ending.FILLED : Ending.REFUSED;
    }
    return fillOnly(filling.columns(), original);
  }

  private Ending fillOnly(WorkbookEdit edit, byte[] original) throws IOException {
    try (Workbook workbook = Opening.ANY.open(file)) {
      workbook.preview(edit, change -> {});
      workbook.save(edit);
    } catch (WorkbookRefusal refusal) {
      checkSentence(refusal);
      return unchanged(original);
    }
    byte[] filled = Files.readAllBytes(file);
    try (Workbook workbook = Opening.ANY.open(file)) {
      workbook.save(edit);
    } catch (WorkbookRefusal refusal) {
      throw new AssertionError("refuses what it wrote: " + refusal.getMessage(), refusal);
    }
    if (!Arrays.equals(filled, Files.readAllBytes(file))) {
      throw new AssertionError("a second run changed bytes");
    }
    return Ending.UNJUDGED;
  }

  private Ending unchanged(byte[] original) throws IOException {
    if (!Arrays.equals(original, Files.readAllBytes(file))) {
      throw new AssertionError("refused, but the file has changed");
    }
    return Ending.REFUSED;
  }

  private static void checkSentence(WorkbookRefusal refusal) {
    String sentence = refusal.getMessage();
    if (sentence == null || sentence.isBlank() || sentence.contains("Exception")) {
      throw new AssertionError("no plain sentence: " + sentence, refusal);
    }
  }

  private static Filling filling(Workbook workbook) throws WorkbookRefusal {
    List<SheetSummary> sheets = workbook.sheets().stream().filter(SheetSummary::isTable).toList();
    if (sheets.isEmpty()) {
      return new Filling("", 0, 1, 2, 0);
    }
    String sheet = sheets.get(sheets.size() - 1).name();
    Workbook.UsedArea used = workbook.usedArea(sheet);
    int last = Math.max(3, Math.min(used.lastRow(), 60));
    return new Filling(sheet, 0, 1, last, used.lastColumn() + 1);
  }

  /** Whether the oracle can read the file at all, before anybody has touched it. */
  private boolean judgeable() {
    try {
      for (RawZip.Entry part : RawZip.of(file).entries().values()) {
        if (part.name().matches(".*\\.(xml|rels)")) {
          XmlElement.parse(part.content());
        }
      }
      return Oracle.findings(file, file, Expected.untouched()).isEmpty();
    } catch (IOException | RuntimeException e) {
      return false;
    }
  }
}

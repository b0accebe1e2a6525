package fineweight.workbook.xlsx;

import fineweight.workbook.WorkbookRefusal;
import java.io.IOException;

/** Finds the owner's formulas whose stored result is no longer true. */
final class StaleResults {
  StaleResults(OpenedPackage source, EditRun run) {}

  void drop() throws IOException, WorkbookRefusal {}
}

package fineweight.window;

import fineweight.refresh.RefreshReport;
import fineweight.workbook.CellChange;
import java.util.List;
import java.util.Optional;

/**
 * What came of looking into a workbook or filling it. Immutable.
 *
 * @param sheets the names of the workbook's sheets; empty where it could not be opened
 * @param report what was understood; empty after a refusal
 * @param changes the first of the cells that would change
 * @param refusal the sentence that says why nothing was done; empty after success
 */
record Outcome(
    List<String> sheets,
    Optional<RefreshReport> report,
    List<CellChange> changes,
    Optional<String> refusal) {
  Outcome {
    sheets = List.copyOf(sheets);
    changes = List.copyOf(changes);
  }

  static Outcome of(List<String> sheets, RefreshReport report, List<CellChange> changes) {
    return new Outcome(sheets, Optional.of(report), changes, Optional.empty());
  }

  static Outcome refused(List<String> sheets, String sentence) {
    return new Outcome(sheets, Optional.empty(), List.of(), Optional.of(sentence));
  }
}

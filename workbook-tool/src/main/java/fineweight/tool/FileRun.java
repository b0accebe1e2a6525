package fineweight.tool;

import fineweight.refresh.Refresh;
import fineweight.refresh.RefreshReport;
import fineweight.refresh.RefreshWishes;
import fineweight.refresh.inventory.Progress;
import fineweight.refresh.inventory.RefreshRefusal;
import fineweight.result.FileResult;
import fineweight.terminal.ProgressLine;
import fineweight.workbook.CellChange;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.Workbooks;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;

/** Refreshes one file after the other; the fault of one is told in its result. */
final class FileRun {
  private final Surroundings surroundings;
  private final Workbooks workbooks;
  private final RefreshWishes wishes;
  private final Manner manner;

  /**
   * @param dryRun whether nothing is written
   * @param quiet whether progress is kept from the terminal
   * @param cells takes each cell that a dry run would change, if somebody wants to see them
   */
  record Manner(boolean dryRun, boolean quiet, Optional<Consumer<CellChange>> cells) {}

  /**
   * @param workbooks opens the files
   */
  FileRun(Surroundings surroundings, Workbooks workbooks, RefreshWishes wishes, Manner manner) {
    this.surroundings = surroundings;
    this.workbooks = workbooks;
    this.wishes = wishes;
    this.manner = manner;
  }

  /**
   * @param found whether the file was found in a folder, where not every file is an inventory
   */
  FileResult run(Path file, boolean found) {
    try {
      return FileResult.of(file, report(file), manner.dryRun());
    } catch (RefreshRefusal refusal) {
      return found && refusal.kind() == RefreshRefusal.Kind.NO_INVENTORY
          ? FileResult.leftAlone(file, Complaint.of(refusal).sentence())
          : failed(file, refusal);
    } catch (WorkbookRefusal | IOException | RuntimeException trouble) {
      return failed(file, trouble);
    }
  }

  private static FileResult failed(Path file, Exception trouble) {
    Complaint complaint = Complaint.of(trouble);
    return FileResult.failed(file, complaint.code().code(), complaint.sentence());
  }

  private RefreshReport report(Path file) throws WorkbookRefusal, RefreshRefusal, IOException {
    try (ProgressLine line = new ProgressLine(surroundings.err());
        Workbook workbook = workbooks.open(file)) {
      Progress progress = manner.quiet() ? Progress.UNSEEN : line;
      if (!manner.dryRun()) {
        return Refresh.run(workbook, wishes, progress);
      }
      Consumer<CellChange> cells =
          change -> {
            if (manner.cells().isPresent()) {
              line.close();
              manner.cells().get().accept(change);
            }
          };
      RefreshReport report =
          Refresh.preview(
              workbook,
              wishes,
              cells,
              manner.cells().isPresent() ? onlyReading(progress) : progress);
      workbook.onlyReadBecause().ifPresent(surroundings.err()::println);
      return report;
    }
  }

  /** While cells are listed there is no place for a line that moves. */
  private static Progress onlyReading(Progress progress) {
    return (stage, row, last) -> {
      if (stage == Progress.Stage.READING) {
        progress.at(stage, row, last);
      }
    };
  }
}

package fineweight.tool;

import fineweight.refresh.Refresh;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookRefusal;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

@Command(
    name = "take-out",
    description = "Take our columns, sheets and names out of a workbook again; a backup is kept.")
final class TakeOutCommand implements Callable<Integer> {
  private final Surroundings surroundings;

  @Parameters(
      paramLabel = "WORKBOOK",
      description = "The workbook to clear of what refresh put in.")
  private Path file;

  TakeOutCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws WorkbookRefusal, IOException {
    try (Workbook workbook = surroundings.workbooks().open(file)) {
      Workbook.SaveResult saved = Refresh.takeOut(workbook);
      surroundings
          .out()
          .println(
              saved.written()
                  ? "Taken out; the file as it was is kept as " + saved.backup().getFileName() + "."
                  : "There was nothing of ours in " + file + "; the file was not written.");
    }
    return ExitCode.DONE.code();
  }
}

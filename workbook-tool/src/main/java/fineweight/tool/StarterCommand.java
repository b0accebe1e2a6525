package fineweight.tool;

import fineweight.template.StarterWorkbook;
import fineweight.template.WorkbookKind;
import fineweight.workbook.WorkbookRefusal;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
    name = "starter",
    description = {
      "Write a new workbook with headings, drop-downs, hints and a how-to sheet: a whole inventory, a lot to open, or a type set.",
      "A file that exists is never overwritten."
    })
final class StarterCommand implements Callable<Integer> {
  private final Surroundings surroundings;

  @Parameters(paramLabel = "FILE", description = "The workbook to write; its name ends in .xlsx.")
  private Path file;

  @Option(
      names = "--kind",
      paramLabel = "KIND",
      description = "What it is for: ${COMPLETION-CANDIDATES} (default: ${DEFAULT-VALUE}).")
  private WorkbookKind kind = WorkbookKind.INVENTORY;

  @Option(names = "--empty", description = "Leave out the invented demo rows.")
  private boolean empty;

  StarterCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws WorkbookRefusal {
    StarterWorkbook workbook =
        empty ? StarterWorkbook.empty(kind) : StarterWorkbook.withDemoRows(kind);
    NewFile.workbook(file, workbook::write);
    surroundings.out().println("Written: " + file + ".");
    surroundings
        .out()
        .println(
            "Next: list your coins on the sheet "
                + kind.sheet()
                + ", close it, then run fineweight refresh \""
                + file
                + "\" --spot XAG=30.00 --spot XAU=2500.00 with today's prices.");
    return ExitCode.DONE.code();
  }
}

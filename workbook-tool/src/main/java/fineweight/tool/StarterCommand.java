package fineweight.tool;

import fineweight.template.StarterWorkbook;
import fineweight.workbook.WorkbookRefusal;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
    name = "starter",
    description = {
      "Write a new inventory workbook with headings, drop-downs, hints and a how-to sheet.",
      "A file that exists is never overwritten."
    })
final class StarterCommand implements Callable<Integer> {
  private final Surroundings surroundings;

  @Parameters(paramLabel = "FILE", description = "The workbook to write; its name ends in .xlsx.")
  private Path file;

  @Option(names = "--empty", description = "Leave out the invented demo rows.")
  private boolean empty;

  StarterCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws WorkbookRefusal {
    NewFile.workbook(
        file, (empty ? StarterWorkbook.empty() : StarterWorkbook.withDemoRows())::write);
    surroundings.out().println("Written: " + file + ".");
    surroundings
        .out()
        .println(
            "Next: list your coins on the sheet Inventory, close it, then run fineweight refresh \""
                + file
                + "\" --spot XAG=30.00 --spot XAU=2500.00 with today's prices.");
    return ExitCode.DONE.code();
  }
}

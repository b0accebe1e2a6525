package fineweight.tool;

import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.save.Backups;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
    name = "restore",
    description =
        "Put a backup in the place of a workbook; the present file becomes a backup first. Without a number the backups are listed.")
final class RestoreCommand implements Callable<Integer> {
  private final Surroundings surroundings;

  @Parameters(paramLabel = "WORKBOOK", description = "The workbook whose backups are meant.")
  private Path file;

  @Option(
      names = "--backup",
      paramLabel = "NUMBER",
      description = "The number of the backup to restore.")
  private Integer number;

  RestoreCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws WorkbookRefusal {
    Backups backups = Backups.onDisk();
    if (number != null) {
      Path kept = backups.restore(file, number);
      surroundings
          .out()
          .println("Restored; the file as it was is kept as " + kept.getFileName() + ".");
      return ExitCode.DONE.code();
    }
    List<Backups.Backup> found = backups.list(file);
    if (found.isEmpty()) {
      surroundings.out().println("There is no backup of " + file + ".");
    }
    for (Backups.Backup backup : found) {
      surroundings
          .out()
          .println(
              "  "
                  + backup.number()
                  + "  "
                  + backup.path().getFileName()
                  + "  "
                  + backup.modified()
                  + "  "
                  + backup.size()
                  + " bytes");
    }
    if (!found.isEmpty()) {
      surroundings
          .out()
          .println("Restore one with: fineweight restore " + file + " --backup NUMBER");
    }
    return ExitCode.DONE.code();
  }
}

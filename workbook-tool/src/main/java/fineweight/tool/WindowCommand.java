package fineweight.tool;

import fineweight.settings.SettingException;
import fineweight.window.FillingJob;
import fineweight.window.FillingWindow;
import fineweight.window.NoScreenException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

@Command(
    name = "window",
    description = {
      "Open a window: drop a workbook on it, see what is understood and what would change, type prices, fill the sheet.",
      "Does what refresh does."
    })
final class WindowCommand implements Callable<Integer> {
  private final Surroundings surroundings;

  @Parameters(
      paramLabel = "WORKBOOK",
      arity = "0..1",
      description = "The inventory to look into at once.")
  private Path file;

  @Mixin private CatalogueOptions catalogue;

  WindowCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws SettingException, InterruptedException {
    FillingJob job =
        new FillingJob(
            surroundings.workbooks(),
            catalogue.standards(),
            catalogue.home(),
            surroundings.clock());
    try {
      FillingWindow.open(job, Optional.ofNullable(file));
    } catch (NoScreenException none) {
      surroundings.err().println(none.getMessage());
      return ExitCode.NO_SCREEN.code();
    }
    return ExitCode.DONE.code();
  }
}

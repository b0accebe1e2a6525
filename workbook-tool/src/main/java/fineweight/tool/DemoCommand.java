package fineweight.tool;

import fineweight.template.StarterWorkbook;
import fineweight.workbook.WorkbookRefusal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
    name = "demo",
    description = {
      "Write the starter workbook into a folder and refresh it, to see a filled sheet at once.",
      "Coins, lots and prices are invented. A workbook that is there already is refreshed again."
    })
final class DemoCommand implements Callable<Integer> {
  static final String WORKBOOK = "starter.xlsx";

  private final Surroundings surroundings;

  @Parameters(
      arity = "0..1",
      paramLabel = "FOLDER",
      defaultValue = "fineweight-demo",
      description = "Where to write; ${DEFAULT-VALUE} if absent.")
  private Path folder;

  @Option(
      names = "--spot",
      paramLabel = "METAL=PRICE[/UNIT]",
      defaultValue = "XAG=30.00,XAU=2500.00",
      split = ",",
      description = "Prices as for refresh; the invented ${DEFAULT-VALUE} if absent.")
  private List<String> spot;

  @Option(
      names = "--spot-date",
      paramLabel = "YYYY-MM-DD",
      description = "Date of the prices; today if absent.")
  private String date;

  DemoCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws WorkbookRefusal {
    Path file = folder.resolve(WORKBOOK);
    if (!Files.exists(file)) {
      NewFile.workbook(file, StarterWorkbook.withDemoRows()::write);
    }
    List<String> words = new ArrayList<>(List.of("refresh", file.toString()));
    spot.forEach(price -> words.addAll(List.of("--spot", price)));
    if (date != null) {
      words.addAll(List.of("--spot-date", date));
    }
    int code = Main.commandLine(surroundings).execute(words.toArray(String[]::new));
    if (code == ExitCode.DONE.code()) {
      ending(file);
    }
    return code;
  }

  private void ending(Path file) {
    surroundings.out().println();
    surroundings.out().println("Open " + file.toAbsolutePath() + " in your spreadsheet program.");
    surroundings
        .out()
        .println("Its coins, lots and prices are invented. For your own: fineweight my-coins.xlsx");
  }
}

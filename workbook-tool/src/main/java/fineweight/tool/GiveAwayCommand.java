package fineweight.tool;

import fineweight.giveaway.Findings;
import fineweight.giveaway.GiveAway;
import fineweight.giveaway.Wishes;
import fineweight.refresh.inventory.RefreshRefusal;
import fineweight.workbook.WorkbookRefusal;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
    name = "give-away",
    description = {
      "Make an empty workbook from your own, to give to others: headings, formulas, formats, checks and charts stay.",
      "Rows, prices, names, notes, comments, pictures, properties, macros and everything hidden go. Your file is only read.",
      "Every text goes that is not on the list of harmless ones; what stays and should be looked at is printed."
    })
final class GiveAwayCommand implements Callable<Integer> {
  /** A longer list is told by its number. */
  private static final int MOST_SHOWN = 60;

  private final Surroundings surroundings;

  @Parameters(index = "0", paramLabel = "WORKBOOK", description = "Yours: .xlsx, .xlsm or .csv.")
  private Path file;

  @Parameters(
      index = "1",
      paramLabel = "NEW",
      description = "The workbook to write: .xlsx, or .csv from a .csv. An existing one stays.")
  private Path target;

  @Option(
      names = "--sheet",
      paramLabel = "NAME",
      description = "The sheet that holds the inventory, if it is not found by itself.")
  private String sheet;

  @Option(
      names = "--keep",
      paramLabel = "WORDS",
      description = "A text that stays in drop-downs, formulas and labels; may be given again.")
  private Set<String> words = Set.of();

  @Option(
      names = "--keep-sheet",
      paramLabel = "NAME",
      description =
          "A sheet whose words and numbers all stay, such as a list for drop-downs; may be given again.")
  private Set<String> sheets = Set.of();

  @Option(
      names = "--keep-messages",
      description = "Keep the hints and error messages of checked cells; read them before.")
  private boolean messages;

  GiveAwayCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws WorkbookRefusal, RefreshRefusal, IOException {
    Findings findings =
        GiveAway.copy(
            surroundings.workbooks(),
            file,
            Optional.ofNullable(sheet),
            target,
            new Wishes(words, sheets, messages));
    say("Written: " + target + ". " + file.getFileName() + " is as it was.");
    say("");
    say("Taken out:");
    findings.removals().forEach(line -> say("  " + line));
    say("");
    say("Left for you to look at, because a spreadsheet cannot do without them:");
    findings.left().forEach((what, which) -> say("  " + what + ": " + shown(which)));
    say("  the number of rows with formulas, which may tell how many coins you have");
    say("Open it and read it through before you give it away.");
    return ExitCode.DONE.code();
  }

  private void say(String line) {
    surroundings.out().println(line);
  }

  private static String shown(Set<String> all) {
    String shown = all.stream().limit(MOST_SHOWN).reduce((one, two) -> one + "; " + two).orElse("");
    return all.size() <= MOST_SHOWN
        ? shown
        : shown + "; and " + (all.size() - MOST_SHOWN) + " more";
  }
}

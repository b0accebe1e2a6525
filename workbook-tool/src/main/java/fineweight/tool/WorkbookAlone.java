package fineweight.tool;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import picocli.CommandLine;

/**
 * A workbook named without a command: somebody wants to know what we make of it, so it is a dry run
 * and a word on how to go on.
 */
final class WorkbookAlone {
  private static final List<String> ENDINGS =
      List.of(".xlsx", ".xlsm", ".xls", ".csv", ".tsv", ".txt", ".ods", ".xlsb", ".numbers");

  private final List<String> words;

  WorkbookAlone(String[] words) {
    this.words = List.of(words);
  }

  /** Whether the first word is no command and looks like a file. */
  static boolean isMeant(String[] words, Collection<String> commands) {
    if (words.length == 0 || words[0].startsWith("-") || commands.contains(words[0])) {
      return false;
    }
    String name = words[0].toLowerCase(Locale.ROOT);
    return ENDINGS.stream().anyMatch(name::endsWith) || Files.exists(Path.of(words[0]));
  }

  int run(CommandLine command, Surroundings surroundings) {
    List<String> dryRun = new ArrayList<>(List.of("refresh", "--dry-run", "--no-cells"));
    dryRun.addAll(words);
    int code = command.execute(dryRun.toArray(String[]::new));
    if (code == ExitCode.DONE.code()) {
      surroundings.out().println();
      surroundings.out().println("To see every cell: fineweight refresh " + again() + " --dry-run");
      surroundings.out().println("To fill the sheet: fineweight refresh " + again());
      surroundings.out().flush();
    }
    return code;
  }

  /** The words as one would type them again, with prices if none were given. */
  private String again() {
    String typed =
        words.stream()
            .filter(word -> !word.equals("--dry-run") && !word.equals("--no-cells"))
            .map(WorkbookAlone::quoted)
            .collect(Collectors.joining(" "));
    boolean priced = words.stream().anyMatch(word -> word.startsWith("--spot"));
    return priced ? typed : typed + " --spot XAG=30.00 --spot XAU=2500.00";
  }

  private static String quoted(String word) {
    boolean plain =
        Arrays.stream(word.split("")).noneMatch(each -> " \"'$&()*;<>?`|".contains(each));
    return plain ? word : "\"" + word + "\"";
  }
}

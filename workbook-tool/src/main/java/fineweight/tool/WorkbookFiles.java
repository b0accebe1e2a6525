package fineweight.tool;

import fineweight.workbook.WorkbookRefusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The files that a run is over: those named, and for a folder the workbooks that lie in it, in the
 * order of their names; folders within it are not looked into. Immutable.
 *
 * @param files each once
 * @param inFolders those of them that were not named but found in a folder
 */
record WorkbookFiles(List<Path> files, Set<Path> inFolders) {
  private static final List<String> ENDINGS = List.of(".xlsx", ".xlsm", ".xls", ".csv");

  /** A copy of ours from before a refresh. */
  private static final String KEPT = ".*\\.fineweight-\\d+\\.[^.]+";

  /**
   * @throws WorkbookRefusal if a folder cannot be read, or there is no workbook in any of them
   */
  static WorkbookFiles of(List<Path> named) throws WorkbookRefusal {
    List<Path> files = new ArrayList<>();
    Set<Path> found = new HashSet<>();
    Set<Path> seen = new HashSet<>();
    for (Path each : named) {
      boolean folder = Files.isDirectory(each);
      for (Path file : folder ? workbooksIn(each) : List.of(each)) {
        if (seen.add(file.toAbsolutePath().normalize())) {
          files.add(file);
          if (folder) {
            found.add(file);
          }
        }
      }
    }
    if (files.isEmpty()) {
      throw refusal(
          named.get(0)
              + " is a folder without a workbook in it; files that end in "
              + String.join(", ", ENDINGS)
              + " are taken, and folders within it are not looked into");
    }
    return new WorkbookFiles(List.copyOf(files), Set.copyOf(found));
  }

  private static List<Path> workbooksIn(Path folder) throws WorkbookRefusal {
    try (Stream<Path> entries = Files.list(folder)) {
      return entries.filter(WorkbookFiles::isWorkbook).sorted().toList();
    } catch (IOException unreadable) {
      throw refusal("the folder " + folder + " cannot be read; check its rights");
    }
  }

  private static WorkbookRefusal refusal(String sentence) {
    return new WorkbookRefusal(WorkbookRefusal.Kind.FILE, sentence);
  }

  private static boolean isWorkbook(Path file) {
    String name = file.getFileName().toString();
    String low = name.toLowerCase(Locale.ROOT);
    return Files.isRegularFile(file)
        && ENDINGS.stream().anyMatch(low::endsWith)
        && !name.startsWith(".")
        && !name.startsWith("~$")
        && !low.matches(KEPT);
  }

  /** Whether one summary over all of them is wanted instead of one report. */
  boolean areMany() {
    return files.size() > 1 || !inFolders.isEmpty();
  }
}

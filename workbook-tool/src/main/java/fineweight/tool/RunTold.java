package fineweight.tool;

import fineweight.refresh.RefreshReport;
import fineweight.result.FileResult;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Tells a person what became of the files, complaints on standard error, and finds the code. */
final class RunTold {
  private static final int MOST_COMPLAINTS = 40;
  private static final int MOST_BAD_CELLS = 3;

  private final PrintWriter err;
  private final PrintWriter out;
  private final int width;

  /**
   * @param width characters in a line
   */
  RunTold(PrintWriter err, PrintWriter out, int width) {
    this.err = err;
    this.out = out;
    this.width = width;
  }

  /** One file, in full. */
  int one(FileResult result, boolean dryRun) {
    result.complaint().ifPresent(err::println);
    if (result.report().isPresent()) {
      RefreshReport report = result.report().get();
      new ReportWords(out).print(report, dryRun);
      report.notCalculated().stream().limit(MOST_BAD_CELLS).forEach(err::println);
      if (report.notCalculated().size() > MOST_BAD_CELLS) {
        err.println(
            "... and " + (report.notCalculated().size() - MOST_BAD_CELLS) + " more such formulas");
      }
      if (!dryRun) {
        report.badCells().forEach(err::println);
        report.selling().gains().leftOut().forEach(err::println);
      }
    }
    return result.exitCode();
  }

  /** Several, in short. The code is the highest of any file. */
  int many(List<FileResult> results, boolean dryRun) {
    List<FileResult> failed = only(results, FileResult.Outcome.FAILED::equals);
    failed.stream()
        .limit(MOST_COMPLAINTS)
        .forEach(result -> err.println(result.complaint().orElseThrow()));
    if (failed.size() > MOST_COMPLAINTS) {
      err.println("... and " + (failed.size() - MOST_COMPLAINTS) + " more files failed");
    }
    results.forEach(result -> result.report().ifPresent(this::badCells));
    new ManyFilesWords(out, width).print(results, dryRun);
    if (only(results, FileResult.Outcome.LEFT_ALONE::equals).size() == results.size()) {
      err.println("No inventory was found in any of these files.");
      return ExitCode.NO_INVENTORY.code();
    }
    return results.stream().mapToInt(FileResult::exitCode).max().orElse(0);
  }

  private static List<FileResult> only(
      List<FileResult> results, Predicate<FileResult.Outcome> wanted) {
    return results.stream().filter(result -> wanted.test(result.outcome())).toList();
  }

  private void badCells(RefreshReport report) {
    List<String> bad = new ArrayList<>(report.notCalculated());
    bad.addAll(report.badCells());
    bad.stream().limit(MOST_BAD_CELLS).forEach(err::println);
    if (bad.size() > MOST_BAD_CELLS) {
      err.println(
          report.inventory().file()
              + ": "
              + (bad.size() - MOST_BAD_CELLS)
              + " more cells cannot be used");
    }
  }
}

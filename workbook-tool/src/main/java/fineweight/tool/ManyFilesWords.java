package fineweight.tool;

import fineweight.refresh.RefreshReport;
import fineweight.result.FileResult;
import java.io.PrintWriter;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Help.ColorScheme;
import picocli.CommandLine.Help.Column;
import picocli.CommandLine.Help.Column.Overflow;
import picocli.CommandLine.Help.TextTable;

/** One summary over several files: a table with a line for each, and the sums. */
final class ManyFilesWords {
  private static final int MOST_LINES = 60;
  private static final int ROWS = 9;
  private static final int OPEN = 9;
  private static final int MELT = 20;
  private static final int CELLS = 11;
  private static final int LEAST_FOR_NAMES = 16;

  private final PrintWriter out;
  private final int width;

  /**
   * @param width characters in a line
   */
  ManyFilesWords(PrintWriter out, int width) {
    this.out = out;
    this.width = width;
  }

  void print(List<FileResult> results, boolean dryRun) {
    int names = Math.max(LEAST_FOR_NAMES, width - 1 - ROWS - OPEN - MELT - CELLS);
    ColorScheme plain = new ColorScheme.Builder(Ansi.OFF).build();
    TextTable table =
        TextTable.forColumns(
            plain,
            new Column(names, 0, Overflow.WRAP),
            new Column(ROWS, 1, Overflow.TRUNCATE),
            new Column(OPEN, 1, Overflow.TRUNCATE),
            new Column(MELT, 1, Overflow.TRUNCATE),
            new Column(CELLS, 1, Overflow.TRUNCATE));
    line(table, "File", "rows", "need you", "melt at least", "cells");
    results.stream().limit(MOST_LINES).forEach(result -> line(table, result));
    out.print(table);
    if (results.size() > MOST_LINES) {
      out.println("... and " + (results.size() - MOST_LINES) + " more files");
    }
    out.println();
    out.println(outcomes(results));
    sums(results);
    if (dryRun) {
      out.println("Nothing was written.");
    }
    out.println(ReportWords.CAUTION);
    out.flush();
  }

  private static void line(TextTable table, FileResult result) {
    Path name = result.file().getFileName();
    String file = name == null ? result.file().toString() : name.toString();
    Optional<RefreshReport> report = result.report();
    if (report.isEmpty()) {
      line(table, file, "-", "-", result.outcome().words(), "-");
      return;
    }
    RefreshReport.Figures figures = report.get().figures();
    line(
        table,
        file,
        Integer.toString(figures.rows()),
        Integer.toString(report.get().open().size()),
        figures.money().least().toPlainString() + " " + figures.currency(),
        Long.toString(report.get().changedCells()));
  }

  private static void line(
      TextTable table, String file, String rows, String open, String melt, String cells) {
    table.addRowValues(
        file, right(rows, ROWS), right(open, OPEN), right(melt, MELT), right(cells, CELLS));
  }

  private static String right(String text, int width) {
    return " ".repeat(Math.max(0, width - 1 - text.length())) + text;
  }

  private static String outcomes(List<FileResult> results) {
    String counted =
        Stream.of(FileResult.Outcome.values())
            .filter(outcome -> count(results, outcome) > 0)
            .map(outcome -> count(results, outcome) + " " + outcome.words())
            .collect(Collectors.joining(", "));
    return results.size() + (results.size() == 1 ? " file: " : " files: ") + counted + ".";
  }

  private static long count(List<FileResult> results, FileResult.Outcome outcome) {
    return results.stream().filter(result -> result.outcome() == outcome).count();
  }

  private void sums(List<FileResult> results) {
    Map<String, BigDecimal> least = new LinkedHashMap<>();
    for (FileResult result : results) {
      result
          .report()
          .map(RefreshReport::figures)
          .ifPresent(
              figures -> least.merge(figures.currency(), figures.money().least(), BigDecimal::add));
    }
    least.forEach(
        (currency, sum) ->
            out.println("Melt of all: at least " + sum.toPlainString() + " " + currency + "."));
  }
}

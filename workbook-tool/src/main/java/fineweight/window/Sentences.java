package fineweight.window;

import fineweight.metal.Metal;
import fineweight.refresh.RefreshReport;
import fineweight.refresh.inventory.RefreshRefusal;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What the window says, in whole sentences. */
final class Sentences {
  static final String CAUTION =
      "Melt is not an offer and not an appraisal; many coins are worth more than their metal. Have a"
          + " doubtful piece looked at first.";

  private static final List<Metal> PRECIOUS =
      List.of(Metal.GOLD, Metal.SILVER, Metal.PLATINUM, Metal.PALLADIUM);

  private Sentences() {}

  static String of(RefreshRefusal refusal) {
    return refusal.kind() == RefreshRefusal.Kind.NO_PRICES
            && !refusal.getMessage().contains("spot sheet")
        ? "No price is given: type today's price of at least one metal into its field."
        : of((Exception) refusal);
  }

  /** The engine's sentence, with the window's fields in the place of the command's options. */
  static String of(Exception refusal) {
    String sentence =
        refusal
            .getMessage()
            .replace("run again with --leave-out-bad-rows", "tick \"Leave out bad rows\"")
            .replaceAll("name the one to fill with --sheet \"[^\"]*\"", "choose the one to fill")
            .replaceAll("name it with --sheet \"[^\"]*\"", "choose it in the field Sheet")
            .replaceAll("give --spot \\w+=PRICE", "type a price into its field");
    return sentence.matches("(?s).*[.?!]$") ? sentence : sentence + ".";
  }

  static String ofFault(Exception fault) {
    return "This is a fault of the program and not of your file, which was not changed: "
        + fault.getClass().getSimpleName().replace("Exception", "")
        + " "
        + fault.getMessage()
        + ".";
  }

  /** What was understood. */
  static String looked(RefreshReport report) {
    List<String> lines = new ArrayList<>();
    lines.add(where(report.inventory()));
    lines.addAll(figures(report.figures()));
    lines.add(
        report.changedCells() == 0
            ? "Nothing would change."
            : report.changedCells()
                + " cells would change; nothing has been written. Every other cell stays as it is.");
    return String.join("\n", lines);
  }

  /** What was done. */
  static String filled(RefreshReport report) {
    List<String> lines = new ArrayList<>();
    boolean written = report.changedCells() > 0 || report.backup().isPresent();
    lines.add(
        written
            ? "Filled: " + report.changedCells() + " cells changed."
            : "Nothing had to change; the file was not written.");
    report
        .backup()
        .ifPresent(
            backup -> lines.add("The file as it was is kept as " + backup.getFileName() + "."));
    lines.addAll(figures(report.figures()));
    lines.addAll(report.badCells());
    lines.addAll(report.notCalculated());
    lines.add(CAUTION);
    return String.join("\n", lines);
  }

  private static String where(RefreshReport.Understood understood) {
    String sheet = understood.sheet().isEmpty() ? "" : "Sheet \"" + understood.sheet() + "\", ";
    String others =
        understood.otherSheets().isEmpty()
            ? ""
            : " Left alone: \"" + String.join("\", \"", understood.otherSheets()) + "\".";
    String row = "headings in row " + understood.headingRow() + ".";
    return (sheet.isEmpty() ? "H" + row.substring(1) : sheet + row) + others;
  }

  private static List<String> figures(RefreshReport.Figures figures) {
    List<String> lines = new ArrayList<>();
    lines.add(
        figures.rows()
            + " rows, "
            + figures.pieces()
            + " pieces: "
            + figures.states().entrySet().stream()
                .map(entry -> entry.getValue() + " " + entry.getKey())
                .collect(Collectors.joining(", "))
            + ".");
    String ounces =
        PRECIOUS.stream()
            .filter(metal -> figures.content().troyOunces(metal).signum() > 0)
            .map(metal -> metal.word() + " " + rounded(figures.content().troyOunces(metal)))
            .collect(Collectors.joining(", "));
    if (!ounces.isEmpty()) {
      lines.add("Fine troy ounces: " + ounces + ".");
    }
    BigDecimal least = figures.money().least();
    BigDecimal most = figures.money().most();
    if (most.signum() > 0) {
      lines.add("Melt " + range(least, most) + " " + figures.currency() + ".");
    }
    if (figures.unpriced() > 0) {
      lines.add(
          figures.unpriced()
              + " rows hold a metal without a price: their melt stays empty. Type its price above.");
    }
    return lines;
  }

  private static String range(BigDecimal least, BigDecimal most) {
    return least.compareTo(most) == 0
        ? least.toPlainString()
        : "at least " + least.toPlainString() + ", at most " + most.toPlainString();
  }

  private static String rounded(BigDecimal ounces) {
    return ounces.setScale(4, RoundingMode.HALF_UP).toPlainString();
  }
}

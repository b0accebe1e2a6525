package fineweight.tool;

import fineweight.metal.Metal;
import fineweight.money.Amounts;
import fineweight.refresh.RefreshReport;
import fineweight.refresh.collection.SaleLine;
import fineweight.sale.RealisedGain;
import java.io.PrintWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;

/** A run's report in the words of a collector. */
final class ReportWords {
  static final String CAUTION =
      "Melt is not an offer and not an appraisal; many coins are worth more than their metal. Have a doubtful piece looked at first.";

  private static final int MOST_OPEN_ROWS = 12;
  private static final BigDecimal HUNDRED = new BigDecimal("100");

  private final PrintWriter out;

  ReportWords(PrintWriter out) {
    this.out = out;
  }

  void print(RefreshReport report, boolean dryRun) {
    understood(report.inventory());
    figures(report.figures());
    selling(report);
    open(report.open());
    ending(report, dryRun);
    out.flush();
  }

  private void understood(RefreshReport.Understood understood) {
    String sheet = understood.sheet().isEmpty() ? "" : ", sheet \"" + understood.sheet() + "\"";
    out.println(understood.file() + sheet + ", headings in row " + understood.headingRow());
    out.println(
        "  understood: "
            + understood.columns().entrySet().stream()
                .map(entry -> entry.getKey().replaceAll("\\s+", " ") + " = " + entry.getValue())
                .collect(Collectors.joining("; ")));
    if (!understood.unused().isEmpty()) {
      out.println(
          "  not used:   " + String.join("; ", understood.unused()).replaceAll("\\s+", " "));
    }
    if (!understood.otherSheets().isEmpty()) {
      out.println(
          "  left alone: sheet \""
              + String.join("\", \"", understood.otherSheets())
              + "\" (name one with --sheet to fill it instead)");
    }
    out.println();
  }

  private void figures(RefreshReport.Figures figures) {
    out.println(
        figures.rows()
            + " rows, "
            + figures.pieces()
            + " pieces: "
            + figures.states().entrySet().stream()
                .map(entry -> entry.getValue() + " " + entry.getKey())
                .collect(Collectors.joining(", ")));
    for (Metal metal : List.of(Metal.GOLD, Metal.SILVER, Metal.PLATINUM, Metal.PALLADIUM)) {
      BigDecimal ounces = figures.content().troyOunces(metal);
      if (ounces.signum() > 0) {
        out.printf(
            "  %-10s %12s fine troy ounces%n",
            metal.word(), ounces.setScale(4, RoundingMode.HALF_UP).toPlainString());
      }
    }
    BigDecimal least = figures.money().least();
    BigDecimal most = figures.money().most();
    String range =
        least.compareTo(most) == 0
            ? least.toPlainString()
            : "at least " + least.toPlainString() + ", at most " + most.toPlainString();
    out.println(
        "  melt       "
            + range
            + " "
            + figures.currency()
            + " at the spot prices of "
            + figures.spotDate());
    details(figures, least);
  }

  private void details(RefreshReport.Figures figures, BigDecimal least) {
    if (!figures.pricesFromWorkbook().isEmpty()) {
      out.println(
          "  prices of "
              + words(figures.pricesFromWorkbook())
              + " taken from the workbook's spot sheet");
    }
    BigDecimal memory = figures.money().fromMemory();
    if (memory.signum() > 0 && least.signum() > 0) {
      out.println(
          "  "
              + memory.multiply(HUNDRED).divide(least, 1, RoundingMode.HALF_UP)
              + " % of it rests on standards from memory, for which no text was found");
    }
    if (figures.unpriced() > 0) {
      out.println(
          "  "
              + figures.unpriced()
              + " rows hold a metal for which no price was given: their melt is left empty (add --spot)");
    }
  }

  private void selling(RefreshReport report) {
    List<SaleLine> lines = report.selling().lines();
    if (!lines.isEmpty()) {
      out.println(
          "  " + lines.size() + (lines.size() == 1 ? " row is" : " rows are") + " for sale");
    }
    for (RealisedGain.Year year : report.selling().gains().years()) {
      out.println(
          "  gone in "
              + year.year()
              + ": "
              + year.pieces()
              + (year.pieces() == 1 ? " piece, received " : " pieces, received ")
              + Amounts.words(year.received())
              + " after fees, cost "
              + Amounts.words(year.cost())
              + ", gain "
              + Amounts.words(year.gain().money()));
    }
  }

  private static String words(List<Metal> metals) {
    return metals.stream().map(Metal::word).collect(Collectors.joining(", "));
  }

  private void open(List<RefreshReport.OpenRow> open) {
    if (open.isEmpty()) {
      return;
    }
    out.println();
    out.println(
        open.size()
            + (open.size() == 1 ? " row needs" : " rows need")
            + " you, most money at stake first:");
    for (RefreshReport.OpenRow row : open.subList(0, Math.min(open.size(), MOST_OPEN_ROWS))) {
      String stake =
          row.atStake().signum() > 0 ? " (" + row.atStake().toPlainString() + " at stake)" : "";
      out.println("  " + row.place() + ": " + row.words() + stake);
      out.println("      " + row.note());
    }
    if (open.size() > MOST_OPEN_ROWS) {
      out.println(
          "  ... and " + (open.size() - MOST_OPEN_ROWS) + " more, see the State and Note columns");
    }
  }

  private void ending(RefreshReport report, boolean dryRun) {
    out.println();
    if (dryRun) {
      out.println(report.changedCells() + " cells would change; nothing was written.");
    } else if (report.changedCells() == 0 && report.backup().isEmpty()) {
      out.println("Nothing had to change; the file was not written.");
    } else {
      out.println(
          report.changedCells()
              + " cells changed"
              + report
                  .backup()
                  .map(backup -> "; the file as it was is kept as " + backup.getFileName())
                  .orElse("")
              + ".");
    }
    out.println(CAUTION);
  }
}

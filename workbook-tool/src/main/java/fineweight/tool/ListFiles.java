package fineweight.tool;

import de.siegmar.fastcsv.writer.CsvWriter;
import fineweight.label.LabelField;
import fineweight.refresh.RefreshReport;
import fineweight.refresh.collection.ByPlace;
import fineweight.refresh.collection.Gains;
import fineweight.refresh.collection.SaleLine;
import fineweight.sale.RealisedGain;
import fineweight.settings.SettingException;
import fineweight.valuation.Worth;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.joda.money.Money;

/** The lists that a run writes beside the workbook, as CSV in UTF-8. */
final class ListFiles {
  private ListFiles() {}

  static void saleList(Path file, RefreshReport report) throws SettingException {
    List<List<String>> lines = new ArrayList<>();
    lines.add(
        List.of(
            "piece",
            "row",
            "country",
            "coin",
            "year",
            "mint",
            "metal",
            "pieces",
            "grade",
            "holder",
            "faults",
            "cost",
            "least price",
            "melt floor",
            "currency",
            "place",
            "picture"));
    for (SaleLine line : report.selling().lines()) {
      lines.add(
          List.of(
              line.number(),
              Integer.toString(line.row() + 1),
              line.coin().country(),
              line.coin().words(),
              line.coin().year(),
              line.coin().mint(),
              line.coin().metal(),
              Long.toString(line.figures().pieces()),
              line.state().grade(),
              line.state().holder(),
              line.state().faults(),
              words(line.figures().cost()),
              words(line.figures().least()),
              line.figures().floor().map(BigDecimal::toPlainString).orElse(""),
              report.figures().currency(),
              line.keeping().place(),
              line.keeping().picture()));
    }
    write(file, lines);
  }

  /** What is kept where, with the day of the prices in every line. */
  static void placeList(Path file, RefreshReport report) throws SettingException {
    List<List<String>> lines = new ArrayList<>();
    lines.add(
        List.of(
            "place",
            "date",
            "piece",
            "country",
            "coin",
            "year",
            "mint",
            "metal",
            "pieces",
            "grade",
            "holder",
            "faults",
            "worth",
            "cost",
            "currency",
            "picture",
            "worth rests on"));
    for (ByPlace.Line line : report.selling().byPlace().lines()) {
      SaleLine piece = line.piece();
      lines.add(
          List.of(
              line.place(),
              report.figures().spotDate().toString(),
              piece.number(),
              piece.coin().country(),
              piece.coin().words(),
              piece.coin().year(),
              piece.coin().mint(),
              piece.coin().metal(),
              Long.toString(piece.figures().pieces()),
              piece.state().grade(),
              piece.state().holder(),
              piece.state().faults(),
              words(line.amount()),
              words(piece.figures().cost()),
              report.figures().currency(),
              piece.keeping().picture(),
              line.worth().map(Worth::sentence).orElse("not known")));
    }
    List<String> caution = new ArrayList<>(Collections.nCopies(17, ""));
    caution.set(4, ByPlace.CAUTION);
    lines.add(caution);
    write(file, lines);
  }

  static void gains(Path file, RefreshReport report) throws SettingException {
    Gains gains = report.selling().gains();
    List<List<String>> lines = new ArrayList<>();
    lines.add(
        List.of(
            "year",
            "date",
            "piece",
            "what",
            "state",
            "pieces",
            "received after fees",
            "cost",
            "gain",
            "currency"));
    for (Gains.Line line : gains.lines()) {
      RealisedGain gain = line.gain();
      lines.add(
          List.of(
              Integer.toString(gain.date().getYear()),
              gain.date().toString(),
              gain.key(),
              line.row().words(),
              gain.state().word(),
              Integer.toString(gain.pieces()),
              words(gain.received()),
              words(gain.cost()),
              words(gain.gain().money()),
              report.figures().currency()));
    }
    for (RealisedGain.Year year : gains.years()) {
      lines.add(
          List.of(
              Integer.toString(year.year()),
              "",
              "",
              "all of " + year.year() + " without what was returned",
              "",
              Integer.toString(year.pieces()),
              words(year.received()),
              words(year.cost()),
              words(year.gain().money()),
              report.figures().currency()));
    }
    lines.add(List.of("", "", "", Gains.CAUTION, "", "", "", "", "", ""));
    write(file, lines);
  }

  /** The labels with a column for each field, for a program that prints labels. */
  static void labels(OutputStream out, List<LabelChoiceOptions.Chosen> labels) throws IOException {
    // Closing the writer would close the stream, which is its owner's to do.
    CsvWriter writer =
        CsvWriter.builder().build(new OutputStreamWriter(out, StandardCharsets.UTF_8));
    writer.writeRecord(Stream.of(LabelField.values()).map(LabelField::word).toList());
    for (LabelChoiceOptions.Chosen label : labels) {
      writer.writeRecord(
          Stream.of(LabelField.values())
              .map(field -> harmless(label.fields().getOrDefault(field, "")))
              .toList());
    }
    writer.flush();
  }

  private static String words(Optional<Money> money) {
    return money.map(ListFiles::words).orElse("");
  }

  private static String words(Money money) {
    return money.getAmount().toPlainString();
  }

  /** Complete beside its place first, so that a full disk never leaves half a list. */
  private static void write(Path file, List<List<String>> lines) throws SettingException {
    Path whole = file.toAbsolutePath().resolveSibling("." + file.getFileName() + ".new");
    try {
      try (CsvWriter writer = CsvWriter.builder().build(whole, StandardCharsets.UTF_8)) {
        lines.forEach(line -> writer.writeRecord(line.stream().map(ListFiles::harmless).toList()));
      }
      Files.move(whole, file, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException failed) {
      throw new SettingException(
          "the list "
              + file
              + " cannot be written; choose a folder that you may write to, and close the file");
    }
  }

  /** No office shall take a cell of words for a formula. */
  private static String harmless(String text) {
    boolean figure = text.matches("-?\\d+(\\.\\d+)?");
    return !figure && text.matches("(?s)[=+\\-@\\t].*") ? "'" + text : text;
  }
}

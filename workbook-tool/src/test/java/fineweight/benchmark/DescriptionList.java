package fineweight.benchmark;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import fineweight.clue.Field;
import fineweight.clue.FieldRole;
import fineweight.clue.lexicon.Lexicon;
import fineweight.clue.reading.ClueReader;
import fineweight.column.Appraisal;
import fineweight.column.Appraiser;
import fineweight.identification.CoinIdentifier;
import fineweight.metal.Metal;
import fineweight.quantity.MassUnit;
import fineweight.refresh.Refresh;
import fineweight.refresh.RefreshWishes;
import fineweight.refresh.column.MoneyCells;
import fineweight.refresh.inventory.RefreshRefusal;
import fineweight.spot.SpotPrice;
import fineweight.spot.SpotPrices;
import fineweight.standard.Standards;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.csv.CsvWorkbook;
import fineweight.workbook.save.SafeSave;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/**
 * A text table of descriptions as collectors write them, and the work on it. The lines are those
 * written by hand for the tests, over and over, each time with another number of pieces: no row has
 * the fields of another, so none is remembered from before.
 */
final class DescriptionList {
  private static final String HOME = "US";
  private static final int LATEST_YEAR = 2027;

  private DescriptionList() {}

  static Path write(Path file, int rows) throws IOException {
    Path lines =
        Path.of(System.getProperty("fineweight.root", ".."))
            .resolve("functions/src/test/resources/fineweight/clue/descriptions.csv");
    List<String> texts;
    try (CsvReader<NamedCsvRecord> read = CsvReader.builder().ofNamedCsvRecord(lines)) {
      texts = read.stream().map(row -> row.getField("text")).toList();
    }
    try (CsvWriter out = CsvWriter.builder().build(file)) {
      out.writeRecord("Description", "Qty");
      for (int row = 0; row < rows; row++) {
        out.writeRecord(texts.get(row % texts.size()), Integer.toString(row / texts.size() + 1));
      }
    }
    return file;
  }

  /** Reads and values every line, and nothing else. */
  static void appraise(Path file) throws IOException {
    Lexicon lexicon = Lexicon.standard();
    Appraiser appraiser =
        new Appraiser(
            new ClueReader(lexicon),
            new CoinIdentifier(Standards.catalogue(), lexicon, HOME, LATEST_YEAR),
            prices(),
            Standards.catalogue());
    BigDecimal ounces = BigDecimal.ZERO;
    try (CsvReader<NamedCsvRecord> read = CsvReader.builder().ofNamedCsvRecord(file)) {
      for (NamedCsvRecord row : read) {
        Appraisal found =
            appraiser.appraise(
                List.of(
                    new Field(FieldRole.DESCRIPTION, row.getField("Description")),
                    new Field(FieldRole.COUNT, row.getField("Qty"))));
        ounces = ounces.add(found.ounces(Metal.SILVER).orElse(BigDecimal.ZERO));
      }
    }
    if (ounces.signum() == 0) {
      throw new IllegalStateException("nothing was found in " + file);
    }
  }

  /** The whole job: read, value, write the calculated columns, with the backup. */
  static void refresh(Path file) throws WorkbookRefusal, RefreshRefusal, IOException {
    RefreshWishes wishes =
        new RefreshWishes(
            prices(),
            true,
            Optional.empty(),
            Optional.empty(),
            MoneyCells.VALUES,
            true,
            false,
            Standards.catalogue(),
            HOME,
            LATEST_YEAR,
            Map.of(),
            RefreshWishes.Further.NOTHING);
    try (Workbook workbook = CsvWorkbook.open(file, SafeSave.onDisk())) {
      Refresh.run(workbook, wishes);
    }
  }

  private static SpotPrices prices() {
    return SpotPrices.of(
        CurrencyUnit.USD,
        LocalDate.of(2026, 11, 25),
        List.of(price(Metal.SILVER, "30"), price(Metal.GOLD, "2500")));
  }

  private static SpotPrice price(Metal metal, String amount) {
    return new SpotPrice(metal, new BigDecimal(amount), CurrencyUnit.USD, MassUnit.TROY_OUNCE);
  }
}

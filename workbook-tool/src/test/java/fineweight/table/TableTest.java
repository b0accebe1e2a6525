package fineweight.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fineweight.clue.lexicon.Lexicon;
import fineweight.clue.reading.ClueReader;
import fineweight.column.Appraiser;
import fineweight.identification.CoinIdentifier;
import fineweight.metal.Metal;
import fineweight.quantity.MassUnit;
import fineweight.refresh.worth.Spot;
import fineweight.refresh.worth.Worths;
import fineweight.spot.SpotPrice;
import fineweight.spot.SpotPrices;
import fineweight.standard.Standards;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TableTest {
  @TempDir Path folder;

  private Path workbook() {
    return folder.resolve("coins.xlsx");
  }

  private String talk(String... lines) throws IOException {
    CurrencyUnit dollar = CurrencyUnit.USD;
    SpotPrices prices =
        SpotPrices.of(
            dollar,
            LocalDate.of(2026, 11, 2),
            List.of(
                new SpotPrice(Metal.SILVER, new BigDecimal("30"), dollar, MassUnit.TROY_OUNCE)));
    Lexicon lexicon = Lexicon.standard();
    Appraiser appraiser =
        new Appraiser(
            new ClueReader(lexicon),
            new CoinIdentifier(Standards.catalogue(), lexicon, "US", 2026),
            prices,
            Standards.catalogue());
    StringWriter out = new StringWriter();
    try (TableJournal journal = TableJournal.open(TableJournal.beside(workbook()))) {
      OpenedPieces pieces = new OpenedPieces(journal);
      pieces.say(TableJournal.Kind.LOT, "Box 1");
      pieces.say(TableJournal.Kind.COST, "30");
      new TableTalk(
              pieces,
              appraiser,
              new Worths(new Spot(prices, BigDecimal.ZERO, List.of())),
              SetPlaces.ofNothing(),
              new LotKeeping(
                  file -> {
                    throw new AssertionError("no workbook is asked for here");
                  },
                  workbook(),
                  Optional.empty(),
                  appraiser,
                  LocalDate.of(2026, 11, 2)),
              new PrintWriter(out))
          .talk(new BufferedReader(new StringReader(String.join("\n", lines))));
    }
    return out.toString();
  }

  @Test
  void tellsEachPieceAndTheStandingAgainstTheCost() throws Exception {
    // 26.73 g x 0.900 / 31.1034768 g x 30 = 23.20 (Act of 18 January 1837).
    assertThat(talk("1881 Morgan dollar", "1921 Morgan dollar"))
        .contains("1  dollar, Morgan; silver 900; worth 23.20 USD")
        .contains("1 typed, 23.20 USD, 6.80 USD short of the cost of 30.00 USD")
        .contains("2 typed, 46.40 USD, the lot has paid for itself: 16.40 USD over its cost");
  }

  @Test
  void tellsWhereEachPieceStandsInTheTypeSet() throws Exception {
    assertThat(
            talk("1921 Morgan dollar VF", "1921 Morgan dollar MS63", "1881 Morgan dollar F")
                .lines())
        .filteredOn(line -> line.contains("type set: "))
        .hasSize(3)
        .satisfiesExactly(
            line -> assertThat(line).endsWith("fills a hole"),
            line -> assertThat(line).endsWith("improves on the one you have"),
            line -> assertThat(line).endsWith("duplicate"));
  }

  @Test
  void takesBackAndCorrects() throws Exception {
    assertThat(talk("1881 Morgan dollar", "1964 half dollar", "undo", "correct 1 1964 half dollar"))
        .contains("Taken back: 1964 half dollar")
        .contains("1 typed, 10.85 USD, 19.15 USD short");
    assertThat(talk("correct 7 1964 half dollar", "undo", "undo"))
        .contains("There is no piece 7.")
        .contains("There is no piece yet.");
  }

  @Test
  void goesOnWhereItWasLeft() throws Exception {
    talk("1881 Morgan dollar", "quit");
    assertThat(talk("1921 Morgan dollar"))
        .contains("Taken up again: 1 pieces")
        .contains("2 typed, 46.40 USD");
  }

  @Test
  void savesOnceIntoAListOfItsOwn() throws Exception {
    talk("1881 Morgan dollar", "=1+1 dollar", "save list");
    assertThat(Files.readString(folder.resolve("coins-lot-1.csv")))
        .isEqualToNormalizingNewlines(
            "Number,Lot,Description,Cost\n1,Box 1,1881 Morgan dollar,30\n2,Box 1,'=1+1 dollar,\n");
    assertThat(TableJournal.beside(workbook())).doesNotExist();
    talk("1964 half dollar", "save list");
    assertThat(folder.resolve("coins-lot-2.csv")).exists();
  }

  @Test
  void aLineCutOffByACrashIsDroppedAndNothingElse() throws Exception {
    talk("1881 Morgan dollar", "quit");
    Path journal = TableJournal.beside(workbook());
    byte[] torn = "add\t2\t1921 Mor".getBytes(StandardCharsets.UTF_8);
    Files.write(journal, torn, StandardOpenOption.APPEND);
    assertThat(talk("1964 half dollar")).contains("2 typed, 34.05 USD");
  }

  @Test
  void twoTablesDoNotShareAJournal() throws Exception {
    Path place = TableJournal.beside(workbook());
    try (TableJournal first = TableJournal.open(place)) {
      assertThat(first.entries()).isEmpty();
      assertThatThrownBy(() -> TableJournal.open(place)).hasMessageContaining("another table");
    }
  }

  @Test
  void aFileThatIsNoJournalIsLeftAlone() throws Exception {
    Path place = TableJournal.beside(workbook());
    Files.writeString(place, "my own notes\n");
    assertThatThrownBy(() -> TableJournal.open(place)).hasMessageContaining("not ours");
    assertThat(place).hasContent("my own notes");
  }
}

package fineweight.tool;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.tool.judge.FilledRow;
import fineweight.tool.judge.FilledTable;
import fineweight.tool.judge.OwnParts;
import fineweight.workbook.corpus.SharedFiles;
import fineweight.workbook.oracle.Oracle;
import fineweight.workbook.oracle.parts.RawZip;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The three inventories of another hand keep everything that their own description says must stay:
 * compared as plain zip, XML and bytes, after a first run, a second run and the taking out.
 */
class InventoriesKeptTest {
  private static final Charset WESTERN = Charset.forName("windows-1252");

  /**
   * Parts of a sheet that hold what an owner has set up; cells and widths are left to the oracle.
   */
  private static final Pattern SET_UP =
      Pattern.compile(
          "<(sheetViews|sheetProtection|autoFilter|mergeCells|conditionalFormatting|dataValidations"
              + "|hyperlinks|pageSetup|legacyDrawing|tableParts)\\b.*?(?:/>|</\\1>)",
          Pattern.DOTALL);

  @TempDir Path folder;

  @Test
  void trackerKeepsItsTableAndAllElse() throws IOException {
    Path original = SharedFiles.folder("inventories").resolve("tracker-table.xlsx");
    keeps(original);
  }

  @Test
  void shoeboxKeepsItsProtectionAndAllElse() throws IOException {
    Path original = SharedFiles.folder("inventories").resolve("world-shoebox.xlsx");
    assertThat(setUp(original)).anyMatch(each -> each.contains("<sheetProtection"));
    keeps(original);
  }

  private void keeps(Path original) throws IOException {
    Path file = CommandRun.copy(original, folder);
    CommandRun dry = CommandRun.refresh(file, "--dry-run");
    assertThat(Files.readAllBytes(file)).isEqualTo(Files.readAllBytes(original));
    CommandRun first = CommandRun.refresh(file, "--fill-protected");
    assertThat(first.code()).as(first.err()).isZero();
    assertThat(Oracle.findings(original, file, OwnParts.of(file).expected(dry.out()))).isEmpty();
    assertThat(setUp(file)).isEqualTo(setUp(original)).isNotEmpty();
    partsAreTheSame(original, file);

    byte[] filled = Files.readAllBytes(file);
    CommandRun second = CommandRun.refresh(file, "--fill-protected");
    assertThat(second.out()).contains("Nothing had to change; the file was not written.");
    assertThat(Files.readAllBytes(file)).isEqualTo(filled);

    OwnParts own = OwnParts.of(file);
    CommandRun out = CommandRun.of("take-out", file);
    assertThat(out.code()).as(out.err()).isZero();
    assertThat(Oracle.findings(original, file, own.takenOut(dry.out()))).isEmpty();
    assertThat(OwnParts.of(file)).isEqualTo(OwnParts.NONE);
  }

  /** Tables, comments, drawings, themes and settings are the same bytes. */
  private static void partsAreTheSame(Path original, Path file) throws IOException {
    Map<String, RawZip.Entry> now = RawZip.of(file).entries();
    int same = 0;
    for (Map.Entry<String, RawZip.Entry> part : RawZip.of(original).entries().entrySet()) {
      boolean owners =
          part.getKey().matches("xl/(tables|comments|drawings|theme|worksheets/_rels).*");
      if (owners) {
        assertThat(now).containsKey(part.getKey());
        assertThat(now.get(part.getKey()).content())
            .as(part.getKey())
            .isEqualTo(part.getValue().content());
        same++;
      }
    }
    assertThat(same).isPositive();
  }

  private static List<String> setUp(Path file) throws IOException {
    List<String> found = new ArrayList<>();
    for (Map.Entry<String, RawZip.Entry> part : RawZip.of(file).entries().entrySet()) {
      if (part.getKey().matches("xl/worksheets/sheet[1-3]\\.xml")) {
        String xml = new String(part.getValue().content(), StandardCharsets.UTF_8);
        Matcher each = SET_UP.matcher(xml);
        while (each.find()) {
          found.add(part.getKey() + ": " + each.group());
        }
      }
    }
    return found;
  }

  @Test
  void theTextTableOnlyGetsFieldsAtTheEndsOfItsLines() throws IOException {
    Path original = SharedFiles.folder("inventories").resolve("verzameling-export.csv");
    Path file = CommandRun.copy(original, folder);
    CommandRun first = CommandRun.refresh(file, "--fill-protected");
    assertThat(first.code()).as(first.err()).isZero();
    List<String> before = lines(original);
    List<String> after = lines(file);
    assertThat(after).hasSameSizeAs(before);
    int longer = 0;
    for (int i = 0; i < before.size(); i++) {
      assertThat(after.get(i)).as("line " + (i + 1)).startsWith(before.get(i));
      longer += after.get(i).length() > before.get(i).length() ? 1 : 0;
    }
    assertThat(longer).isGreaterThan(70);
    assertThat(after.get(36).replace(";", "")).as("the empty line of separators").isEmpty();
    assertThat(Files.readString(file, WESTERN).replace("\r\n", "")).doesNotContain("\n", "\r");

    byte[] filled = Files.readAllBytes(file);
    assertThat(CommandRun.refresh(file, "--fill-protected").out())
        .contains("the file was not written");
    assertThat(Files.readAllBytes(file)).isEqualTo(filled);

    assertThat(CommandRun.of("take-out", file).done()).isTrue();
    assertThat(Files.readAllBytes(file)).isEqualTo(Files.readAllBytes(original));
  }

  private static List<String> lines(Path file) throws IOException {
    return List.of(Files.readString(file, WESTERN).split("\r\n", -1));
  }

  @Test
  void lotsOfTheTrackerAddUpAsItsDescriptionSays() throws IOException {
    Path inventories = SharedFiles.folder("inventories");
    Path file = CommandRun.copy(inventories.resolve("tracker-table.xlsx"), folder);
    assertThat(CommandRun.refresh(file, "--fill-protected").done()).isTrue();
    FilledTable lots = FilledTable.ofWorkbook(file, "Fineweight lots", 3);
    Set<String> seen = new LinkedHashSet<>();
    for (String line : Files.readAllLines(inventories.resolve("tracker-table.expect.md"))) {
      if (line.matches("\\| [ABC] \\| [0-9].*")) {
        String[] wanted = line.substring(1).split("\\|");
        FilledRow lot =
            lots.rows().values().stream()
                .filter(row -> row.text("Lot").equals(wanted[0].strip()))
                .findFirst()
                .orElseThrow();
        compareLot(wanted, lot);
        seen.add(lot.text("Lot"));
      }
    }
    assertThat(seen).containsExactly("A", "B", "C");
  }

  /**
   * Lot C holds two proof sets, which its description values as five coins each (0.614883 ozt,
   * 18.45 USD) and lets pass as asked; the silver in a half ounce of American gold, which may be
   * shown; and the five ounce piece, counted as 5 ozt.
   */
  private static BigDecimal more(String lot, String sets, String silver) {
    return lot.equals("C")
        ? new BigDecimal(silver).subtract(new BigDecimal(sets))
        : BigDecimal.ZERO;
  }

  private static void compareLot(String[] wanted, FilledRow lot) {
    String name = lot.text("Lot");
    assertThat(lot.text("Rows")).as(name).isEqualTo(wanted[1].strip());
    near(name + " pieces", lot.text("Pieces"), wanted[2], more(name, "8", "0"), "0");
    near(name + " gold", lot.ounces("XAU").toString(), wanted[3], BigDecimal.ZERO, "0.0001");
    BigDecimal silver = more(name, "1.229766", "0.021376");
    near(name + " silver", lot.ounces("XAG").toString(), wanted[4], silver, "0.0001");
    near(name + " platinum", lot.ounces("XPT").toString(), wanted[5], BigDecimal.ZERO, "0.0001");
    String cents = new BigDecimal(wanted[1].strip()).multiply(new BigDecimal("0.005")).toString();
    BigDecimal money = more(name, "36.90", "0.64");
    near(name + " melt", lot.text("Melt at least USD"), wanted[7], money, cents);
    assertThat(wanted[8]).contains(lot.text("Cost in"));
    assertThat(new BigDecimal(lot.text("Cost")))
        .isEqualByComparingTo(wanted[8].replaceAll("[A-Z ]", ""));
    BigDecimal left =
        new BigDecimal(lot.text("Worth at least USD")).subtract(new BigDecimal(lot.text("Cost")));
    assertThat(new BigDecimal(lot.text("Gain USD"))).as(name).isEqualByComparingTo(left);
  }

  /** Within 0.05 % and the roundings; the figure with asked rows stands in brackets. */
  private static void near(
      String what, String given, String words, BigDecimal more, String roundings) {
    Matcher bracket = Pattern.compile("\\(([0-9.]+)\\)").matcher(words);
    String figure = (bracket.find() ? bracket.group(1) : words).strip();
    BigDecimal wanted = new BigDecimal(figure).add(more);
    BigDecimal share = what.endsWith("pieces") ? BigDecimal.ZERO : new BigDecimal("0.0005");
    assertThat(new BigDecimal(given).subtract(wanted).abs())
        .as(what + " " + given + ", expected " + wanted)
        .isLessThanOrEqualTo(wanted.multiply(share).add(new BigDecimal(roundings)));
  }
}

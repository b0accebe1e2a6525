package fineweight.giveaway;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.column.Headings;
import fineweight.tool.CommandRun;
import fineweight.workbook.corpus.PlantedCopies;
import fineweight.workbook.validity.WorkbookValidator;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** No text of an owner's comes through, wherever in the package it was. */
class GiveAwayMarkersTest {
  /**
   * Kept by design, and printed for the owner to look at: a spreadsheet cannot do without them.
   * Everything else is no exception.
   */
  private static final Set<String> KEPT =
      Set.of(
          "workbook.xml:sheet@name",
          "workbook.xml:definedName@name",
          "table.xml:table@name",
          "table.xml:table@displayName",
          "table.xml:tableColumn@name");

  @TempDir Path folder;

  /** One kind of place after the other: where the file is still a workbook, the marker goes. */
  @Test
  void everyKindOfPlaceIsEmptied() throws IOException {
    Path whole = OwnersWorkbook.write(folder.resolve("owner.xlsx"));
    List<String> leaks = new ArrayList<>();
    int taken = 0;
    int number = 0;
    Set<String> kinds = new MarkedCopy(whole).kinds();
    for (String kind : kinds) {
      MarkedCopy copy = new MarkedCopy(whole);
      copy.mark((place, value) -> place.equals(kind) && !isHeading(value));
      Path marked = copy.write(folder.resolve("m" + number + ".xlsx"));
      Path made = folder.resolve("g" + number++ + ".xlsx");
      CommandRun run = CommandRun.of("give-away", marked, made);
      assertThat(run.code()).as(kind + run.err()).isNotEqualTo(70);
      if (run.done()) {
        taken++;
        if (!KEPT.contains(kind)) {
          MarkedCopy.found(made).forEach(place -> leaks.add(kind + " -> " + place));
        }
      } else {
        assertThat(made).doesNotExist();
      }
    }
    assertThat(leaks).isEmpty();
    assertThat(kinds.size()).isGreaterThan(150);
    assertThat(taken).as("kinds that could be marked").isGreaterThan(kinds.size() / 2);
  }

  /** Texts of all kinds at once, in the made workbook: a sound template without any of them. */
  @Test
  void theTemplateOfAMarkedWorkbookIsSound() throws IOException {
    Path marked = marked(OwnersWorkbook.write(folder.resolve("owner.xlsx")), "all.xlsx");
    Path made = folder.resolve("made.xlsx");
    CommandRun run = CommandRun.of("give-away", marked, made);
    assertThat(run.code()).as(run.err()).isZero();
    assertThat(MarkedCopy.found(made)).isEmpty();
    assertThat(WorkbookValidator.findings(made)).isEmpty();
    assertThat(run.out())
        .contains("comments", "properties of the document", "pictures", "links", "Taken out");
  }

  /** Every workbook of the corpus with a few coins planted, its texts marked. */
  @Test
  void nothingComesThroughFromTheCorpus() throws IOException {
    List<String> leaks = new ArrayList<>();
    int made = 0;
    for (Path file : PlantedCopies.in(folder.resolve("planted"))) {
      if (!file.toString().endsWith(".xlsx")) {
        continue;
      }
      Path target = folder.resolve("c" + made + ".xlsx");
      CommandRun run = CommandRun.of("give-away", marked(file, "c.xlsx"), target);
      assertThat(run.code()).as(file + run.err()).isNotEqualTo(70);
      if (run.done()) {
        made++;
        MarkedCopy.found(target).stream()
            .filter(place -> !isPrintedHeading(place, run))
            .forEach(place -> leaks.add(file.getFileName() + " " + place));
        // A marked heading is no more the name of its column in the table.
        assertThat(WorkbookValidator.findings(target))
            .as(file.toString())
            .allMatch(finding -> finding.contains(MarkedCopy.MARKER));
      }
    }
    assertThat(leaks).isEmpty();
    assertThat(made).isGreaterThanOrEqualTo(20);
  }

  /** A heading that the program does not know stays, and is printed for the owner to look at. */
  private static boolean isPrintedHeading(String place, CommandRun run) {
    String text = place.substring(place.lastIndexOf('>') + 1);
    return !text.isEmpty()
        && run.out()
            .lines()
            .filter(line -> line.startsWith("  heading that is not of the trade"))
            .anyMatch(line -> line.contains(text + MarkedCopy.MARKER));
  }

  /** The empty workbook, filled with a new coin, is refreshed as any other. */
  @Test
  void theTemplateIsFilledAndRefreshed() throws IOException {
    Path made = folder.resolve("made.xlsx");
    Path owner = OwnersWorkbook.write(folder.resolve("owner.xlsx"));
    byte[] before = Files.readAllBytes(owner);
    assertThat(CommandRun.of("give-away", owner, made).code()).isZero();
    assertThat(owner).hasBinaryContent(before);
    Path filled = folder.resolve("filled.xlsx");
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(made));
        OutputStream out = Files.newOutputStream(filled)) {
      XSSFSheet coins = workbook.getSheet("Coins");
      assertThat(coins.getDataValidations()).hasSize(3);
      assertThat(coins.getDrawingPatriarch().getCharts()).hasSize(1);
      assertThat(coins.getRow(4).getCell(8).getCellFormula()).isEqualTo("E5*F5");
      assertThat(workbook.getSheet("Lists").getRow(0).getCell(0).getStringCellValue())
          .isEqualTo("Silver");
      coins.enableLocking();
      coins.getCTWorksheet().unsetSheetProtection();
      coins.getRow(4).createCell(0).setCellValue(1964);
      coins.getRow(4).createCell(2).setCellValue("quarter dollar");
      coins.getRow(4).createCell(4).setCellValue(2);
      workbook.write(out);
    }
    CommandRun run = CommandRun.refresh(filled);
    assertThat(run.code()).as(run.err()).isZero();
    // 31 U.S.C. 5112 as it stood in 1964: 6.25 g of 900 in a thousand; at 30.00 for a troy ounce
    // of 31.1034768 g two pieces hold 11.25 g, which are 10.85.
    assertThat(run.out()).contains("10.85");
  }

  @Test
  void anExistingFileIsLeftAloneAndAnOldFormatRefused() throws IOException {
    Path owner = OwnersWorkbook.write(folder.resolve("owner.xlsx"));
    Path there = Files.writeString(folder.resolve("there.xlsx"), "mine");
    CommandRun taken = CommandRun.of("give-away", owner, there);
    assertThat(taken.code()).isEqualTo(3);
    assertThat(there).hasContent("mine");
    Path old = folder.resolve("old.xls");
    try (HSSFWorkbook workbook = new HSSFWorkbook();
        OutputStream out = Files.newOutputStream(old)) {
      workbook.createSheet("Coins").createRow(0).createCell(0).setCellValue("Year");
      workbook.write(out);
    }
    CommandRun refused = CommandRun.of("give-away", old, folder.resolve("new.xlsx"));
    assertThat(refused.code()).isEqualTo(6);
    assertThat(refused.complaint()).contains("save it as .xlsx");
  }

  /** Marks the places of free texts; what holds the file together would only break it. */
  private Path marked(Path file, String name) throws IOException {
    MarkedCopy copy = new MarkedCopy(file);
    copy.mark((place, value) -> FREE.stream().anyMatch(place::endsWith) && !isHeading(value));
    return copy.write(folder.resolve(name));
  }

  private static final List<String> FREE =
      List.of(
          ":t",
          ":v_",
          "@prompt",
          "@promptTitle",
          "@error",
          "@errorTitle",
          "@author",
          "@tooltip",
          "@display",
          "@descr",
          "@title",
          "@comment",
          "@formatCode",
          "@codeName",
          "@uniqueName",
          "cellStyle@name",
          "name@val",
          "clrScheme@name",
          "theme@name",
          "@refersTo",
          ":creator",
          ":lastModifiedBy",
          ":title",
          ":subject",
          ":description",
          ":keywords",
          ":category",
          ":Company",
          ":Manager",
          ":oddHeader",
          ":oddFooter",
          ":evenHeader",
          ":firstHeader",
          ":author",
          ":lpwstr",
          "@totalsRowLabel",
          "cfRule@text",
          "@userName",
          ":text",
          ":f_");

  /** Headings stay by design. */
  private static boolean isHeading(String value) {
    return OwnersWorkbook.HEADINGS.contains(value)
        || OwnersWorkbook.FURTHER_HEADINGS.contains(value)
        || Headings.standard().match(value).isPresent();
  }
}

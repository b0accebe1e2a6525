package fineweight.workbook.xlsx;

import static fineweight.workbook.xlsx.Edits.drafts;
import static fineweight.workbook.xlsx.Edits.n;
import static fineweight.workbook.xlsx.Edits.number;
import static fineweight.workbook.xlsx.Edits.remove;
import static fineweight.workbook.xlsx.Edits.row;
import static fineweight.workbook.xlsx.Edits.rows;
import static fineweight.workbook.xlsx.Edits.save;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fineweight.workbook.CellLook;
import fineweight.workbook.CellPlace;
import fineweight.workbook.PageSetup;
import fineweight.workbook.SheetChart;
import fineweight.workbook.SheetChart.Range;
import fineweight.workbook.SheetDraft;
import fineweight.workbook.SheetDraft.DraftCell;
import fineweight.workbook.SheetDraft.Kind;
import fineweight.workbook.office.Office;
import fineweight.workbook.validity.WorkbookValidator;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Charts of ours beside whatever else a package holds. */
class OwnChartsTest {
  private static final String SHEET = "Bob's & ours";

  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void oneSheet() throws IOException {
    file =
        new RawWorkbook()
            .sheet("Coins", rows(row(1, n("A1", "1"))))
            .write(folder.resolve("coins.xlsx"));
  }

  private static SheetDraft sheet(String... worths) {
    List<List<DraftCell>> rows = new ArrayList<>();
    rows.add(List.of(DraftCell.text("Piece", Kind.HEADER), DraftCell.text("Worth", Kind.HEADER)));
    for (int i = 0; i < worths.length; i++) {
      rows.add(
          List.of(
              DraftCell.of(number(Integer.toString(i + 1)), CellLook.GENERAL),
              DraftCell.of(number(worths[i]), CellLook.GENERAL)));
    }
    return new SheetDraft(SHEET, false, rows, Map.of(), 1, Map.of()).printed(PageSetup.wide(1));
  }

  private static SheetChart chart(String name, int points) {
    return new SheetChart(
        SheetChart.PREFIX + name,
        SheetChart.Kind.LINE,
        new SheetChart.Words("Worth <of> it", "a line", "pieces", "USD", "#,##0.00"),
        Range.column(SHEET, 0, 1, points),
        List.of(
            new SheetChart.Series(new CellPlace(SHEET, 0, 1), Range.column(SHEET, 1, 1, points))),
        true,
        new SheetChart.Place(4, 1, 10, 15));
  }

  private static SheetDraft charted(String... worths) {
    return sheet(worths).with(List.of(chart("1", worths.length)));
  }

  private List<XSSFChart> charts() throws IOException {
    try (XSSFWorkbook workbook =
        new XSSFWorkbook(new ByteArrayInputStream(Files.readAllBytes(file)))) {
      return workbook.getSheet(SHEET).createDrawingPatriarch().getCharts();
    }
  }

  @Test
  void aChartComesGoesAndComesBackWithTheSameBytes() throws Exception {
    Set<String> original = RawWorkbook.parts(file);
    save(file, drafts(charted("1", "2.50")));
    byte[] first = Files.readAllBytes(file);
    assertThat(WorkbookValidator.findings(file)).isEmpty();
    assertThat(save(file, drafts(charted("1", "2.5"))).written()).isFalse();
    save(file, drafts(charted("1", "3")));
    assertThat(Files.readAllBytes(file)).isNotEqualTo(first);
    save(file, drafts(charted("1", "2.50")));
    assertThat(Files.readAllBytes(file)).isEqualTo(first);
    save(file, remove(List.of(), List.of(SHEET), List.of()));
    original.add("xl/styles.xml");
    assertThat(RawWorkbook.parts(file)).isEqualTo(original);
    for (String part : List.of("[Content_Types].xml", "xl/_rels/workbook.xml.rels")) {
      assertThat(RawWorkbook.read(file, part)).doesNotContain("chart", "drawing");
    }
  }

  @Test
  void anotherReaderFindsTheChartAndItsCells() throws Exception {
    save(file, drafts(charted("1", "2.50", "7")));
    assertThat(charts()).hasSize(1);
    XSSFChart chart = charts().get(0);
    assertThat(chart.getTitleText().getString()).isEqualTo("Worth <of> it");
    assertThat(chart.getCTChart().validate()).isTrue();
    assertThat(chart.getCTChartSpace().validate()).isTrue();
    var series = chart.getChartSeries().get(0).getSeries(0);
    assertThat(series.getValuesData().getDataRangeReference())
        .isEqualTo("'Bob''s & ours'!$B$2:$B$4");
    assertThat(series.getValuesData().getPointAt(1)).isEqualTo(2.5);
    assertThat(series.getCategoryData().getPointCount()).isEqualTo(3);
  }

  @Test
  void whatItsOwnerPutIntoTheDrawingStays() throws Exception {
    save(file, drafts(charted("1", "2")));
    try (XSSFWorkbook workbook =
        new XSSFWorkbook(new ByteArrayInputStream(Files.readAllBytes(file)))) {
      XSSFSheet sheet = workbook.getSheet(SHEET);
      XSSFChart own =
          sheet
              .createDrawingPatriarch()
              .createChart(new XSSFClientAnchor(0, 0, 0, 0, 1, 20, 5, 30));
      XDDFChartData pie = own.createData(ChartTypes.PIE, null, null);
      pie.addSeries(
          XDDFDataSourcesFactory.fromArray(new String[] {"a", "b"}),
          XDDFDataSourcesFactory.fromNumericCellRange(sheet, CellRangeAddress.valueOf("B2:B3")));
      own.plot(pie);
      try (var out = Files.newOutputStream(file)) {
        workbook.write(out);
      }
    }
    assertThat(save(file, drafts(charted("1", "2"))).written()).isFalse();
    save(file, drafts(charted("1", "3")));
    assertThat(charts()).hasSize(2);
    save(file, drafts(sheet("1", "3")));
    assertThat(charts()).hasSize(1);
    assertThat(WorkbookValidator.findings(file)).isEmpty();
    save(file, drafts(charted("1", "3")));
    assertThat(charts()).hasSize(2);
    assertThat(WorkbookValidator.findings(file)).isEmpty();
    save(file, remove(List.of(), List.of(SHEET), List.of()));
    assertThat(RawWorkbook.parts(file)).noneMatch(part -> part.contains("chart"));
  }

  @Test
  void aSheetWithoutChartsGetsOneLater() throws Exception {
    save(file, drafts(sheet("1", "2")));
    byte[] without = Files.readAllBytes(file);
    save(file, drafts(charted("1", "2")));
    assertThat(charts()).hasSize(1);
    assertThat(WorkbookValidator.findings(file)).isEmpty();
    save(file, drafts(sheet("1", "2").with(List.of(chart("1", 2), chart("2", 2)))));
    assertThat(charts()).hasSize(2);
    assertThat(RawWorkbook.parts(file)).contains("xl/charts/chart1.xml", "xl/charts/chart2.xml");
    save(file, drafts(sheet("1", "2")));
    assertThat(RawWorkbook.parts(file)).noneMatch(part -> part.contains("charts/"));
    assertThat(without).isNotEmpty();
  }

  @Test
  void anOfficeMaySaveTheFileWithoutADifferenceForUs() throws Exception {
    save(file, drafts(charted("1", "2.5")));
    Office.onThisMachine().saveAgain(file, folder.resolve("out"));
    Files.copy(
        folder.resolve("out/coins.xlsx"), file, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
    assertThat(charts()).hasSize(1);
    save(file, drafts(charted("1", "2.5")));
    assertThat(charts()).hasSize(1);
    byte[] once = Files.readAllBytes(file);
    assertThat(save(file, drafts(charted("1", "2.5"))).written()).isFalse();
    assertThat(Files.readAllBytes(file)).isEqualTo(once);
    save(file, drafts(charted("1", "4")));
    assertThat(charts()).hasSize(1);
  }

  @Test
  void aPageIsOneWideAndBeginsWithTheHeadings() throws Exception {
    save(file, drafts(charted("1", "2")));
    try (XSSFWorkbook workbook =
        new XSSFWorkbook(new ByteArrayInputStream(Files.readAllBytes(file)))) {
      XSSFSheet sheet = workbook.getSheet(SHEET);
      assertThat(sheet.getFitToPage()).isTrue();
      assertThat(sheet.getPrintSetup().getFitHeight()).isZero();
      assertThat(sheet.getPrintSetup().getLandscape()).isTrue();
      assertThat(sheet.getRepeatingRows().formatAsString()).isEqualTo("1:1");
    }
    save(file, remove(List.of(), List.of(SHEET), List.of()));
    assertThat(RawWorkbook.read(file, "xl/workbook.xml")).doesNotContain("definedName");
  }

  @Test
  void aProgramMustNotAskForNonsense() {
    SheetDraft twice = sheet("1").with(List.of(chart("1", 1), chart("1", 1)));
    assertThatThrownBy(() -> save(file, drafts(twice))).hasMessageContaining("two are named");
    SheetDraft nowhere = new SheetDraft("Other", false, List.of(), Map.of(), 0, Map.of());
    assertThatThrownBy(() -> save(file, drafts(nowhere.with(List.of(chart("1", 1))))))
        .hasMessageContaining("no draft is named Bob's & ours");
  }
}

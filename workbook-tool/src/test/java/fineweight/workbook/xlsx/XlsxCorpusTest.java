package fineweight.workbook.xlsx;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import fineweight.workbook.CellChange;
import fineweight.workbook.CellContent;
import fineweight.workbook.CellLook;
import fineweight.workbook.ColumnEdit;
import fineweight.workbook.SheetEdit;
import fineweight.workbook.SheetSummary;
import fineweight.workbook.Workbook.SaveResult;
import fineweight.workbook.Workbook.UsedArea;
import fineweight.workbook.WorkbookEdit;
import fineweight.workbook.WorkbookEdit.ColumnPlace;
import fineweight.workbook.WorkbookEdit.Removal;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.xlsx.xml.PlainUtf8;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.xmlbeans.XmlError;
import org.apache.xmlbeans.XmlOptions;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Three columns into every workbook of the corpus, looked at with another reader, and out again.
 */
class XlsxCorpusTest {
  /** Files that must be refused, and what the sentence speaks of. */
  private static final Map<String, String> REFUSED =
      Map.of(
          "encryptAES.xlsx",
          "encrypted workbook",
          "SampleSS.strict.xlsx",
          "Strict",
          // One attribute stands twice in it.
          "DataValidations-prompt-newlines.xlsx",
          "not valid XML");

  /** The validator takes the square of the number of its complaints. */
  private static final long LARGE = 200_000;

  @TempDir Path folder;

  private static Stream<Path> corpus() throws IOException {
    Path shared = Path.of(System.getProperty("fineweight.shared", "../shared"));
    boolean must = Boolean.getBoolean("fineweight.must.shared");
    assumeTrue(
        must || Files.isDirectory(shared.resolve("corpus")), "no corpus beside the checkout");
    List<Path> files = new ArrayList<>();
    for (String part : List.of("workbooks", "inventories")) {
      try (Stream<Path> list = Files.list(shared.resolve("corpus").resolve(part))) {
        list.filter(p -> p.toString().endsWith(".xlsx")).forEach(files::add);
      }
    }
    Collections.sort(files);
    return files.stream();
  }

  @TestFactory
  Stream<DynamicTest> everyWorkbook() throws IOException {
    return corpus()
        .map(p -> DynamicTest.dynamicTest(p.getFileName().toString(), () -> fillAndTakeOut(p)));
  }

  private void fillAndTakeOut(Path original) throws Exception {
    Path file = folder.resolve(original.getFileName().toString());
    Files.copy(original, file);
    String refused = REFUSED.get(original.getFileName().toString());
    if (refused != null) {
      assertThat(refusal(file)).contains(refused);
      return;
    }
    PlainReplacement replacement = new PlainReplacement();
    WorkbookEdit edit;
    List<CellChange> listed = new ArrayList<>();
    try (XlsxWorkbook workbook = XlsxWorkbook.open(file, replacement)) {
      edit = edit(workbook);
      workbook.preview(edit, listed::add);
      SaveResult result = workbook.save(edit);
      assertThat(result.written()).isTrue();
      assertThat(result.changedCells()).isEqualTo(listed.size());
    }
    assertSamePartsBut(original, file);
    assertOwnersCellsSame(original, file, edit, listed);
    assertSecondRunWritesNothing(file, edit);
    assertAsValidAsBefore(original, file);
    takeOut(file, edit);
    assertOwnersCellsSame(original, file, null, listed);
    assertSheetsGivenBack(original, file);
  }

  /** Each sheet and the list of sheets against the schema: no complaint that was not there. */
  private static void assertAsValidAsBefore(Path original, Path file) throws IOException {
    if (Files.size(original) < LARGE) {
      assertThat(complaints(original)).containsAll(complaints(file));
    }
  }

  private static Set<String> complaints(Path file) throws IOException {
    List<XmlError> found = new ArrayList<>();
    XmlOptions options = new XmlOptions().setErrorListener(found);
    try (Workbook workbook = WorkbookFactory.create(file.toFile(), null, true)) {
      ((XSSFWorkbook) workbook).getCTWorkbook().validate(options);
      for (Sheet sheet : workbook) {
        ((XSSFSheet) sheet).getCTWorksheet().validate(options);
      }
    }
    // Every office writes this attribute; the schema has forgotten it.
    return found.stream()
        .map(XmlError::getMessage)
        .filter(m -> !m.contains("space@http://www.w3.org/XML/1998/namespace in element t@"))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** The same text but for hints of width and blanks between elements. */
  private static void assertSheetsGivenBack(Path original, Path file) throws IOException {
    try (ZipFile before = ZipFile.builder().setPath(original).get();
        ZipFile after = ZipFile.builder().setPath(file).get()) {
      for (ZipArchiveEntry entry : Collections.list(before.getEntries())) {
        if (entry.getName().contains("worksheets/") && entry.getName().endsWith(".xml")) {
          String name = entry.getName();
          assertThat(normal(after, after.getEntry(name)).equals(normal(before, entry)))
              .as(name)
              .isTrue();
        }
      }
    }
  }

  private static String normal(ZipFile zip, ZipArchiveEntry entry) throws IOException {
    try (InputStream in = PlainUtf8.of(zip.getInputStream(entry))) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .replaceFirst("<\\?xml[^>]*>\\s*", "")
          .replaceAll(">\\s+<", "><")
          .replaceFirst("<(\\w+:)?cols\\s*/>", "")
          .replaceAll(" spans=\"[0-9: ]*\"", "")
          .replaceFirst("<(\\w+:)?dimension [^>]*>", "")
          .replaceAll("(<)((\\w+:)?(row|sheetData))((?: [^<> /][^<>]*?)?)\\s*/>", "$1$2$5></$2>");
    }
  }

  private static String refusal(Path file) throws Exception {
    try (XlsxWorkbook workbook = XlsxWorkbook.open(file, new PlainReplacement())) {
      workbook.save(edit(workbook));
    } catch (WorkbookRefusal e) {
      return e.getMessage();
    }
    return "not refused";
  }

  private static WorkbookEdit edit(XlsxWorkbook workbook) throws WorkbookRefusal {
    SheetSummary sheet =
        workbook.sheets().stream().filter(SheetSummary::isTable).findFirst().orElseThrow();
    UsedArea used = workbook.usedArea(sheet.name());
    int column = used.lastColumn() + 2;
    int lastRow = Math.min(used.lastRow() + 2, 20_000);
    ColumnEdit words =
        new ColumnEdit(
            column,
            "Metal",
            new CellLook("", true),
            14,
            row -> new CellContent.Text(row % 3 == 0 ? " =silver & <gold> " : "silver " + row));
    ColumnEdit numbers =
        new ColumnEdit(
            column + 1,
            "Fine ounces",
            CellLook.number("0.0000"),
            0,
            row ->
                row % 5 == 4
                    ? CellContent.EMPTY
                    : new CellContent.Number(new BigDecimal(row).movePointLeft(3)));
    ColumnEdit formulas =
        new ColumnEdit(
            column + 2,
            "Melt",
            CellLook.number("#,##0.00"),
            11.5,
            row ->
                CellContent.Formula.number(
                    "ROUND(" + (row + 1) + "*2,2)",
                    new BigDecimal(row).add(BigDecimal.ONE).multiply(BigDecimal.valueOf(2))));
    return new WorkbookEdit(
        List.of(
            new SheetEdit(
                sheet.name(), 0, 1, Math.max(1, lastRow), List.of(words, numbers, formulas))),
        List.of(),
        List.of(),
        Removal.NOTHING);
  }

  private static void assertSamePartsBut(Path original, Path file) throws IOException {
    Set<String> changed = new TreeSet<>();
    try (ZipFile before = ZipFile.builder().setPath(original).get();
        ZipFile after = ZipFile.builder().setPath(file).get()) {
      for (ZipArchiveEntry entry : Collections.list(before.getEntries())) {
        ZipArchiveEntry now = after.getEntry(entry.getName());
        if (now == null || !same(before, entry, after, now)) {
          changed.add(entry.getName());
        }
      }
    }
    assertThat(changed)
        .allMatch(
            n ->
                n.matches(".*(worksheets/[^/]*|styles|workbook|calcChain)\\.xml")
                    || n.equals("[Content_Types].xml")
                    || n.endsWith("workbook.xml.rels"));
    assertThat(changed.stream().filter(n -> n.contains("worksheets/")).count()).isEqualTo(1);
  }

  private static boolean same(ZipFile a, ZipArchiveEntry x, ZipFile b, ZipArchiveEntry y)
      throws IOException {
    try (InputStream one = a.getRawInputStream(x);
        InputStream other = b.getRawInputStream(y)) {
      return java.util.Arrays.equals(one.readAllBytes(), other.readAllBytes());
    }
  }

  /** Every cell as text: type, value, formula, format. */
  private static TreeMap<String, String> cells(Path file) throws IOException {
    TreeMap<String, String> cells = new TreeMap<>();
    org.apache.poi.openxml4j.util.ZipSecureFile.setMinInflateRatio(0.001);
    try (Workbook workbook = WorkbookFactory.create(file.toFile(), null, true)) {
      for (Sheet sheet : workbook) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            if (!isIsoDate(cell) && cell.getCellType() != CellType.BLANK) {
              cells.put(
                  sheet.getSheetName() + "!" + cell.getAddress().formatAsString(), words(cell));
            }
          }
        }
      }
    }
    return cells;
  }

  /** The other reader cannot read these. */
  private static boolean isIsoDate(Cell cell) {
    return ((XSSFCell) cell).getCTCell().xmlText().matches("(?s)[^>]* t=\"d\".*");
  }

  private static String words(Cell cell) {
    CellType type =
        cell.getCellType() == CellType.FORMULA
            ? cell.getCachedFormulaResultType()
            : cell.getCellType();
    String value =
        switch (type) {
          case NUMERIC -> "n " + cell.getNumericCellValue();
          case STRING -> "s " + cell.getStringCellValue();
          case BOOLEAN -> "b " + cell.getBooleanCellValue();
          case ERROR -> "e " + cell.getErrorCellValue();
          default -> type.toString();
        };
    String formula =
        cell instanceof XSSFCell own && own.getCTCell().isSetF()
            ? "=" + ((XSSFCell) cell).getCTCell().getF().getStringValue()
            : "";
    return value + formula + " style " + ((XSSFCell) cell).getCTCell().getS();
  }

  private static void assertOwnersCellsSame(
      Path original, Path file, WorkbookEdit edit, List<CellChange> listed) throws IOException {
    TreeMap<String, String> before = cells(original);
    TreeMap<String, String> after = cells(file);
    for (CellChange change : listed) {
      String place = change.place().toString();
      String ours = after.remove(place);
      if (edit != null) {
        assertThat(ours).as(place).isNotNull();
        assertThat(before).doesNotContainKey(place);
      }
    }
    assertThat(after).isEqualTo(before);
  }

  private static void assertSecondRunWritesNothing(Path file, WorkbookEdit edit) throws Exception {
    byte[] before = Files.readAllBytes(file);
    try (XlsxWorkbook workbook = XlsxWorkbook.open(file, new PlainReplacement())) {
      List<CellChange> listed = new ArrayList<>();
      workbook.preview(edit, listed::add);
      assertThat(listed).isEmpty();
      assertThat(workbook.save(edit).written()).isFalse();
    }
    assertThat(Files.readAllBytes(file)).isEqualTo(before);
  }

  private static void takeOut(Path file, WorkbookEdit edit) throws Exception {
    SheetEdit sheet = edit.sheets().get(0);
    List<ColumnPlace> places =
        sheet.columns().stream()
            .map(c -> new ColumnPlace(sheet.sheet(), sheet.headerRow(), c.column()))
            .toList();
    WorkbookEdit removal =
        new WorkbookEdit(
            List.of(), List.of(), List.of(), new Removal(places, List.of(), List.of()));
    try (XlsxWorkbook workbook = XlsxWorkbook.open(file, new PlainReplacement())) {
      assertThat(workbook.save(removal).written()).isTrue();
    }
    try (XlsxWorkbook workbook = XlsxWorkbook.open(file, new PlainReplacement())) {
      assertThat(workbook.save(removal).written()).isFalse();
    }
  }
}

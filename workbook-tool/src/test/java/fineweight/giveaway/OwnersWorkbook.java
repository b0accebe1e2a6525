package fineweight.giveaway;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.common.usermodel.HyperlinkType;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.openxml4j.opc.PackagingURIHelper;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** An invented collector's workbook with something in every corner that a workbook has. */
final class OwnersWorkbook {
  static final List<String> HEADINGS =
      List.of("Year", "Mint mark", "Denomination", "Type", "Count", "Cost", "Seller", "Notes");

  /** Those of the second formula column and of the table of sales. */
  static final List<String> FURTHER_HEADINGS = List.of("Total cost", "Price");

  private static final int ROWS = 6;

  private final XSSFWorkbook workbook = new XSSFWorkbook();
  private final XSSFSheet coins = workbook.createSheet("Coins");
  private final XSSFSheet lists = workbook.createSheet("Lists");
  private final XSSFSheet hidden = workbook.createSheet("Dealers");

  private OwnersWorkbook() {}

  static Path write(Path file) throws IOException {
    OwnersWorkbook made = new OwnersWorkbook();
    made.rows();
    made.lists();
    made.checks();
    made.pictureAndLinks();
    made.chart();
    made.pivotAndTable();
    made.properties();
    try (OutputStream out = Files.newOutputStream(file)) {
      made.workbook.write(out);
    }
    return file;
  }

  private void rows() {
    coins.createRow(0).createCell(0).setCellValue("Collection of the invented Ms Nobody");
    XSSFRow header = coins.createRow(2);
    for (int i = 0; i < HEADINGS.size(); i++) {
      header.createCell(i).setCellValue(HEADINGS.get(i));
    }
    header.createCell(8).setCellValue("Total cost");
    CellStyle money = workbook.createCellStyle();
    money.setDataFormat(workbook.createDataFormat().getFormat("#,##0.00 \"of Nobody\""));
    for (int i = 0; i < ROWS; i++) {
      XSSFRow row = coins.createRow(3 + i);
      row.createCell(0).setCellValue(1964);
      row.createCell(1).setCellValue("D");
      row.createCell(2).setCellValue("quarter dollar");
      row.createCell(3).setCellValue("Washington");
      row.createCell(4).setCellValue(i + 1);
      row.createCell(5).setCellValue(6.5);
      row.getCell(5).setCellStyle(money);
      row.createCell(6).setCellValue("Invented Dealer " + i);
      row.createCell(7).setCellValue("found in the attic");
      row.createCell(8).setCellFormula("E" + (4 + i) + "*F" + (4 + i));
    }
    XSSFRow total = coins.createRow(3 + ROWS);
    total.createCell(3).setCellValue("Total");
    total.createCell(8).setCellFormula("SUM(I4:I9)");
    total.createCell(9).setCellFormula("SUMIF(G4:G9,\"Invented Dealer 1\",F4:F9)");
    total.createCell(10).setCellFormula("IF(E4=\"\",\"\",E4*2.25)");
    total.createCell(11).setCellFormula("12.5*4");
    coins.setAutoFilter(new CellRangeAddress(2, 8, 0, 8));
    coins.getHeader().setCenter("Ms Nobody's coins");
    coins.getFooter().setCenter("&P of &N");
    coins.setColumnWidth(3, 5000);
    coins.protectSheet("secret of Nobody");
  }

  private void lists() {
    String[] words = {"Silver", "Gold", "from the shop of Nobody"};
    for (int i = 0; i < words.length; i++) {
      lists.createRow(i).createCell(0).setCellValue(words[i]);
    }
    hidden.createRow(0).createCell(0).setCellValue("telephone 000 0000");
    workbook.setSheetVisibility(1, SheetVisibility.HIDDEN);
    workbook.setSheetVisibility(2, SheetVisibility.VERY_HIDDEN);
    name("Metals", "Lists!$A$1:$A$3");
    name("Secret", "\"Nobody lives here\"");
    name("Gone", "#REF!");
  }

  private void name(String name, String formula) {
    XSSFName made = workbook.createName();
    made.setNameName(name);
    made.setRefersToFormula(formula);
    made.setComment("remark of Nobody");
  }

  private void checks() {
    DataValidationHelper make = coins.getDataValidationHelper();
    add(make.createValidation(make.createFormulaListConstraint("Metals"), area(3)));
    add(
        make.createValidation(
            make.createExplicitListConstraint(new String[] {"P", "D", "Nobody's shed"}), area(1)));
    add(
        make.createValidation(
            make.createIntegerConstraint(
                org.apache.poi.ss.usermodel.DataValidationConstraint.OperatorType.GREATER_THAN,
                "0",
                null),
            area(4)));
    var rules = coins.getSheetConditionalFormatting();
    var rule = rules.createConditionalFormattingRule("$F4>10");
    rule.createPatternFormatting().setFillBackgroundColor((short) 13);
    var named = rules.createConditionalFormattingRule("$G4=\"Invented Dealer 2\"");
    named.createPatternFormatting().setFillBackgroundColor((short) 11);
    rules.addConditionalFormatting(
        new CellRangeAddress[] {CellRangeAddress.valueOf("F4:F9")}, rule, named);
  }

  private static CellRangeAddressList area(int column) {
    return new CellRangeAddressList(3, 8, column, column);
  }

  private void add(DataValidation check) {
    check.createPromptBox("Dear Nobody", "type what Nobody would");
    check.createErrorBox("Stop", "Nobody says so");
    coins.addValidationData(check);
  }

  private void pictureAndLinks() {
    XSSFDrawing drawing = coins.createDrawingPatriarch();
    byte[] picture = "not really a picture".getBytes(StandardCharsets.UTF_8);
    int index = workbook.addPicture(picture, Workbook.PICTURE_TYPE_PNG);
    drawing.createPicture(drawing.createAnchor(0, 0, 0, 0, 10, 20, 12, 24), index);
    var anchor = drawing.createAnchor(0, 0, 0, 0, 3, 3, 5, 6);
    var comment = drawing.createCellComment(anchor);
    comment.setString("bought from Nobody");
    comment.setAuthor("Nobody");
    coins.getRow(3).getCell(3).setCellComment(comment);
    var link = workbook.getCreationHelper().createHyperlink(HyperlinkType.URL);
    link.setAddress("https://nobody.invalid/");
    link.setLabel("page of Nobody");
    coins.getRow(4).getCell(3).setHyperlink(link);
  }

  private void chart() {
    XSSFDrawing drawing = coins.createDrawingPatriarch();
    XSSFChart chart = drawing.createChart(drawing.createAnchor(0, 0, 0, 0, 2, 12, 8, 28));
    chart.setTitleText("Coins of Nobody");
    XDDFCategoryAxis bottom = chart.createCategoryAxis(AxisPosition.BOTTOM);
    XDDFValueAxis left = chart.createValueAxis(AxisPosition.LEFT);
    bottom.setTitle("Dealers of Nobody");
    XDDFChartData bars = chart.createData(ChartTypes.BAR, bottom, left);
    bars.addSeries(
            XDDFDataSourcesFactory.fromStringCellRange(coins, CellRangeAddress.valueOf("G4:G9")),
            XDDFDataSourcesFactory.fromNumericCellRange(coins, CellRangeAddress.valueOf("F4:F9")))
        .setTitle("Paid by Nobody", new CellReference("Coins!$F$3"));
    chart.plot(bars);
  }

  private void pivotAndTable() {
    XSSFSheet pivots = workbook.createSheet("Pivot");
    AreaReference source = workbook.getCreationHelper().createAreaReference("Coins!A3:I9");
    var pivot = pivots.createPivotTable(source, new CellReference("A3"));
    pivot.addRowLabel(6);
    XSSFSheet tables = workbook.createSheet("Sold");
    String[] headings = {"Type", "Price"};
    for (int row = 0; row < 3; row++) {
      for (int column = 0; column < 2; column++) {
        tables
            .createRow(row)
            .createCell(column)
            .setCellValue(row == 0 ? headings[column] : "to Nobody " + row);
      }
      tables.getRow(row).createCell(0).setCellValue(row == 0 ? "Type" : "sold to Nobody");
    }
    var table = tables.createTable(workbook.getCreationHelper().createAreaReference("A1:B3"));
    table.setName("Sales");
    table.setDisplayName("Sales");
    table.getCTTable().setComment("table of Nobody");
  }

  private void properties() throws IOException {
    var core = workbook.getProperties().getCoreProperties();
    core.setCreator("Nobody");
    core.setTitle("Coins of Nobody");
    core.setDescription("kept in the attic");
    workbook.getProperties().getExtendedProperties().getUnderlyingProperties().setCompany("Nobody");
    workbook.getProperties().getCustomProperties().addProperty("Safe", "behind the clock");
    foreign("/customXml/item1.xml", "application/xml", "<own xmlns=\"urn:own\" a=\"b\">mine</own>");
    foreign("/xl/printerSettings/printerSettings1.bin", "application/octet-stream", "printer");
    foreign("/xl/vbaProject.bin", "application/vnd.ms-office.vbaProject", "Sub Nobody");
    foreign(
        "/xl/threadedComments/threadedComment1.xml",
        "application/vnd.ms-excel.threadedcomments+xml",
        "<ThreadedComments xmlns=\"urn:t\"><c><text>ask Nobody</text></c></ThreadedComments>");
    foreign("/xl/embeddings/oleObject1.bin", "application/octet-stream", "embedded letter");
  }

  private void foreign(String name, String type, String content) throws IOException {
    try {
      PackagePart part =
          workbook.getPackage().createPart(PackagingURIHelper.createPartName(name), type);
      try (OutputStream out = part.getOutputStream()) {
        out.write(content.getBytes(StandardCharsets.UTF_8));
      }
      workbook
          .getPackage()
          .addRelationship(
              part.getPartName(),
              org.apache.poi.openxml4j.opc.TargetMode.INTERNAL,
              "http://schemas.openxmlformats.org/officeDocument/2006/relationships/customXml");
    } catch (org.apache.poi.openxml4j.exceptions.InvalidFormatException impossible) {
      throw new IOException(impossible);
    }
  }
}

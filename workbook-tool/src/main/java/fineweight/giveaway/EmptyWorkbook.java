package fineweight.giveaway;

import fineweight.refresh.inventory.Inventory;
import fineweight.workbook.SheetLayout;
import fineweight.workbook.SheetSummary.Visibility;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.xlsx.part.Relationships;
import fineweight.workbook.xlsx.part.WorkbookPart;
import fineweight.workbook.xlsx.xml.XmlText;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.xml.stream.XMLStreamException;
import org.apache.xmlbeans.SchemaType;
import org.apache.xmlbeans.XmlException;
import org.apache.xmlbeans.XmlObject;
import org.openxmlformats.schemas.drawingml.x2006.main.ThemeDocument;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTWorksheet;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.StyleSheetDocument;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.TableDocument;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.WorksheetDocument;

/** Builds the empty workbook part by part. */
final class EmptyWorkbook {
  static final String PART = "xl/workbook.xml";
  private static final String MAIN =
      "xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\" xmlns:r=\""
          + NewPackage.RELATIONSHIPS
          + "\"";

  private final SourcePackage source;
  private final Workbook reading;
  private final Wishes wishes;
  private final Findings findings;
  private final NewPackage target = new NewPackage();
  private final KeptWords words;
  private final LookRules looks;
  private final FormulaRules formulas;
  private final DefinedNames names;
  private final EmptyDrawing drawing;
  private final CellChoice choice;
  private final Map<String, WorksheetDocument> frames = new LinkedHashMap<>();
  private final List<WorkbookPart.Sheet> taken = new ArrayList<>();
  private int tables;

  EmptyWorkbook(
      SourcePackage source,
      Workbook reading,
      Inventory inventory,
      Wishes wishes,
      Findings findings) {
    this.source = source;
    this.reading = reading;
    this.wishes = wishes;
    this.findings = findings;
    words = new KeptWords(wishes.words());
    looks = new LookRules(words, findings);
    formulas = new FormulaRules(words, findings);
    names = new DefinedNames(source.workbook(), formulas, findings);
    drawing =
        new EmptyDrawing(
            source, target, new EmptyChart(formulas, looks, words, findings), findings);
    choice = new CellChoice(reading, inventory, words, wishes, findings);
  }

  NewPackage build() throws IOException, WorkbookRefusal {
    target.relate("", "officeDocument", PART);
    for (WorkbookPart.Sheet sheet : source.workbook().sheets()) {
      read(sheet);
    }
    names.choose();
    StringBuilder list = new StringBuilder();
    for (int i = 0; i < taken.size(); i++) {
      WorkbookPart.Sheet sheet = taken.get(i);
      String part =
          (sheet.isTable() ? "xl/worksheets/sheet" : "xl/chartsheets/sheet") + (i + 1) + ".xml";
      boolean there = sheet.isTable() ? table(sheet, part) : chart(sheet, part);
      if (there) {
        list.append(entry(sheet, i + 1, part));
      }
    }
    looks();
    target.add(PART, "spreadsheetml.sheet.main", root(list.toString()));
    new LeftBehind(findings).tell(source.unused());
    return target;
  }

  /** First all sheets are read, so that formulas are known by what they speak of. */
  private void read(WorkbookPart.Sheet sheet) throws IOException {
    boolean chart =
        !sheet.isTable() && source.relationships(sheet.part()).byKind("drawing").isPresent();
    if (!sheet.isTable() && !chart) {
      findings.removed("sheet \"" + sheet.name() + "\" of dialogs or macros");
      return;
    }
    taken.add(sheet);
    formulas.addSheet(sheet.name());
    findings.left("name of a sheet", sheet.name());
    if (sheet.visibility() != Visibility.VISIBLE) {
      findings.left("hidden sheet, without its contents", sheet.name());
    }
    if (!sheet.isTable()) {
      return;
    }
    try (InputStream in = source.xml(sheet.part())) {
      WorksheetDocument frame = SheetFrame.read(in);
      CheckedCells.gather(frame.getWorksheet());
      frames.put(sheet.name(), frame);
    }
    for (Relationships.Target each : source.relationships(sheet.part()).allOfKind("table")) {
      TableDocument table = (TableDocument) parse(each.part(), TableDocument.type);
      formulas.addTable(table.getTable().getDisplayName());
      table
          .getTable()
          .getTableColumns()
          .getTableColumnList()
          .forEach(column -> formulas.addColumn(column.getName()));
    }
  }

  private XmlObject parse(String part, SchemaType type) throws IOException {
    try (InputStream in = source.xml(part)) {
      return XmlObject.Factory.parse(in, SheetFrame.reading().setDocumentType(type));
    } catch (XmlException damaged) {
      throw new IOException("part " + part + " cannot be read", damaged);
    }
  }

  private boolean table(WorkbookPart.Sheet sheet, String part) throws IOException, WorkbookRefusal {
    WorksheetDocument frame = frames.get(sheet.name());
    CTWorksheet worksheet = frame.getWorksheet();
    List<SheetLayout.Area> lists = names.areasOn(sheet.name(), sources());
    new CheckedCells(sheet.name(), formulas, words, wishes, findings).clean(worksheet);
    new EmptySheet(sheet.name(), formulas, looks, words, findings).sieve(worksheet, frame);
    drawing
        .copy(sheet.part(), sheet.name())
        .ifPresent(each -> worksheet.addNewDrawing().setId(target.relate(part, "drawing", each)));
    tables(sheet, part, worksheet);
    KeptCells kept = choice.of(sheet.name(), lists);
    try (InputStream in = source.xml(sheet.part())) {
      String rows = new SheetRows(sheet.name(), kept, formulas, findings).of(in);
      target.add(part, "spreadsheetml.worksheet", EmptySheet.bytes(frame, rows));
    } catch (XMLStreamException damaged) {
      throw new IOException("a sheet cannot be read", damaged);
    }
    return true;
  }

  private List<String> sources() {
    List<String> sources = new ArrayList<>();
    frames.forEach(
        (sheet, frame) ->
            CheckedCells.listSources(frame.getWorksheet())
                .forEach(source -> sources.add(DefinedNames.placed(source, sheet))));
    return sources;
  }

  private void tables(WorkbookPart.Sheet sheet, String part, CTWorksheet worksheet)
      throws IOException {
    EmptyTable rule = new EmptyTable(formulas, looks, words, findings);
    for (Relationships.Target each : source.relationships(sheet.part()).allOfKind("table")) {
      TableDocument table = (TableDocument) parse(each.part(), TableDocument.type);
      rule.sieve(table, ++tables);
      String name = "xl/tables/table" + tables + ".xml";
      target.add(name, "spreadsheetml.table", Placing.plain(table));
      if (!worksheet.isSetTableParts()) {
        worksheet.addNewTableParts();
      }
      worksheet.getTableParts().addNewTablePart().setId(target.relate(part, "table", name));
      worksheet.getTableParts().setCount(worksheet.getTableParts().sizeOfTablePartArray());
    }
  }

  private boolean chart(WorkbookPart.Sheet sheet, String part) throws IOException {
    Optional<String> drawn = drawing.copy(sheet.part(), sheet.name());
    drawn.ifPresentOrElse(
        each ->
            target.add(
                part,
                "spreadsheetml.chartsheet",
                "<chartsheet "
                    + MAIN
                    + "><sheetViews><sheetView workbookViewId=\"0\"/></sheetViews><drawing r:id=\""
                    + target.relate(part, "drawing", each)
                    + "\"/></chartsheet>"),
        () -> findings.removed("chart sheet \"" + sheet.name() + "\""));
    return drawn.isPresent();
  }

  private String entry(WorkbookPart.Sheet sheet, int number, String part) {
    names.place(sheet);
    String state =
        switch (sheet.visibility()) {
          case VISIBLE -> "";
          case HIDDEN -> " state=\"hidden\"";
          case VERY_HIDDEN -> " state=\"veryHidden\"";
        };
    return "<sheet name=\"%s\" sheetId=\"%d\"%s r:id=\"%s\"/>"
        .formatted(
            XmlText.attribute(sheet.name()),
            number,
            state,
            target.relate(PART, sheet.isTable() ? "worksheet" : "chartsheet", part));
  }

  private void looks() throws IOException {
    EmptyLooks rule = new EmptyLooks(looks);
    Optional<String> styles = source.ofWorkbook("styles");
    if (styles.isPresent()) {
      StyleSheetDocument document =
          (StyleSheetDocument) parse(styles.get(), StyleSheetDocument.type);
      rule.sieve(document);
      target.add("xl/styles.xml", "spreadsheetml.styles", Placing.plain(document));
      target.relate(PART, "styles", "xl/styles.xml");
    }
    Optional<String> theme = source.ofWorkbook("theme");
    if (theme.isPresent()) {
      ThemeDocument document = (ThemeDocument) parse(theme.get(), ThemeDocument.type);
      boolean pictures = document.xmlText().contains("blip");
      if (!pictures) {
        rule.sieve(document);
        target.add("xl/theme/theme1.xml", "theme", Placing.bytes(document));
        target.relate(PART, "theme", "xl/theme/theme1.xml");
      }
    }
  }

  private String root(String sheets) {
    String dates = source.workbook().counts1904() ? "<workbookPr date1904=\"1\"/>" : "";
    return "<workbook "
        + MAIN
        + ">"
        + dates
        + "<bookViews><workbookView activeTab=\""
        + names.firstVisible()
        + "\"/></bookViews><sheets>"
        + sheets
        + "</sheets>"
        + names.markup()
        + "<calcPr calcId=\"0\" fullCalcOnLoad=\"1\"/></workbook>";
  }
}

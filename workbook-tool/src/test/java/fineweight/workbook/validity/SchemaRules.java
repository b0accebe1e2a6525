package fineweight.workbook.validity;

import fineweight.workbook.oracle.parts.PackageParts;
import fineweight.workbook.oracle.parts.RawZip;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.poi.ooxml.POIXMLTypeLoader;
import org.apache.xmlbeans.XmlError;
import org.apache.xmlbeans.XmlException;
import org.apache.xmlbeans.XmlObject;
import org.apache.xmlbeans.XmlOptions;
import org.openxmlformats.schemas.drawingml.x2006.chart.ChartSpaceDocument;
import org.openxmlformats.schemas.drawingml.x2006.spreadsheetDrawing.WsDrDocument;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.SstDocument;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.StyleSheetDocument;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.TableDocument;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.WorkbookDocument;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.WorksheetDocument;

/** The schema itself, as it is compiled into Apache POI. */
final class SchemaRules {
  /** What later editions add beside the schema, and white space kept in a text. */
  private static final List<String> EXTENSIONS =
      List.of(
          "http://schemas.openxmlformats.org/markup-compatibility/2006",
          "http://schemas.microsoft.com/office/",
          "space@http://www.w3.org/XML/1998/namespace");

  /** Most parts come back unchanged, so each content is validated once. */
  private static final Map<String, List<String>> KNOWN = new ConcurrentHashMap<>();

  private SchemaRules() {}

  static void check(PackageParts parts, List<String> findings) throws IOException {
    validate(parts, parts.workbookPart(), WorkbookDocument.Factory::parse, findings);
    Optional<String> styles = parts.related("styles");
    if (styles.isPresent()) {
      validate(parts, styles.get(), StyleSheetDocument.Factory::parse, findings);
    }
    Optional<String> texts = parts.related("sharedStrings");
    if (texts.isPresent()) {
      validate(parts, texts.get(), SstDocument.Factory::parse, findings);
    }
    for (PackageParts.Sheet sheet : parts.sheets()) {
      if (sheet.isTable()) {
        validate(parts, sheet.part(), WorksheetDocument.Factory::parse, findings);
      }
      for (String table : parts.tables(sheet)) {
        validate(parts, table, TableDocument.Factory::parse, findings);
      }
      drawings(parts, sheet, findings);
    }
  }

  private static void drawings(PackageParts parts, PackageParts.Sheet sheet, List<String> findings)
      throws IOException {
    for (PackageParts.Relation drawing : parts.relations(sheet.part())) {
      if (drawing.type().equals("drawing")) {
        validate(parts, drawing.target(), WsDrDocument.Factory::parse, findings);
        for (PackageParts.Relation chart : parts.relations(drawing.target())) {
          if (chart.type().equals("chart")) {
            validate(parts, chart.target(), ChartSpaceDocument.Factory::parse, findings);
          }
        }
      }
    }
  }

  /** How a kind of part is read. */
  private interface Parser {
    XmlObject parse(java.io.InputStream part, XmlOptions options) throws XmlException, IOException;
  }

  private static void validate(
      PackageParts parts, String part, Parser parser, List<String> findings) throws IOException {
    RawZip.Entry entry = parts.zip().entries().get(part);
    String key = part + " " + entry.crc() + " " + entry.size();
    List<String> known = KNOWN.get(key);
    if (known == null) {
      known = validate(part, parser, entry.content());
      KNOWN.put(key, known);
    }
    findings.addAll(known);
  }

  private static List<String> validate(String part, Parser parser, byte[] content)
      throws IOException {
    List<XmlError> errors = new ArrayList<>();
    try {
      XmlOptions options = new XmlOptions(POIXMLTypeLoader.DEFAULT_XML_OPTIONS);
      XmlObject document = parser.parse(new ByteArrayInputStream(content), options);
      document.validate(new XmlOptions().setErrorListener(errors));
    } catch (XmlException e) {
      return List.of(part + ": " + e.getMessage());
    }
    return errors.stream()
        .map(XmlError::getMessage)
        .filter(each -> EXTENSIONS.stream().noneMatch(each::contains))
        .map(each -> part + ": " + each)
        .distinct()
        .toList();
  }
}

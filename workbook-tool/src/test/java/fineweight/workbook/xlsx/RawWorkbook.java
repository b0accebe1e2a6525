package fineweight.workbook.xlsx;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/** A package put together part by part as text, without any library for workbooks. */
final class RawWorkbook {
  static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  static final String RELATIONS =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  private static final String PACKAGE = "http://schemas.openxmlformats.org/package/2006/";
  private static final String DECLARATION = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>";

  private final Map<String, byte[]> parts = new LinkedHashMap<>();
  private final List<String> sheets = new ArrayList<>();
  private final StringBuilder workbookRelations = new StringBuilder();
  private final StringBuilder types = new StringBuilder();
  private String afterSheets = "";
  private String beforeSheets = "";

  /**
   * @param xml the children of the worksheet
   */
  RawWorkbook sheet(String name, String xml) {
    return sheet(
        name,
        (DECLARATION
                + "<worksheet xmlns=\"%s\" xmlns:r=\"%s\">".formatted(MAIN, RELATIONS)
                + xml
                + "</worksheet>")
            .getBytes(StandardCharsets.UTF_8));
  }

  RawWorkbook sheet(String name, byte[] part) {
    int number = sheets.size() + 1;
    sheets.add(name);
    relation("worksheet", "worksheets/sheet" + number + ".xml", "S" + number);
    return part("xl/worksheets/sheet" + number + ".xml", part);
  }

  RawWorkbook sheet(String name, String wholePart, Charset charset) {
    return sheet(name, wholePart.getBytes(charset));
  }

  RawWorkbook relation(String kind, String target, String id) {
    workbookRelations.append(
        "<Relationship Id=\"%s\" Type=\"%s/%s\" Target=\"%s\"/>"
            .formatted(id, RELATIONS, kind, target));
    return this;
  }

  RawWorkbook part(String name, byte[] content) {
    parts.put(name, content);
    return this;
  }

  RawWorkbook part(String name, String content) {
    return part(name, (DECLARATION + content).getBytes(StandardCharsets.UTF_8));
  }

  RawWorkbook type(String part, String type) {
    types.append("<Override PartName=\"/%s\" ContentType=\"%s\"/>".formatted(part, type));
    return this;
  }

  /** The list of shared texts; each is the content of an item. */
  RawWorkbook texts(String... items) {
    relation("sharedStrings", "sharedStrings.xml", "T");
    return part(
        "xl/sharedStrings.xml",
        "<sst xmlns=\"%s\"><si>%s</si></sst>".formatted(MAIN, String.join("</si><si>", items)));
  }

  /**
   * @param formats the content of the list of cell formats
   */
  RawWorkbook styles(String numberFormats, String formats) {
    relation("styles", "styles.xml", "F");
    return part(
        "xl/styles.xml",
        ("<styleSheet xmlns=\"%s\">%s<fonts count=\"2\"><font><sz val=\"10\"/>"
                + "<name val=\"Arial\"/></font><font><b/><sz val=\"10\"/><name val=\"Arial\"/>"
                + "</font></fonts><fills count=\"1\"><fill><patternFill patternType=\"none\"/>"
                + "</fill></fills><borders count=\"1\"><border/></borders><cellStyleXfs count=\"1\">"
                + "<xf/></cellStyleXfs><cellXfs count=\"9\">%s</cellXfs></styleSheet>")
            .formatted(MAIN, numberFormats, formats));
  }

  RawWorkbook names(String xml) {
    afterSheets = xml;
    return this;
  }

  RawWorkbook before(String xml) {
    beforeSheets = xml;
    return this;
  }

  Path write(Path file) throws IOException {
    StringBuilder list = new StringBuilder();
    for (int i = 0; i < sheets.size(); i++) {
      list.append(
          "<sheet name=\"%s\" sheetId=\"%d\" r:id=\"S%d\"/>"
              .formatted(sheets.get(i), i + 1, i + 1));
      type(
          "xl/worksheets/sheet" + (i + 1) + ".xml",
          "application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml");
    }
    type(
        "xl/workbook.xml",
        "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml");
    Map<String, byte[]> all = new LinkedHashMap<>();
    text(all, "[Content_Types].xml", contentTypes());
    text(all, "_rels/.rels", relations(rootRelation()));
    text(all, "xl/workbook.xml", workbook(list));
    text(all, "xl/_rels/workbook.xml.rels", relations(workbookRelations.toString()));
    all.putAll(parts);
    try (OutputStream out = Files.newOutputStream(file);
        ZipOutputStream zip = new ZipOutputStream(out)) {
      for (Map.Entry<String, byte[]> each : all.entrySet()) {
        zip.putNextEntry(new ZipEntry(each.getKey()));
        zip.write(each.getValue());
        zip.closeEntry();
      }
    }
    return file;
  }

  private static void text(Map<String, byte[]> all, String name, String content) {
    all.put(name, (DECLARATION + content).getBytes(StandardCharsets.UTF_8));
  }

  private String contentTypes() {
    return "<Types xmlns=\""
        + PACKAGE
        + "content-types\"><Default Extension=\"rels\" ContentType=\"application/"
        + "vnd.openxmlformats-package.relationships+xml\"/><Default Extension=\"xml\""
        + " ContentType=\"application/xml\"/>"
        + types
        + "</Types>";
  }

  private static String rootRelation() {
    return "<Relationship Id=\"R\" Type=\"%s/officeDocument\" Target=\"xl/workbook.xml\"/>"
        .formatted(RELATIONS);
  }

  private static String relations(String list) {
    return "<Relationships xmlns=\"" + PACKAGE + "relationships\">" + list + "</Relationships>";
  }

  private String workbook(StringBuilder list) {
    return "<workbook xmlns=\"%s\" xmlns:r=\"%s\">".formatted(MAIN, RELATIONS)
        + beforeSheets
        + "<sheets>"
        + list
        + "</sheets>"
        + afterSheets
        + "</workbook>";
  }

  /** The text of a part of a file; null if there is none. */
  static String read(Path file, String part) throws IOException {
    try (ZipFile zip = new ZipFile(file.toFile())) {
      ZipEntry entry = zip.getEntry(part);
      if (entry == null) {
        return null;
      }
      try (InputStream in = zip.getInputStream(entry)) {
        return new String(in.readAllBytes(), StandardCharsets.UTF_8);
      }
    }
  }

  /** The names of all parts. */
  static Set<String> parts(Path file) throws IOException {
    try (ZipFile zip = new ZipFile(file.toFile())) {
      return zip.stream().map(ZipEntry::getName).collect(Collectors.toCollection(TreeSet::new));
    }
  }

  static String sheetOne(Path file) throws IOException {
    return read(file, "xl/worksheets/sheet1.xml");
  }
}

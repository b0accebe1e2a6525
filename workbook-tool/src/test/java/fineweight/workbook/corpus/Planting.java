package fineweight.workbook.corpus;

import fineweight.workbook.oracle.parts.PackageParts;
import fineweight.workbook.oracle.parts.RawZip;
import fineweight.workbook.oracle.parts.XmlElement;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.CRC32;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.apache.commons.compress.archivers.zip.ZipFile;

/**
 * Puts a sheet with five invented coin rows into a copy of a workbook, in raw XML and in the
 * dialect of the file, all other parts left as they are.
 */
public final class Planting {
  public static final String SHEET = "Planted coins";
  static final int HEADER_ROW = 1;
  static final int FIRST_ROW = 2;
  static final int LAST_ROW = 6;

  /** The first column right of the planted ones. */
  static final int NEXT_COLUMN = 5;

  private static final String PART = "xl/worksheets/planted.xml";
  private static final String TYPE =
      "application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml";
  private static final String[][] COINS = {
    {"1942", "five cents, no mint letter", "3", "1.5"},
    {"1964", "half dollar", "2", "30.10"},
    {"1853", "quarter", "1", "12.345678901234567"},
    {"n.d.", "token of a bakery", "1", "0"},
    {"1916", "florin", "4", "20"},
  };

  private Planting() {}

  public static void plant(Path original, Path copy) throws IOException {
    RawZip zip = RawZip.of(original);
    PackageParts parts = new PackageParts(zip);
    String book = parts.workbookPart();
    XmlElement root = parts.tree(book);
    String relations =
        root.namespace().contains("purl.oclc.org")
            ? "http://purl.oclc.org/ooxml/officeDocument/relationships"
            : "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    int id = 1;
    for (PackageParts.Sheet sheet : parts.sheets()) {
      id = Math.max(id, Integer.parseInt(sheet.id()) + 1);
    }
    String entry =
        "sheet xmlns:planted=\"%s\" name=\"%s\" sheetId=\"%d\" planted:id=\"plantedSheet\"/>"
            .formatted(relations, SHEET, id);
    Map<String, byte[]> changed = new HashMap<>();
    edit(zip, book, changed, text -> before(text, "sheets", entry));
    edit(
        zip,
        PackageParts.relationsPart(book),
        changed,
        text ->
            before(
                text,
                "Relationships",
                "Relationship Id=\"plantedSheet\" Type=\"%s/worksheet\" Target=\"/%s\"/>"
                    .formatted(relations, PART)));
    edit(
        zip,
        "[Content_Types].xml",
        changed,
        text ->
            before(
                text,
                "Types",
                "Override PartName=\"/%s\" ContentType=\"%s\"/>".formatted(PART, TYPE)));
    write(original, copy, changed, sheet(root.namespace()).getBytes(StandardCharsets.UTF_8));
  }

  private static void edit(
      RawZip zip, String part, Map<String, byte[]> changed, UnaryOperator<String> change)
      throws IOException {
    byte[] content = zip.entries().get(part).content();
    boolean wide = content.length > 1 && ((content[0] & 0xff) >= 0xfe || content[1] == 0);
    Charset charset = wide ? StandardCharsets.UTF_16 : StandardCharsets.UTF_8;
    changed.put(part, change.apply(new String(content, charset)).getBytes(charset));
  }

  /** Puts an element before the end tag of that name, with the end tag's prefix. */
  private static String before(String text, String name, String element) {
    Matcher end = Pattern.compile("</([\\w-]+:)?" + name + "\\s*>").matcher(text);
    if (!end.find()) {
      throw new IllegalArgumentException("no end tag " + name);
    }
    String prefix = end.group(1) == null ? "" : end.group(1);
    return text.substring(0, end.start()) + "<" + prefix + element + text.substring(end.start());
  }

  private static String sheet(String namespace) {
    StringBuilder rows = new StringBuilder();
    rows.append("<row r=\"1\">").append(text("A1", "All invented")).append("</row>");
    String[] headers = {"Year", "Coin", "Count", "Paid", "Twice"};
    rows.append("<row r=\"2\">");
    for (int i = 0; i < headers.length; i++) {
      rows.append(text((char) ('A' + i) + "2", headers[i]));
    }
    rows.append("</row>");
    for (int i = 0; i < COINS.length; i++) {
      int row = FIRST_ROW + 1 + i;
      rows.append("<row r=\"%d\" spans=\"1:5\">".formatted(row));
      for (int column = 0; column < COINS[i].length; column++) {
        String value = COINS[i][column];
        String place = (char) ('A' + column) + String.valueOf(row);
        rows.append(value.matches("[0-9.]+") ? number(place, value) : text(place, value));
      }
      rows.append("<c r=\"E%1$d\"><f>D%1$d*2</f><v>1</v></c></row>".formatted(row));
    }
    // One total of the owner's reads our columns, one does not.
    rows.append("<row r=\"9\"><c r=\"A9\"><f>SUM(F3:F7)</f><v>0</v></c>");
    rows.append("<c r=\"D9\"><f>SUM(D3:D7)</f><v>63.945678901234567</v></c></row>");
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<worksheet xmlns=\"%s\"><sheetData>%s"
            .formatted(namespace, rows)
        + "</sheetData></worksheet>";
  }

  private static String number(String place, String value) {
    return "<c r=\"%s\"><v>%s</v></c>".formatted(place, value);
  }

  private static String text(String place, String value) {
    return "<c r=\"%s\" t=\"inlineStr\"><is><t>%s</t></is></c>".formatted(place, value);
  }

  private static void write(Path original, Path copy, Map<String, byte[]> changed, byte[] sheet)
      throws IOException {
    try (ZipFile zip = ZipFile.builder().setPath(original).get();
        ZipArchiveOutputStream out = new ZipArchiveOutputStream(copy)) {
      for (ZipArchiveEntry entry : java.util.Collections.list(zip.getEntriesInPhysicalOrder())) {
        byte[] content = changed.get(entry.getName());
        if (content == null) {
          out.addRawArchiveEntry(entry, zip.getRawInputStream(entry));
        } else {
          put(out, entry.getName(), content);
        }
      }
      put(out, PART, sheet);
    }
  }

  private static void put(ZipArchiveOutputStream out, String name, byte[] content)
      throws IOException {
    ZipArchiveEntry entry = new ZipArchiveEntry(name);
    entry.setTime(1_000_000_000_000L);
    CRC32 sum = new CRC32();
    sum.update(content);
    entry.setCrc(sum.getValue());
    entry.setSize(content.length);
    out.putArchiveEntry(entry);
    new ByteArrayInputStream(content).transferTo(out);
    out.closeArchiveEntry();
  }
}

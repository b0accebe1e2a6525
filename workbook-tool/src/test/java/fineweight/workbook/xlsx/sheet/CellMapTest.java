package fineweight.workbook.xlsx.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.corpus.SharedFiles;
import fineweight.workbook.xlsx.xml.DamageException;
import fineweight.workbook.xlsx.xml.PlainUtf8;
import fineweight.workbook.xlsx.xml.XmlCursor;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whoever goes by the map sees what whoever parses sees. */
class CellMapTest {
  private static final String HEAD =
      "<?xml version=\"1.0\"?><!-- a remark --><worksheet xmlns=\"http://schemas.openxmlformats.org/"
          + "spreadsheetml/2006/main\" xmlns:u='urn:other'><dimension ref=\"A1:C9\"/><cols><col"
          + " min=\"1\" max=\"2\"/></cols>";
  private static final String TAIL =
      "<mergeCells><mergeCell ref=\"A1:B2\"/></mergeCells><u:more a='1'>x</u:more></worksheet>";

  /** Writes down everything that it is shown. */
  private static final class Diary implements SheetVisitor {
    private final List<String> lines = new ArrayList<>();
    private final IntPredicate columns;
    private final int rows;
    private final CellMap map;
    private int seen;

    Diary(IntPredicate columns, int rows, CellMap map) {
      this.columns = columns;
      this.rows = rows;
      this.map = map;
    }

    @Override
    public void element(XmlCursor at) {
      lines.add("element " + at.name() + " " + at.start() + " " + at.end());
    }

    @Override
    public void elementEnd(String name, long end) {
      lines.add("end of " + name + " " + end);
    }

    @Override
    public void child(String parent, XmlCursor at) {
      lines.add("child of " + parent + " " + at.name() + " " + at.start() + " " + at.end());
    }

    @Override
    public void rowsBegin(XmlCursor at, boolean empty) {
      lines.add("rows " + at.start() + " " + at.end() + " " + empty);
      if (map != null) {
        map.begin(at.end());
      }
    }

    @Override
    public void row(RowTag row) {
      lines.add(row.toString());
      seen++;
      if (map != null) {
        map.row(row);
      }
    }

    @Override
    public boolean wants(int column) {
      return columns.test(column);
    }

    @Override
    public void cell(CellXml cell) {
      lines.add(
          String.join(
              " ",
              List.of(
                  cell.row + "/" + cell.column,
                  cell.start + "-" + cell.tagEnd + "-" + cell.end,
                  cell.type + cell.style + cell.referenced + cell.empty)));
      if (wants(cell.column)) {
        lines.add(
            String.join(
                "|",
                List.of(
                    cell.value() + "|" + cell.inline + "|" + cell.formula + "|" + cell.formulaText,
                    cell.formulaKind + "|" + cell.formulaArea + "|" + cell.shared,
                    cell.firstInput + "|" + cell.secondInput + "|" + cell.hasValue())));
      }
      if (map != null) {
        map.cell(cell);
      }
    }

    @Override
    public void rowEnd(long start, long end) {
      lines.add("row's end " + start + " " + end);
      if (map != null) {
        map.rowEnd(start, end);
      }
    }

    @Override
    public void rowsEnd(long start, long end) {
      lines.add("rows' end " + start + " " + end);
      if (map != null) {
        map.end(start);
      }
    }

    @Override
    public boolean done() {
      return seen >= rows;
    }
  }

  /** Returns whether there was a map to go by. */
  private static boolean compare(byte[] part) throws IOException, WorkbookRefusal {
    CellMap map = new CellMap();
    Diary parsed = walk(part, new Diary(c -> true, Integer.MAX_VALUE, map), CellMap.NONE);
    if (!map.isComplete()) {
      return false;
    }
    Diary mapped = walk(part, new Diary(c -> true, Integer.MAX_VALUE, null), map);
    assertThat(mapped.lines).isEqualTo(parsed.lines);
    IntPredicate some = c -> c % 2 == 1;
    assertThat(walk(part, new Diary(some, Integer.MAX_VALUE, null), map).lines)
        .isEqualTo(walk(part, new Diary(some, Integer.MAX_VALUE, null), CellMap.NONE).lines);
    assertThat(walk(part, new Diary(some, 2, null), map).lines)
        .isEqualTo(walk(part, new Diary(some, 2, null), CellMap.NONE).lines);
    return true;
  }

  private static Diary walk(byte[] part, Diary diary, CellMap map)
      throws IOException, WorkbookRefusal {
    SheetWalk.walk("s", "p", PlainUtf8.of(new ByteArrayInputStream(part)), diary, map);
    return diary;
  }

  private static byte[] sheet(String rows, Charset charset) {
    return (HEAD + "<sheetData>" + rows + "</sheetData>" + TAIL).getBytes(charset);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<row r=\"1\"><c r=\"A1\"><v>1</v></c></row>",
        "<row r='1' spans=\"1:3\"><c r='A1' s='4' t='s'><v>12</v></c><c r='C1'/></row><row r='9'/>",
        "<row><c><v>1</v></c><c t=\"str\"><f>A1&amp;\"x\"</f><v>1x</v></c></row>",
        "<row r=\"1\">\n <c r=\"A1\" >\n<v> 7 </v></c> <!-- x --> <u:c/> </row>\n<row r=\"3\"></row>",
        "<row r=\"1\"><c r=\"A1\"><v><!-- x -->1</v></c><c r=\"B1\"><v><![CDATA[2]]></v></c></row>",
        "<row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t>caf\u00e9 &lt;&#233;&gt;</t></is></c></row>",
        "<row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t xml:space=\"preserve\"> _x0041_ </t></is></c>"
            + "<c r=\"B1\" t=\"inlineStr\"><is><r><rPr><b/></rPr><t>bo</t></r><r><t>ld</t></r></is></c>"
            + "<c r=\"C1\" t=\"inlineStr\"><is><t/></is></c></row>",
        "<row r=\"1\"><c r=\"B1\"><f t=\"shared\" ref=\"B1:B3\" si=\"0\">A1*2</f><v>2</v></c></row>"
            + "<row r=\"2\"><c r=\"B2\"><f t=\"shared\" si=\"0\"/><v>4</v></c></row>",
        "<row r=\"1\"><c r=\"B1\"><f t='array' ref='B1:B3'>A1:A3</f><v>2</v></c></row>",
        "<row r=\"1\"><c r=\"B1\"><f ca=\"1\" t=\"dataTable\" ref=\"B1:B2\" dt2D=\"1\" r1=\"A1\""
            + " r2=\"A2\"/><v>2</v></c></row>",
        "<row r=\"1\"><c r=\"B1\"><v>a\r\nb</v></c><c r=\"C1\"><v/></c><c r=\"D1\"><v></v></c></row>",
        "<row r=\"1\"><c r=\"B1\"><u:v>3</u:v></c><c r=\"C1\"><extLst/><v>1</v ></c ></row>",
        "<row r=\"1\" s=\"3\" customFormat=\"1\"><c r=\"XFD1\" s=\"12\" t=\"b\"><v>1</v></c></row>"
            + "<row r=\"1048576\"><c r=\"A1048576\" t=\"e\"><v>#N/A</v></c></row>",
      })
  void formsThatProgramsWriteAndFormsThatTheyMayWrite(String rows) throws Exception {
    assertThat(compare(sheet(rows, StandardCharsets.UTF_8))).isTrue();
  }

  @Test
  void anotherEncodingIsMappedAsItIsConverted() throws Exception {
    String rows = "<row r=\"1\"><c r=\"A1\" t=\"str\"><v>M\u00fcnze</v></c></row>";
    assertThat(compare(sheet(rows, StandardCharsets.UTF_16))).isTrue();
  }

  @Test
  void rowsLongerThanTheBuffer() throws Exception {
    StringBuilder rows = new StringBuilder();
    for (int row = 1; row <= 5; row++) {
      rows.append("<row r=\"").append(row).append("\">").append(" ".repeat(row * 40_000));
      for (int column = 0; column < 3_000 * row; column++) {
        rows.append("<c t=\"str\"><v>").append(column).append("</v></c>");
      }
      rows.append("</row>").append("\n".repeat(70_000));
    }
    assertThat(compare(sheet(rows.toString(), StandardCharsets.UTF_8))).isTrue();
  }

  @Test
  void aSheetWithoutRowsHasNoMap() throws Exception {
    assertThat(compare((HEAD + "<sheetData/>" + TAIL).getBytes(StandardCharsets.UTF_8))).isFalse();
  }

  @Property
  boolean anyRows(@ForAll("rows") String rows) throws Exception {
    fits(sheet(rows, StandardCharsets.UTF_8));
    return true;
  }

  @Provide
  Arbitrary<String> rows() {
    Arbitrary<String> text =
        Arbitraries.of("1", "", " x ", "&amp;", "&#65;", "_x0009_", "\u00e9", "<!--c-->", "\r\n");
    Arbitrary<String> content =
        Combinators.combine(
                text, Arbitraries.of("<v>%s</v>", "<f>%s</f>", "<is><t>%s</t></is>", "%s<v>1</v>"))
            .as((words, form) -> form.formatted(words));
    Arbitrary<String> cell =
        Combinators.combine(
                content.list().ofMaxSize(2),
                Arbitraries.of("", " s=\"3\"", " t=\"str\"", " t='inlineStr' s='17'"),
                Arbitraries.of("", " ", "<u:x/>"))
            .as(
                (inside, tag, before) ->
                    before + "<c" + tag + ">" + String.join("", inside) + "</c>");
    Arbitrary<String> row =
        cell.list().ofMaxSize(6).map(cells -> "<row>" + String.join("", cells) + "</row>");
    return row.list().ofMaxSize(6).map(each -> String.join("\n", each));
  }

  @Test
  void everySheetOfTheSharedWorkbooks() throws Exception {
    int mapped = 0;
    for (Path file : SharedFiles.files(SharedFiles.folder("workbooks"), ".xlsx")) {
      mapped += sheetsOf(file);
    }
    assertThat(mapped).isGreaterThan(70);
  }

  private static int sheetsOf(Path file) throws IOException, WorkbookRefusal {
    int mapped = 0;
    try (ZipFile zip = new ZipFile(file.toFile())) {
      for (ZipEntry entry : zip.stream().toList()) {
        if (entry.getName().contains("worksheets/") && entry.getName().endsWith(".xml")) {
          byte[] part = zip.getInputStream(entry).readAllBytes();
          mapped += fits(part) ? 1 : 0;
        }
      }
    } catch (ZipException noZip) {
      return 0;
    }
    return mapped;
  }

  private static boolean fits(byte[] part) throws IOException, WorkbookRefusal {
    try {
      return compare(part);
    } catch (DamageException refused) {
      return false;
    }
  }
}

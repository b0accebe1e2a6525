package fineweight.workbook.csv;

import static fineweight.workbook.csv.CsvFiles.column;
import static fineweight.workbook.csv.CsvFiles.columns;
import static fineweight.workbook.csv.CsvFiles.open;
import static fineweight.workbook.csv.CsvFiles.rows;
import static fineweight.workbook.csv.CsvFiles.without;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import fineweight.workbook.CellChange;
import fineweight.workbook.CellContent;
import fineweight.workbook.CellContent.Text;
import fineweight.workbook.CellPlace;
import fineweight.workbook.ColumnEdit;
import fineweight.workbook.Workbook.SaveResult;
import fineweight.workbook.Workbook.UsedArea;
import fineweight.workbook.WorkbookEdit;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.WorkbookRefusal.Kind;
import fineweight.workbook.save.Backups;
import fineweight.workbook.save.FileReplacement;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CsvWorkbookTest {
  private static final CellContent HALF = new CellContent.Number(new BigDecimal("0.50"));

  @TempDir Path folder;

  private Path file(String content) throws Exception {
    return Files.writeString(folder.resolve("coins.csv"), content);
  }

  private static List<CellChange> changes(Path file, WorkbookEdit edit) throws WorkbookRefusal {
    List<CellChange> changes = new ArrayList<>();
    open(file).preview(edit, changes::add);
    return changes;
  }

  private static ColumnEdit same(int column, CellContent content) {
    return column(column, "Ours", row -> content);
  }

  @Test
  void readsEveryFieldAsTextAndLeavesBlanksOut() throws Exception {
    Path file = file("Year,Coin,Note\n\n1921,\"dollar \"\"D\"\", worn\",\n00123, 3/4 ,\"\"\n");

    assertThat(rows(open(file)))
        .containsExactly(
            "A1=Year B1=Coin C1=Note", "A3=1921 B3=dollar \"D\", worn", "A4=00123 B4= 3/4 ");
  }

  @Test
  void readsOnlyTheColumnsAndRowsWanted() throws Exception {
    List<String> seen = new ArrayList<>();

    open(file("a,b\nc,d\ne,f\n"))
        .read("", column -> column == 1, 1, cells -> seen.add(cells.toString()));

    assertThat(seen).hasSize(2).allMatch(cells -> cells.contains("place=B"));
  }

  @Test
  void usedAreaCountsEmptyFieldsButNoBlankLines() throws Exception {
    assertThat(open(file("a,b,\n1,2,\n\n\n")).usedArea("")).isEqualTo(new UsedArea(1, 2));
    assertThat(open(file("\n")).usedArea("")).isEqualTo(new UsedArea(-1, -1));
  }

  @Test
  void aQuotedLineBreakIsPartOfARow() throws Exception {
    assertThat(rows(open(file("a,\"b\nb\"\nc,d\n")))).containsExactly("A1=a B1=b\nb", "A2=c B2=d");
  }

  @Test
  void putsNewFieldsAtTheEndOfTheLines() throws Exception {
    Path file = file("Year;Coin\r\n1921;\"half; worn\"\r\n\r\n;\r\ntotal;=SUM\r\n");

    open(file).save(columns(3, same(2, HALF), column(3, "Note", row -> new Text("x;y"))));

    assertThat(file)
        .hasContent(
            "Year;Coin;Ours;Note\r\n1921;\"half; worn\";0,50;\"x;y\"\r\n"
                + ";;0,50;\"x;y\"\r\n;;0,50;\"x;y\"\r\ntotal;=SUM\r\n");
  }

  @Test
  void blankAndLeftOutRowsKeepTheirBytes() throws Exception {
    Path file = file("Year;Coin\n1921;half\n\n;\n1922;\n");

    open(file)
        .save(
            columns(
                4,
                column(2, "Ours", row -> row == 3 ? null : row == 2 ? CellContent.EMPTY : HALF)));

    assertThat(file).hasContent("Year;Coin;Ours\n1921;half;0,50\n\n;\n1922;;0,50\n");
  }

  @Test
  void aFullLineGetsEmptyFieldsForEmptyContents() throws Exception {
    Path file = file("Year,Coin\n1921,half\n1922\n");

    open(file).save(columns(2, same(2, CellContent.EMPTY)));

    assertThat(file).hasContent("Year,Coin,Ours\n1921,half,\n1922\n");
  }

  @Test
  void aShortLineIsFilledUpToItsContent() throws Exception {
    Path file = file("Year,Coin,Note\n1921\n");

    open(file).save(columns(1, same(3, HALF)));

    assertThat(file).hasContent("Year,Coin,Note,Ours\n1921,,,0.50\n");
  }

  @Test
  void keepsEachLinesOwnEndAndTheMissingLastOne() throws Exception {
    Path file = file("a,b\r\n1,2\n3,4\r5,6");

    open(file).save(columns(3, same(2, HALF)));

    assertThat(Files.readString(file)).isEqualTo("a,b,Ours\r\n1,2,0.50\n3,4,0.50\r5,6,0.50");
  }

  @Test
  void keepsOddQuotationMarksOfTheOwner() throws Exception {
    String odd = "a,\"b\" ,5\" nail,\"\",\"x\"\"y\",\"v\"w";
    Path file = file("h,i,j,k,l,m\n" + odd + "\n");

    open(file).save(columns(1, same(6, HALF)));

    assertThat(file).hasContent("h,i,j,k,l,m,Ours\n" + odd + ",0.50\n");
  }

  @ParameterizedTest
  @ValueSource(strings = {"a,\"x\ry\"\nb,c\n", "a,\"x\r\",c\r\"\ry\",d,\"\r\n\r\""})
  void keepsLoneCarriageReturnsInAField(String text) throws Exception {
    Path file = file(text);

    open(file)
        .save(
            new WorkbookEdit(
                columns(1, same(3, HALF)).sheets(), List.of(), List.of(), without().removals()));

    assertThat(Files.readString(file).replaceAll(",+(Ours|0.50)", "")).isEqualTo(text);
    assertThat(rows(open(file))).hasSize(2);
  }

  @Test
  void quotesOurFieldWhereTheWholeLineIsQuoted() throws Exception {
    Path file = file("\"Year\",\"Coin\"\n\"1921\",half\n\"1922\",\"dime\"\n");

    open(file).save(columns(2, same(2, HALF)));

    assertThat(file)
        .hasContent("\"Year\",\"Coin\",\"Ours\"\n\"1921\",half,0.50\n\"1922\",\"dime\",\"0.50\"\n");
  }

  @ParameterizedTest
  @CsvSource({"UTF-8,''", "UTF-8,\uFEFF", "UTF-16LE,\uFEFF", "UTF-16BE,\uFEFF", "windows-1252,''"})
  void keepsTheEncoding(Charset charset, String mark) throws Exception {
    Path file = folder.resolve("coins.csv");
    String before = mark + "Year;Coin\r\n1908;K\u00f6nig \u20ac\r\n";
    Files.write(file, before.getBytes(charset));

    open(file).save(columns(1, same(2, new Text("\u00df \u20ac"))));

    String after = mark + "Year;Coin;Ours\r\n1908;K\u00f6nig \u20ac;\u00df \u20ac\r\n";
    assertThat(file).hasBinaryContent(after.getBytes(charset));
  }

  @Test
  void aCharacterThatTheEncodingLacksBecomesAQuestionMark() throws Exception {
    Path file = folder.resolve("coins.csv");
    Charset windows = Charset.forName("windows-1252");
    Files.write(file, "Coin,Note\nK\u00f6nig,\n".getBytes(windows));
    WorkbookEdit edit = columns(1, same(1, new Text("\u2265 1 \uD83E\uDE99")));

    open(file).save(edit);

    assertThat(Files.readString(file, windows)).isEqualTo("Coin,Ours\nK\u00f6nig,? 1 ?\n");
    assertThat(open(file).save(edit).written()).isFalse();
  }

  @ParameterizedTest
  @ValueSource(strings = {"=1+1", "+1", "-2", "@x", "\tx", "\rx"})
  void ourTextIsNeverAFormula(String text) throws Exception {
    Path file = file("Coin,Note\ndime,-2\n");

    open(file).save(columns(1, same(2, new Text(text))));

    assertThat(rows(open(file))).contains("A2=dime B2=-2 C2='" + text);
  }

  @Test
  void aNegativeNumberOfOursStaysANumber() throws Exception {
    Path file = file("Coin\ndime\n");

    open(file).save(columns(1, same(1, new CellContent.Number(new BigDecimal("-1E+3")))));

    assertThat(file).hasContent("Coin,Ours\ndime,-1000\n");
  }

  @Test
  void writesTheStoredResultOfAFormula() throws Exception {
    Path file = file("Coin;Ounces\nmark;0,1607\ncrown;0,84\n");

    open(file)
        .save(
            columns(
                2,
                column(
                    2,
                    "Melt",
                    row ->
                        row == 1
                            ? CellContent.Formula.number("B2*X", new BigDecimal("4.82"))
                            : CellContent.Formula.text("X", "open"))));

    assertThat(file).hasContent("Coin;Ounces;Melt\nmark;0,1607;4,82\ncrown;0,84;open\n");
  }

  @Test
  void replacesOurOwnFieldsOnlyWhereTheyDiffer() throws Exception {
    Path file = file("Coin,Ours,Note\ndime,\"0.50\", a\ncent,0.25, b\n");
    WorkbookEdit edit = columns(2, same(1, HALF));

    assertThat(changes(file, edit))
        .containsExactly(new CellChange(new CellPlace("", 2, 1), "0.25", "0.50"));
    open(file).save(edit);

    assertThat(file).hasContent("Coin,Ours,Note\ndime,\"0.50\", a\ncent,0.50, b\n");
  }

  @Test
  void tellsEveryChangeBeforehand() throws Exception {
    Path file = file("Coin\ndime\n\n");

    assertThat(changes(file, columns(1, same(1, HALF))))
        .containsExactly(
            new CellChange(new CellPlace("", 0, 1), "", "Ours"),
            new CellChange(new CellPlace("", 1, 1), "", "0.50"));
    assertThat(file).hasContent("Coin\ndime\n\n");
  }

  @Test
  void anEditThatChangesNothingWritesNothing() throws Exception {
    Path file = file("Coin,Year\ndime,1921\n");
    WorkbookEdit edit = columns(1, same(2, HALF), column(3, "More", row -> CellContent.EMPTY));
    SaveResult first = open(file).save(edit);
    FileTime time = Files.getLastModifiedTime(file);
    byte[] bytes = Files.readAllBytes(file);

    SaveResult second = open(file).save(edit);

    assertThat(first.written()).isTrue();
    assertThat(first.changedCells()).isEqualTo(3);
    assertThat(first.backup()).hasContent("Coin,Year\ndime,1921\n");
    assertThat(second).isEqualTo(new SaveResult(false, 0, null));
    assertThat(file).hasBinaryContent(bytes);
    assertThat(Files.getLastModifiedTime(file)).isEqualTo(time);
    assertThat(Backups.onDisk().list(file)).hasSize(1);
  }

  @Test
  void takingOurColumnsOutGivesTheOriginalBack() throws Exception {
    String original = "Coin;\"Year\"\r\n\r\ndime;1921\r\n;\r\ncent;1922";
    Path file = file(original);
    open(file).save(columns(4, same(2, HALF), column(3, "Note", row -> new Text("a\nb"))));

    open(file).save(without(2, 3));

    assertThat(Files.readString(file)).isEqualTo(original.replace("\r\n\r\n", "\r\n;\r\n"));
  }

  @Test
  void aColumnOfOursAmongForeignOnesIsOnlyEmptied() throws Exception {
    Path file = file("Coin,Ours,Mine,Ours2\ndime,0.5,x,1\n");

    assertThat(open(file).save(without(1, 3)).changedCells()).isEqualTo(4);

    assertThat(file).hasContent("Coin,,Mine\ndime,,x\n");
  }

  @Test
  void aColumnCanGoWhileAnotherComes() throws Exception {
    Path file = file("Coin,Old\ndime,1\n");
    WorkbookEdit coming = columns(1, same(2, HALF));

    open(file).save(new WorkbookEdit(coming.sheets(), List.of(), List.of(), without(1).removals()));

    assertThat(file).hasContent("Coin,,Ours\ndime,,0.50\n");
  }

  @Test
  void refusesARowBeyondTheEnd() throws Exception {
    Path file = file("Coin\ndime\n");

    assertThat(
            catchThrowableOfType(
                    WorkbookRefusal.class, () -> open(file).save(columns(2, same(1, HALF))))
                .kind())
        .isEqualTo(Kind.NO_ROOM);
  }

  @Test
  void refusesAFileThatChangedSinceItWasRead() throws Exception {
    Path file = file("Coin\ndime\n");
    CsvWorkbook workbook = open(file);
    Files.writeString(file, "Coin\ncent\n");

    assertThatThrownBy(() -> workbook.save(columns(1, same(1, HALF))))
        .isInstanceOf(WorkbookRefusal.class)
        .hasMessageContaining("changed");
    assertThat(file).hasContent("Coin\ncent\n");
  }

  @ParameterizedTest
  @CsvSource({
    "'a,b|\"c,d|e,f|', line 2",
    "'a,b|c,\"d\"e\"f,g|', line 2",
    "'a,b|c,d|e,\"f\"x\"g', line 3",
    "'a,b|c,\"d', line 2",
  })
  void refusesAQuotationMarkGoneAstray(String text, String place) throws Exception {
    Path file = file(text.replace('|', '\n'));

    assertThat(catchThrowableOfType(WorkbookRefusal.class, () -> open(file)))
        .hasMessageContaining(place)
        .extracting(WorkbookRefusal::kind)
        .isEqualTo(Kind.DAMAGED);
  }

  @Test
  void refusesALineOfAbsurdLength() throws Exception {
    Path longField = file("a,b\nc," + "x".repeat(2_000_000) + "\n");
    assertThatThrownBy(() -> open(longField))
        .isInstanceOf(WorkbookRefusal.class)
        .hasMessageContaining("line 2");

    Path manyFields = file("a,b\nc" + ",".repeat(20_000) + "\n");
    assertThatThrownBy(() -> open(manyFields))
        .isInstanceOf(WorkbookRefusal.class)
        .hasMessageContaining("line 2");
  }

  @Test
  void refusesAnEmptyAndAnAbsentFile() throws Exception {
    Path empty = file("");
    assertThat(catchThrowableOfType(WorkbookRefusal.class, () -> open(empty)).kind())
        .isEqualTo(Kind.DAMAGED);
    Path absent = folder.resolve("absent.csv");
    assertThat(catchThrowableOfType(WorkbookRefusal.class, () -> open(absent)).kind())
        .isEqualTo(Kind.FILE);
  }

  /** Writers that do harm on purpose are caught before their copy takes the file's place. */
  @ParameterizedTest
  @CsvSource({
    "0.50,0.5",
    "0.50,''",
    "dime,cent",
    "'\"a,b\"','a,b'",
    "'\r\n','\n'",
    "'1,dime,','1,dime,,'",
    "'2,cent,0.50\r\n',''",
    "'2,cent,0.50\r\n','2,cent,0.50\r\n\r\n'",
    "Ours,Hours"
  })
  void catchesAWriterThatChanges(String what, String into) throws Exception {
    Path file = file("Nr,\"a,b\"\r\n1,dime\r\n2,cent\r\n");
    FileReplacement harmful =
        (target, asRead, writer, check) -> {
          Path written = folder.resolve("written");
          try (OutputStream out = Files.newOutputStream(written)) {
            writer.writeTo(out);
            out.close();
            String text = Files.readString(written);
            assertThat(text).contains(what);
            Files.writeString(written, text.replace(what, into));
            check.check(written);
            return written;
          } catch (IOException e) {
            throw new UncheckedIOException(e);
          }
        };

    WorkbookRefusal refusal =
        catchThrowableOfType(
            WorkbookRefusal.class,
            () -> CsvWorkbook.open(file, harmful).save(columns(2, same(2, HALF))));

    assertThat(refusal).hasMessageContaining("coins.csv was left as it was");
  }

  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n", "\r"})
  void copiesALongTable(String end) throws Exception {
    StringBuilder rows = new StringBuilder();
    for (int i = 1; i <= 100_000; i++) {
      rows.append(i).append(",\"dollar, worn\",26.73").append(end);
    }
    Path file = file("Year,Coin,Grams" + end + rows);

    SaveResult result = open(file).save(columns(100_000, same(3, HALF)));

    assertThat(result.changedCells()).isEqualTo(100_001);
    assertThat(Files.readString(file, StandardCharsets.UTF_8))
        .isEqualTo("Year,Coin,Grams,Ours" + end + rows.toString().replace("26.73", "26.73,0.50"));
  }
}

package fineweight.workbook.xls;

import static fineweight.workbook.xls.XlsFiles.column;
import static fineweight.workbook.xls.XlsFiles.columns;
import static fineweight.workbook.xls.XlsFiles.open;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import fineweight.workbook.CellContent;
import fineweight.workbook.NamedCell;
import fineweight.workbook.WorkbookEdit;
import fineweight.workbook.WorkbookEdit.Removal;
import fineweight.workbook.open.CorpusFiles;
import java.io.File;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An office reads what we wrote. */
class XlsOfficeTest {
  /** Commas, quotes where needed, UTF-8, values as stored, all sheets. */
  private static final String AS_TEXT =
      "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,true,false,false,false,-1";

  @TempDir Path folder;

  @Test
  void readsOurColumnsAndFormulas() throws Exception {
    Path office = office();
    Path file =
        CorpusFiles.copy(CorpusFiles.folder("workbooks").resolve("SimpleWithImages.xls"), folder);
    try (XlsWorkbook workbook = open(file)) {
      workbook.save(edit());
    }

    Process conversion =
        new ProcessBuilder(
                office.toString(),
                "-env:UserInstallation=" + folder.resolve("profile").toUri(),
                "--headless",
                "--convert-to",
                AS_TEXT,
                "--outdir",
                folder.toString(),
                file.toString())
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("log").toFile())
            .start();

    assertThat(conversion.waitFor(2, TimeUnit.MINUTES)).isTrue();
    assertThat(folder.resolve("SimpleWithImages-Sheet1.csv"))
        .hasContent("Ounces,Melt,Note\n0.7234,21.7,=no formula\n0.7234,21.7,=no formula\n");
  }

  private static WorkbookEdit edit() {
    CellContent ounces = new CellContent.Number(new BigDecimal("0.7234"));
    CellContent melt =
        CellContent.Formula.number("ROUND(A2*Fineweight_XAG,2)", new BigDecimal("21.70"));
    CellContent spot = new CellContent.Number(new BigDecimal("30"));
    return new WorkbookEdit(
        List.of(
            columns(
                    "Sheet1",
                    2,
                    column(0, "Ounces", "0.0000", row -> ounces),
                    column(1, "Melt", "0.00", row -> melt),
                    column(2, "Note", "", row -> new CellContent.Text("=no formula")))
                .sheets()
                .get(0),
            columns("Sheet2", 1, column(0, "Spot", "0.00", row -> spot)).sheets().get(0)),
        List.of(),
        List.of(new NamedCell("Fineweight_XAG", "Sheet2!$A$2", true)),
        Removal.NOTHING);
  }

  private static Path office() {
    Path found =
        Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
            .map(one -> Path.of(one, "soffice"))
            .filter(Files::isExecutable)
            .findFirst()
            .orElse(null);
    assumeTrue(found != null, "LibreOffice is not installed");
    return found;
  }
}

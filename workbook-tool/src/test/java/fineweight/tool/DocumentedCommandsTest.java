package fineweight.tool;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.OutputStream;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the documents show is what happens. */
class DocumentedCommandsTest {
  /** A fenced block under a line {@code <!-- run -->}. */
  private static final Pattern BLOCK =
      Pattern.compile("<!-- run -->\\R```sh\\R(.*?)```", Pattern.DOTALL);

  @TempDir Path folder;

  private static Path root() {
    return Path.of(System.getProperty("fineweight.root", ".."));
  }

  private static List<Path> documents() throws IOException {
    try (Stream<Path> docs = Files.walk(root().resolve("docs"))) {
      List<Path> documents =
          new ArrayList<>(docs.filter(each -> each.toString().endsWith(".md")).toList());
      documents.add(root().resolve("README.md"));
      documents.add(root().resolve("DEVELOPERS.md"));
      return documents;
    }
  }

  @Test
  void everyCommandShownRuns() throws Exception {
    int run = 0;
    for (Path document : documents()) {
      Matcher block = BLOCK.matcher(Files.readString(document));
      Path at = Files.createTempDirectory(folder, "document");
      assertThat(Told.by("starter", at.resolve("my-coins.xlsx")).code()).isZero();
      type(root().resolve("docs/lot-of-forty.csv"), at.resolve("forty.xlsx"));
      while (block.find()) {
        for (String line : block.group(1).lines().filter(each -> !each.isBlank()).toList()) {
          assertThat(line).as(document.toString()).startsWith("fineweight");
          run(line, at);
          run++;
        }
      }
    }
    assertThat(run).isGreaterThanOrEqualTo(20);
  }

  /** The invented lot that a document works through, as its owner types it. */
  private static void type(Path list, Path file) throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook();
        CsvReader<CsvRecord> lines = CsvReader.builder().ofCsvRecord(list);
        OutputStream out = Files.newOutputStream(file)) {
      XSSFSheet sheet = workbook.createSheet("Coins");
      for (CsvRecord line : lines) {
        XSSFRow row = sheet.createRow(sheet.getPhysicalNumberOfRows());
        for (String text : line.getFields()) {
          XSSFCell cell = row.createCell(Math.max(0, row.getLastCellNum()));
          if (text.matches("\\d+(\\.\\d+)?")) {
            cell.setCellValue(Double.parseDouble(text));
          } else {
            cell.setCellValue(text);
          }
        }
      }
      workbook.write(out);
    }
  }

  private static void run(String line, Path at) throws IOException, InterruptedException {
    List<String> words =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                "fineweight.tool.Main"));
    words.addAll(List.of(line.strip().split("\\s+")).subList(1, line.strip().split("\\s+").length));
    Path log = Files.createTempFile(at, "log", ".txt");
    Process process =
        new ProcessBuilder(words)
            .directory(at.toFile())
            .redirectErrorStream(true)
            .redirectOutput(log.toFile())
            .start();
    assertThat(process.waitFor(2, TimeUnit.MINUTES)).as(line).isTrue();
    String said = Files.readString(log, StandardCharsets.UTF_8);
    assertThat(process.exitValue()).as(line + "\n" + said).isZero();
    assertThat(said).as(line).isNotBlank().doesNotContain("SLF4J").doesNotContain("\tat ");
  }

  @Test
  void theReadmeHasEveryCommandAndExitCode() throws IOException {
    String readme = Files.readString(root().resolve("README.md"));
    Surroundings surroundings = Told.surroundings(new StringWriter(), new StringWriter());
    for (String name : Main.commandLine(surroundings).getSubcommands().keySet()) {
      assertThat(readme).contains("`fineweight " + name + " ");
    }
    for (ExitCode code : ExitCode.values()) {
      assertThat(readme).contains("| " + code.code() + " | " + code.meaning() + " |");
    }
  }

  @Test
  void everyPictureIsThere() throws IOException {
    Matcher picture =
        Pattern.compile("!\\[[^\\]]+\\]\\(([^)]+)\\)")
            .matcher(Files.readString(root().resolve("README.md")));
    assertThat(picture.find()).isTrue();
    assertThat(root().resolve(picture.group(1))).isRegularFile();
  }
}

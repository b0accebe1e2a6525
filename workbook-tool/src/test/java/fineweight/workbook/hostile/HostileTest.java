package fineweight.workbook.hostile;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.corpus.Filling;
import fineweight.workbook.corpus.Opening;
import fineweight.workbook.corpus.RoundTrip;
import fineweight.workbook.corpus.SharedFiles;
import fineweight.workbook.oracle.SampleBook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every file made to do harm is refused with one sentence, or harms nothing. */
class HostileTest {
  private static final Path OUTSIDE = Path.of("/tmp/evil3.txt");

  @TempDir Path folder;

  static List<String> files() throws IOException {
    try (Stream<Path> files = Files.list(SharedFiles.folder("hostile"))) {
      return files
          .map(each -> each.getFileName().toString())
          .filter(each -> !each.equals("INDEX.csv"))
          .sorted()
          .toList();
    }
  }

  @ParameterizedTest
  @MethodSource("files")
  void harmsNothing(String name) throws Exception {
    String must = instructions().get(name);
    assertThat(must).as("a line in the index").isNotNull();
    Path place = Files.createDirectories(folder.resolve("a/b/c")).resolve(name);
    SharedFiles.copy(SharedFiles.folder("hostile").resolve(name), place);
    ChildRun run = ChildRun.of(place);
    System.out.println(name + ": " + run.lastLine());
    judge(run, place, must);
    if (run.code() == 0 && isPackage(place)) {
      assertThat(roundTrip(name)).as("what the oracle says").isEmpty();
    }
  }

  private void judge(ChildRun run, Path place, String must) throws IOException {
    assertThat(run.code()).as(run.output()).isIn(0, 10, 11, 12, 13, 14, 15);
    assertThat(run.output()).doesNotContain("Exception", "Error:", "\tat ");
    assertThat(run.connections()).as("connections opened").isZero();
    assertThat(run.cpuMillis()).isLessThan(5_000);
    assertThat(OUTSIDE).doesNotExist();
    String original = place.getFileName().toString();
    if (run.code() != 0) {
      assertThat(run.unchanged()).as("the original is untouched").isTrue();
      assertThat(tree()).as("no new file").containsExactly(original);
      assertThat(run.lastLine()).startsWith("refused: ").contains(original);
    } else {
      assertThat(tree()).as("nothing but a backup").hasSizeLessThanOrEqualTo(2).contains(original);
    }
    if (must.startsWith("refuse with") || must.startsWith("refuse:")) {
      assertThat(run.code()).as("refused: %s", run.output()).isNotZero();
    }
    if (must.contains("checksum error named")) {
      assertThat(run.lastLine()).contains("checksum");
    }
  }

  private Map<String, String> instructions() throws IOException {
    try (CsvReader<NamedCsvRecord> index =
        CsvReader.builder().ofNamedCsvRecord(SharedFiles.folder("hostile").resolve("INDEX.csv"))) {
      return index.stream()
          .collect(
              Collectors.toMap(
                  each -> each.getField("file"), each -> each.getField("what_the_tool_must_do")));
    }
  }

  /** All files below the folder, whatever depth somebody managed to write to. */
  private List<String> tree() throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files
          .filter(Files::isRegularFile)
          .map(each -> each.getFileName().toString())
          .sorted()
          .toList();
    }
  }

  private static boolean isPackage(Path file) throws IOException {
    byte[] start = Files.readAllBytes(file);
    return start.length > 4 && start[0] == 'P' && start[1] == 'K';
  }

  private List<String> roundTrip(String name) throws IOException, WorkbookRefusal {
    Path copy = Files.createDirectories(folder.resolve("again")).resolve(name);
    SharedFiles.copy(SharedFiles.folder("hostile").resolve(name), copy);
    Filling filling;
    try (Workbook workbook = Opening.ANY.open(copy)) {
      filling = HostileTrial.filling(workbook);
    }
    return new RoundTrip(Opening.ANY, copy, filling, false).run().problems();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "[Content_Types].xml",
        "_rels/.rels",
        "xl/workbook.xml",
        "xl/_rels/workbook.xml.rels",
        SampleBook.COINS,
        "xl/sharedStrings.xml",
        "xl/styles.xml",
        "xl/tables/table1.xml"
      })
  void noPartMayReadAFileOrCallHome(String part) throws Exception {
    Path canary = Files.writeString(folder.resolve("canary.txt"), "CANARY-7b31");
    try (Listener listener = new Listener()) {
      for (String address :
          List.of(canary.toUri().toString(), "http://127.0.0.1:" + listener.port() + "/x")) {
        Map<String, String> parts = SampleBook.before();
        parts.put(part, entity(parts.get(part), address));
        Path place = Files.createDirectories(folder.resolve("x")).resolve("entity.xlsx");
        Files.write(place, SampleBook.zip(parts));
        ChildRun run = ChildRun.of(place);
        assertThat(run.code()).as(run.output()).isGreaterThanOrEqualTo(10);
        assertThat(run.output()).doesNotContain("CANARY", "Exception");
        assertThat(run.unchanged()).isTrue();
      }
      assertThat(listener.connections()).isZero();
    }
  }

  private static String entity(String part, String address) {
    String root = part.substring(1).split("[ >]")[0];
    String declaration = "<!DOCTYPE %s [<!ENTITY e SYSTEM \"%s\">]>".formatted(root, address);
    int end = part.lastIndexOf("</");
    return declaration + part.substring(0, end) + "&e;" + part.substring(end);
  }

  @Test
  void theListenerDoesCount() throws IOException {
    try (Listener listener = new Listener()) {
      new java.net.Socket("127.0.0.1", listener.port()).close();
      listener.await(1);
      assertThat(listener.connections()).isEqualTo(1);
    }
  }

  @Test
  void everyFileOfTheFolderStandsInTheIndex() throws IOException {
    Map<String, String> known = new HashMap<>(instructions());
    assertThat(known.keySet()).containsAll(files());
  }
}

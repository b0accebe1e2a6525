package fineweight.window;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.template.StarterWorkbook;
import fineweight.tool.CommandRun;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A person drops a workbook on the window, types prices, and fills it, by mouse and keyboard. */
class WindowTest {
  @TempDir Path folder;

  @Test
  void aDroppedWorkbookIsShownPricedAndFilled() throws Exception {
    Path file = starter(folder.resolve("my coins.xlsx"));
    Path twin = starter(Files.createDirectories(folder.resolve("twin")).resolve("my coins.xlsx"));
    Map<String, String> seen;
    Path picture =
        Path.of(
            System.getProperty(
                "fineweight.window.picture", folder.resolve("window.png").toString()));
    try (VirtualDisplay display = VirtualDisplay.start()) {
      seen = trial(display, file, picture);
    }
    assertThat(seen).containsEntry("fill at first", "false").containsEntry("closed", "yes");
    assertThat(seen.get("dropped")).contains("nothing has been written", "without a price");
    assertThat(seen.get("understood")).contains("Year = year", "Mint mark = ");
    assertThat(seen.get("wrong price")).contains("3x", "silver").doesNotContain("--");
    assertThat(seen).containsEntry("fill after a wrong price", "false");
    assertThat(seen.get("priced")).contains("Fine troy ounces: gold ", "Melt at least ");
    assertThat(seen.get("changes")).contains("Inventory!");
    assertThat(seen.get("tab order"))
        .contains("Gold;Silver;Platinum;Palladium;Currency;Other metals;sheet;leave out;message")
        .contains("Will change", "fill", "choose");
    assertThat(seen).containsEntry("without a name", "0");
    assertThat(seen.get("filled"))
        .contains("is kept as my coins.fineweight-1.xlsx", "not an offer");
    assertThat(Files.size(picture)).isGreaterThan(10_000);
    assertThat(CommandRun.refresh(twin).code()).isZero();
    assertThat(file).hasSameBinaryContentAs(twin);
  }

  @Test
  void aScreenThatCannotBeReachedIsSaidInASentence() throws Exception {
    try (VirtualDisplay display = VirtualDisplay.start()) {
      assertThat(display.name()).startsWith(":");
    }
    Path log = folder.resolve("log");
    ProcessBuilder builder = java("-cp", classes(), "fineweight.tool.WindowMain");
    builder.environment().put("DISPLAY", ":" + 60_000);
    Process process = builder.redirectErrorStream(true).redirectOutput(log.toFile()).start();
    assertThat(process.waitFor(1, TimeUnit.MINUTES)).isTrue();
    assertThat(process.exitValue()).isEqualTo(11);
    assertThat(log).content().contains("no screen", "fineweight refresh").hasLineCount(1);
  }

  private static String classes() {
    return System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
  }

  private static ProcessBuilder java(String... words) {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-Djava.awt.headless=false",
                "-Dstdout.encoding=UTF-8"));
    command.addAll(List.of(words));
    return new ProcessBuilder(command);
  }

  private static Path starter(Path file) throws IOException {
    try (OutputStream out = Files.newOutputStream(file)) {
      StarterWorkbook.withDemoRows().write(out);
    }
    return file;
  }

  private Map<String, String> trial(VirtualDisplay display, Path file, Path picture)
      throws IOException, InterruptedException {
    Path log = folder.resolve("log");
    ProcessBuilder builder =
        java("-cp", classes(), WindowTrial.class.getName(), file.toString(), picture.toString());
    builder.environment().put("DISPLAY", display.name());
    Process process = builder.redirectErrorStream(true).redirectOutput(log.toFile()).start();
    boolean ended = process.waitFor(3, TimeUnit.MINUTES);
    process.destroyForcibly();
    String said = Files.readString(log, StandardCharsets.UTF_8);
    assertThat(ended).as(said).isTrue();
    assertThat(process.exitValue()).as(said).isZero();
    Map<String, String> seen = new TreeMap<>();
    for (String line : said.lines().toList()) {
      int colon = line.indexOf(": ");
      if (colon > 0) {
        seen.put(line.substring(0, colon), line.substring(colon + 2));
      }
    }
    return seen;
  }
}

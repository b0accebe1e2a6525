package fineweight.tool;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever somebody types first leads to the next useful step. */
class FirstStepsTest {
  @TempDir Path folder;

  @Test
  void theBareCommandSaysWhereToBegin() {
    Told told = Told.by();
    assertThat(told.code()).isZero();
    assertThat(told.out()).contains("refresh", "explain", "starter", "demo", "Where to begin");
    assertThat(told.err()).isEmpty();
  }

  @Test
  void aWrongWordIsAnsweredWithTheRightOne() {
    Told told = Told.by("refesh", "coins.xlsx");
    assertThat(told.code()).isEqualTo(ExitCode.USAGE.code());
    assertThat(told.err()).contains("refesh").contains("refresh");
    assertThat(told.out()).isEmpty();
  }

  @Test
  void everyCommandHelps() {
    for (String name :
        new String[] {"refresh", "explain", "take-out", "restore", "starter", "demo"}) {
      assertThat(Told.by(name, "--help").code()).as(name).isZero();
      assertThat(Told.by(name, "--help").out()).as(name).contains("Usage: fineweight " + name);
      assertThat(Told.by("help", name).out()).as(name).contains("Usage: fineweight " + name);
    }
    assertThat(Told.by("--help").out()).contains("Exit codes:");
  }

  @Test
  void aWorkbookAloneIsADryRunWithoutPrices() throws IOException {
    Path file = folder.resolve("my coins.xlsx");
    assertThat(Told.by("starter", file).code()).isZero();
    byte[] before = Files.readAllBytes(file);
    Told told = Told.by(file);
    assertThat(told.err()).isEmpty();
    assertThat(told.code()).isZero();
    assertThat(told.out())
        .contains("understood:", "nothing was written", "no price was given")
        .contains("fineweight refresh \"" + file + "\" --spot");
    assertThat(Files.readAllBytes(file)).isEqualTo(before);
    assertThat(folder.toFile().list()).containsExactly("my coins.xlsx");
  }

  @Test
  void aWorkbookAloneTakesTheOptionsOfARefresh() {
    Path file = folder.resolve("coins.xlsx");
    Told.by("starter", file);
    Told told = Told.by(file, "--spot", "XAG=31.50", "--sheet", "Inventory");
    assertThat(told.code()).isZero();
    assertThat(told.out())
        .contains("at the spot prices of 2026-11-25", "nothing was written")
        .contains("fineweight refresh " + file + " --spot XAG=31.50 --sheet Inventory");
  }

  @Test
  void aWorkbookThatIsNotThereIsSaidInOneSentence() {
    Told told = Told.by(folder.resolve("none.xlsx"));
    assertThat(told.code()).isEqualTo(ExitCode.FILE.code());
    assertThat(told.err().lines()).hasSize(1);
    assertThat(told.err()).contains("none.xlsx");
  }
}

package fineweight.tool;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.workbook.validity.WorkbookValidator;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StarterCommandTest {
  @TempDir Path folder;

  @Test
  void writesASoundWorkbookAndSaysHowToGoOn() throws IOException {
    Path file = folder.resolve("coins.xlsx");
    Told told = Told.by("starter", file);
    assertThat(told.code()).isZero();
    assertThat(told.out()).contains(file.toString(), "fineweight refresh");
    assertThat(WorkbookValidator.findings(file)).isEmpty();
  }

  @Test
  void neverOverwrites() throws IOException {
    Path file = Files.writeString(folder.resolve("coins.xlsx"), "mine");
    Told told = Told.by("starter", file);
    assertThat(told.code()).isEqualTo(ExitCode.FILE.code());
    assertThat(told.err()).contains("exists already").contains(file.toString());
    assertThat(file).hasContent("mine");
  }

  @Test
  void wantsAWorkbooksName() {
    Told told = Told.by("starter", folder.resolve("coins.txt"));
    assertThat(told.code()).isEqualTo(ExitCode.FILE.code());
    assertThat(told.err()).contains(".xlsx");
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void aFolderThatCannotBeMadeIsSaid() throws IOException {
    Path inTheWay = Files.writeString(folder.resolve("file"), "");
    Told told = Told.by("starter", inTheWay.resolve("coins.xlsx"));
    assertThat(told.code()).isEqualTo(ExitCode.FILE.code());
    assertThat(told.err().lines()).hasSize(1);
  }

  @Test
  void anEmptyOneIsRefusedNothingButHasNothingToFill() {
    Path file = folder.resolve("coins.xlsx");
    assertThat(Told.by("starter", file, "--empty").code()).isZero();
    Told told = Told.by("refresh", file, "--spot", "XAG=30.00");
    assertThat(told.code()).as(told.err()).isZero();
    assertThat(told.out()).contains("0 rows, 0 pieces");
  }

  @Test
  void theDemoCanBeRunAgain() {
    Told first = Told.by("demo", folder.resolve("demo"));
    assertThat(first.code()).as(first.err()).isZero();
    assertThat(first.out()).contains("25 rows", "invented", "starter.xlsx");
    Told second = Told.by("demo", folder.resolve("demo"));
    assertThat(second.code()).isZero();
    assertThat(second.out()).contains("the file was not written");
    Told dearer = Told.by("demo", folder.resolve("demo"), "--spot", "XAG=60", "--spot", "XAU=5000");
    assertThat(dearer.code()).isZero();
    assertThat(dearer.out()).contains("cells changed");
  }
}

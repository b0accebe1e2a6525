package fineweight.workbook.save;

import static fineweight.workbook.save.Folder.expecting;
import static fineweight.workbook.save.Folder.file;
import static fineweight.workbook.save.Folder.names;
import static fineweight.workbook.save.Folder.writing;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.WorkbookRefusal.Kind;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SafeSaveTest {
  @TempDir Path folder;
  private final SafeSave save = SafeSave.onDisk();
  private Path coins;
  private FileFingerprint asRead;

  @BeforeEach
  void oneFile() throws IOException {
    coins = file(folder, "coins.xlsx", "old");
    asRead = FileFingerprint.of(coins);
  }

  private Path replace(Path target) throws WorkbookRefusal {
    return save.replace(target, asRead, writing("new"), expecting("new"));
  }

  private WorkbookRefusal refused(Path target) {
    return catchThrowableOfType(WorkbookRefusal.class, () -> replace(target));
  }

  @Test
  void putsTheNewContentInPlaceAndKeepsTheOldOne() throws Exception {
    Path backup = replace(coins);

    assertThat(coins).hasContent("new");
    assertThat(backup).hasContent("old").hasFileName("coins.fineweight-1.xlsx");
    assertThat(names(folder)).containsExactly("coins.fineweight-1.xlsx", "coins.xlsx");
  }

  @Test
  void backupKeepsTheTimeOfTheFormerState() throws Exception {
    FileTime then = FileTime.from(Instant.parse("2020-02-29T10:00:00Z"));
    Files.setLastModifiedTime(coins, then);

    assertThat(Files.getLastModifiedTime(replace(coins))).isEqualTo(then);
  }

  @Test
  void keepsFiveBackupsTheNewestWithTheHighestNumber() throws Exception {
    for (int i = 1; i <= 8; i++) {
      String content = "state " + i;
      save.replace(coins, FileFingerprint.of(coins), writing(content), expecting(content));
    }

    assertThat(names(folder))
        .containsExactly(
            "coins.fineweight-4.xlsx",
            "coins.fineweight-5.xlsx",
            "coins.fineweight-6.xlsx",
            "coins.fineweight-7.xlsx",
            "coins.fineweight-8.xlsx",
            "coins.xlsx");
    assertThat(folder.resolve("coins.fineweight-8.xlsx")).hasContent("state 7");
    assertThat(folder.resolve("coins.fineweight-4.xlsx")).hasContent("state 3");
  }

  @Test
  void leavesBackupsOfOtherFilesAlone() throws Exception {
    for (String name : new String[] {"my coins", "coins.old", "coinsX", "coins.fineweight-1"}) {
      for (int i = 1; i <= 6; i++) {
        file(folder, name + ".fineweight-" + i + ".xlsx", "of another");
      }
    }

    replace(coins);

    assertThat(names(folder)).hasSize(4 * 6 + 2).contains("coins.fineweight-1.xlsx");
  }

  @ParameterizedTest
  @ValueSource(strings = {"~$coins.xlsx", ".~lock.coins.xlsx#"})
  void leavesAFileAloneThatAnotherProgramHasOpen(String mark) throws Exception {
    file(folder, mark, "someone");

    WorkbookRefusal refusal = refused(coins);

    assertThat(refusal.kind()).isEqualTo(Kind.IN_USE);
    assertThat(refusal).hasMessageContaining("coins.xlsx").hasMessageContaining(mark);
    assertThat(coins).hasContent("old");
    assertThat(names(folder)).containsExactlyInAnyOrder("coins.xlsx", mark);
  }

  @Test
  void noticesAMarkThatComesWhileItWrites() throws Exception {
    FileReplacement.Check opening = written -> file(folder, "~$coins.xlsx", "someone");

    assertThatThrownBy(() -> save.replace(coins, asRead, writing("new"), opening))
        .isInstanceOf(WorkbookRefusal.class);
    assertThat(coins).hasContent("old");
  }

  @Test
  void leavesAFileAloneThatChangedSinceItWasRead() throws Exception {
    Files.writeString(coins, "NEWER");

    WorkbookRefusal refusal = refused(coins);

    assertThat(refusal.kind()).isEqualTo(Kind.IN_USE);
    assertThat(refusal).hasMessageContaining("coins.xlsx").hasMessageContaining("changed");
    assertThat(coins).hasContent("NEWER");
    assertThat(names(folder)).containsExactly("coins.xlsx");
  }

  @Test
  void noticesAChangeWhileItWritesEvenOfTheSameSizeAndTime() throws Exception {
    FileReplacement.Check changing =
        written -> {
          Files.writeString(coins, "OLD");
          Files.setLastModifiedTime(coins, asRead.modified());
        };

    assertThatThrownBy(() -> save.replace(coins, asRead, writing("new"), changing))
        .isInstanceOf(WorkbookRefusal.class)
        .hasMessageContaining("changed");
    assertThat(coins).hasContent("OLD");
    assertThat(names(folder)).containsExactly("coins.xlsx");
  }

  @Test
  void aNewTimeStampAloneIsNoChange() throws Exception {
    Files.setLastModifiedTime(coins, FileTime.from(Instant.parse("2020-02-29T10:00:00Z")));

    replace(coins);

    assertThat(coins).hasContent("new");
  }

  @Test
  void followsASymbolicLinkAndLeavesItALink() throws Exception {
    Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
    Path real = Files.move(coins, elsewhere.resolve("real.xlsx"));
    Path link = Files.createSymbolicLink(coins, real);

    Path backup = replace(link);

    assertThat(link).isSymbolicLink();
    assertThat(real).hasContent("new");
    assertThat(backup).hasContent("old").hasParent(elsewhere.toRealPath());
    assertThat(names(folder)).containsExactly("coins.xlsx", "elsewhere");
  }

  @Test
  void respectsTheMarkBesideALink() throws Exception {
    Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
    Path real = Files.move(coins, elsewhere.resolve("real.xlsx"));
    Files.createSymbolicLink(coins, real);
    file(folder, ".~lock.coins.xlsx#", "someone");

    assertThat(refused(coins).kind()).isEqualTo(Kind.IN_USE);
    assertThat(real).hasContent("old");
  }

  @ParameterizedTest
  @ValueSource(strings = {"rw-r-----", "rw-rw-rw-", "rwx------"})
  void keepsThePermissions(String permissions) throws Exception {
    assumeTrue(
        FileSystems.getDefault().supportedFileAttributeViews().contains("posix"),
        "this file system has no POSIX permissions");
    Files.setPosixFilePermissions(coins, PosixFilePermissions.fromString(permissions));

    Path backup = replace(coins);

    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(coins)))
        .isEqualTo(permissions);
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(backup)))
        .isEqualTo(permissions);
  }

  @Test
  void leavesAReadOnlyFileAlone() throws Exception {
    assertThat(coins.toFile().setWritable(false, false)).isTrue();

    WorkbookRefusal refusal = refused(coins);

    assertThat(refusal.kind()).isEqualTo(Kind.FILE);
    assertThat(refusal).hasMessageContaining("coins.xlsx is marked read-only");
    assertThat(coins).hasContent("old");
  }

  @Test
  void saysThatAFolderIsNoFile() {
    assertThat(refused(folder).kind()).isEqualTo(Kind.FILE);
    assertThat(refused(folder)).hasMessageContaining("is a folder");
  }

  @Test
  void saysThatAFileIsAbsent() {
    WorkbookRefusal refusal = refused(folder.resolve("absent.xlsx"));

    assertThat(refusal.kind()).isEqualTo(Kind.FILE);
    assertThat(refusal).hasMessageContaining("absent.xlsx is not there");
  }

  @Test
  void saysThatALinkLeadsNowhere() throws Exception {
    Path link = Files.createSymbolicLink(folder.resolve("link"), folder.resolve("gone"));

    assertThat(refused(link).kind()).isEqualTo(Kind.FILE);
  }

  @Test
  void passesOnWhatTheCheckRefuses() throws Exception {
    WorkbookRefusal wrong = new WorkbookRefusal(Kind.DAMAGED, "wrong");
    FileReplacement.Check check =
        written -> {
          throw wrong;
        };

    assertThatThrownBy(() -> save.replace(coins, asRead, writing("new"), check)).isSameAs(wrong);
    assertThat(coins).hasContent("old");
    assertThat(names(folder)).containsExactly("coins.xlsx");
  }

  @Test
  void leavesNothingBehindWhenTheWriterBreaksDown() throws Exception {
    FileReplacement.Writer writer =
        out -> {
          out.write(1);
          throw new IllegalStateException("a mistake");
        };

    assertThatThrownBy(() -> save.replace(coins, asRead, writer, expecting("")))
        .isInstanceOf(IllegalStateException.class);
    assertThat(coins).hasContent("old");
    assertThat(names(folder)).containsExactly("coins.xlsx");
  }

  @Test
  void sweepsWhatAKilledRunLeftAndNothingElse() throws Exception {
    long goneProcess = endedProcess();
    file(folder, ".fineweight-" + goneProcess + "-7.part", "half");
    file(folder, ".fineweight-" + ProcessHandle.current().pid() + "-999999.part", "half");
    file(folder, ".fineweight-notes.part", "the owner's");
    long living = ProcessHandle.current().parent().orElseThrow().pid();
    file(folder, ".fineweight-" + living + "-1.part", "being written");

    replace(coins);

    assertThat(names(folder))
        .containsExactlyInAnyOrder(
            ".fineweight-" + living + "-1.part",
            ".fineweight-notes.part",
            "coins.fineweight-1.xlsx",
            "coins.xlsx");
  }

  private static long endedProcess() throws Exception {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    Process process = new ProcessBuilder(java, "-version").redirectErrorStream(true).start();
    process.getInputStream().transferTo(OutputStream.nullOutputStream());
    process.waitFor();
    return process.pid();
  }
}

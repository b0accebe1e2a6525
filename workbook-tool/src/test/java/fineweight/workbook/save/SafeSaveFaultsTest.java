package fineweight.workbook.save;

import static fineweight.workbook.save.Folder.expecting;
import static fineweight.workbook.save.Folder.file;
import static fineweight.workbook.save.Folder.names;
import static fineweight.workbook.save.Folder.writing;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.WorkbookRefusal.Kind;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every step of a save fails once: the first, the second, and so on until a save gets through. */
class SafeSaveFaultsTest {
  @TempDir Path root;

  @ParameterizedTest
  @EnumSource
  void leavesTheOldOrTheNewFileWhole(FaultyDisk.Fault fault) throws Exception {
    Set<String> failed = new LinkedHashSet<>();
    int n = 0;
    FaultyDisk disk;
    do {
      n++;
      disk = new FaultyDisk(n, fault, "planned fault");
      Path folder = Files.createDirectory(root.resolve("n" + n));
      saveOn(disk, folder);
      if (disk.hasFailed()) {
        failed.add(disk.steps.get(n - 1));
      }
    } while (disk.hasFailed());

    assertThat(n).isGreaterThan(20);
    assertThat(failed)
        .contains(
            "open for reading",
            "read",
            "open for writing",
            "write",
            "write on",
            "close",
            "flush",
            "permissions",
            "rename",
            "list",
            "delete");
  }

  private static void saveOn(FaultyDisk disk, Path folder) throws Exception {
    Path coins = file(folder, "coins.xlsx", "old");
    for (int i = 1; i <= 5; i++) {
      file(folder, "coins.fineweight-" + i + ".xlsx", "earlier " + i);
    }
    FileFingerprint asRead = FileFingerprint.of(coins);

    WorkbookRefusal refusal =
        catchThrowableOfType(
            WorkbookRefusal.class,
            () -> new SafeSave(disk).replace(coins, asRead, writing("new"), expecting("new")));

    assertThat(coins).hasContent(refusal == null ? "new" : "old");
    if (refusal != null) {
      assertThat(refusal.kind()).isEqualTo(Kind.FILE);
      assertThat(refusal).hasMessageContaining("coins.xlsx").hasMessageNotContaining("Exception");
    }
    assertNextRunIsClean(coins, folder);
  }

  private static void assertNextRunIsClean(Path coins, Path folder) throws Exception {
    SafeSave.onDisk().replace(coins, FileFingerprint.of(coins), writing("next"), expecting("next"));

    assertThat(coins).hasContent("next");
    assertThat(names(folder)).hasSize(6).noneMatch(name -> name.endsWith(".part"));
  }

  @Test
  void aFailingVerificationKeepsTheOldFile() throws Exception {
    Path coins = file(root, "coins.xlsx", "old");

    WorkbookRefusal refusal =
        catchThrowableOfType(
            WorkbookRefusal.class,
            () ->
                SafeSave.onDisk()
                    .replace(coins, FileFingerprint.of(coins), writing("new"), expecting("other")));

    assertThat(refusal.kind()).isEqualTo(Kind.FILE);
    assertThat(coins).hasContent("old");
    assertThat(names(root)).containsExactly("coins.xlsx");
  }

  @Test
  void saysThatTheDiskIsFull() throws Exception {
    Path coins = file(root, "coins.xlsx", "old");
    FaultyDisk disk = new FaultyDisk(3, FaultyDisk.Fault.ONCE, "No space left on device");

    assertThat(
            catchThrowableOfType(
                WorkbookRefusal.class,
                () ->
                    new SafeSave(disk)
                        .replace(
                            coins, FileFingerprint.of(coins), writing("new"), expecting("new"))))
        .hasMessage(
            "coins.xlsx was left as it was, because the disk is full: make room and run again.");
    assertThat(disk.steps.get(2)).isEqualTo("write");
  }
}

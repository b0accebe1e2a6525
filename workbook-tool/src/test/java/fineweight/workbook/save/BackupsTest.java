package fineweight.workbook.save;

import static fineweight.workbook.save.Folder.expecting;
import static fineweight.workbook.save.Folder.file;
import static fineweight.workbook.save.Folder.names;
import static fineweight.workbook.save.Folder.writing;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fineweight.workbook.WorkbookRefusal;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BackupsTest {
  @TempDir Path folder;
  private final Backups backups = Backups.onDisk();
  private Path coins;

  @BeforeEach
  void threeStates() throws Exception {
    coins = file(folder, "coins.csv", "first");
    save("second");
    save("third");
  }

  private void save(String content) throws Exception {
    SafeSave.onDisk()
        .replace(coins, FileFingerprint.of(coins), writing(content), expecting(content));
  }

  @Test
  void listsTheNewestFirst() throws Exception {
    assertThat(backups.list(coins)).extracting(Backups.Backup::number).containsExactly(2, 1);
    assertThat(backups.list(coins).get(0).path()).hasContent("second");
    assertThat(backups.list(coins).get(0).size()).isEqualTo(6);
  }

  @Test
  void restoresAndKeepsThePresentStateFirst() throws Exception {
    Path kept = backups.restore(coins, 1);

    assertThat(coins).hasContent("first");
    assertThat(kept).hasContent("third").hasFileName("coins.fineweight-3.csv");
  }

  @Test
  void restoringCanBeTakenBack() throws Exception {
    backups.restore(coins, 1);
    backups.restore(coins, 3);

    assertThat(coins).hasContent("third");
  }

  @Test
  void restoresAFileThatIsGone() throws Exception {
    Files.delete(coins);

    backups.restore(coins, 2);

    assertThat(coins).hasContent("second");
    assertThat(names(folder)).noneMatch(name -> name.endsWith(".part"));
  }

  @Test
  void restoresTheOldestOfFive() throws Exception {
    for (int i = 4; i <= 6; i++) {
      save("state " + i);
    }
    assertThat(backups.list(coins)).hasSize(5);

    backups.restore(coins, 1);

    assertThat(coins).hasContent("first");
  }

  @Test
  void refusesANumberThatIsNotThere() {
    assertThatThrownBy(() -> backups.restore(coins, 9))
        .isInstanceOf(WorkbookRefusal.class)
        .hasMessageContaining("no backup number 9");
    assertThat(coins).hasContent("third");
  }

  @Test
  void knowsABackupByItsName() {
    assertThat(Backups.isBackup(Path.of("coins.fineweight-3.xlsx"))).isTrue();
    assertThat(Backups.isBackup(Path.of("coins.fineweight-12"))).isTrue();
    assertThat(Backups.isBackup(Path.of("coins.xlsx"))).isFalse();
    assertThat(Backups.isBackup(Path.of("fineweight-3.xlsx"))).isFalse();
  }
}

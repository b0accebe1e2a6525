package fineweight.workbook.save;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fineweight.workbook.WorkbookRefusal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FingerprintTakingTest {
  @TempDir Path folder;

  @Test
  void isTheOneThatIsTakenAtOnce() throws Exception {
    Path file = Folder.file(folder, "coins.xlsx", "seven dimes".repeat(99_999));
    assertThat(FileFingerprint.taking(file).get()).isEqualTo(FileFingerprint.of(file));
  }

  @Test
  void refusesAFileThatWasChangedMeanwhile() throws Exception {
    Path file = Folder.file(folder, "coins.xlsx", "seven dimes");
    FileTime before = Files.getLastModifiedTime(file);
    FingerprintTaking taking = FileFingerprint.taking(file);
    Files.writeString(file, "eight dimes");
    Files.setLastModifiedTime(file, FileTime.fromMillis(before.toMillis() + 5_000));
    assertThatThrownBy(taking::get)
        .isInstanceOf(WorkbookRefusal.class)
        .hasMessageContaining("coins.xlsx was changed by another program");
  }

  @Test
  void tellsThatTheFileIsGone() throws Exception {
    Path file = Folder.file(folder, "coins.xlsx", "seven dimes");
    FingerprintTaking taking = FileFingerprint.taking(file);
    Files.delete(file);
    assertThatThrownBy(taking::get).isInstanceOf(java.nio.file.NoSuchFileException.class);
  }
}

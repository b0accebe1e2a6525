package fineweight.tool;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.template.StarterWorkbook;
import fineweight.workbook.corpus.SharedFiles;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.apache.poi.hssf.record.crypto.Biff8EncryptionKey;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.crypt.Encryptor;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.ss.usermodel.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Encrypted workbooks are looked at with their password, and left as they are. */
class PasswordTest {
  private static final String WORD = "Two bits & a dime";

  @TempDir Path folder;

  @ParameterizedTest
  @EnumSource(
      value = EncryptionMode.class,
      names = {"agile", "standard"})
  void aDryRunReadsAnEncryptedPackage(EncryptionMode mode) throws Exception {
    Path file = encrypted(mode);
    byte[] before = Files.readAllBytes(file);
    CommandRun run = dryRun(file, WORD);
    assertThat(run.code()).as(run.err()).isZero();
    assertThat(run.out()).contains("Inventory!").doesNotContain(WORD);
    assertThat(run.err()).contains("is encrypted", "copy without a password");
    assertThat(file).hasBinaryContent(before);
    assertThat(names()).containsExactlyInAnyOrder("locked.xlsx", "word.txt");
  }

  @Test
  void aDryRunReadsAnEncryptedXls() throws Exception {
    Path file = folder.resolve("locked.xls");
    try (HSSFWorkbook workbook = new HSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      Row header = workbook.createSheet("Coins").createRow(0);
      header.createCell(0).setCellValue("Description");
      workbook.getSheetAt(0).createRow(1).createCell(0).setCellValue("1964-D quarter");
      Biff8EncryptionKey.setCurrentUserPassword(WORD);
      workbook.write(out);
    } finally {
      Biff8EncryptionKey.setCurrentUserPassword(null);
    }
    byte[] before = Files.readAllBytes(file);
    CommandRun run = dryRun(file, WORD);
    assertThat(run.code()).as(run.err()).isZero();
    assertThat(run.out()).contains("Coins!");
    assertThat(dryRun(file, "wrong").code()).isEqualTo(7);
    assertThat(CommandRun.of("refresh", file.toString(), "--spot", "XAG=30").code()).isEqualTo(7);
    assertThat(file).hasBinaryContent(before);
  }

  @Test
  void withoutTheWordNothingIsRead() throws Exception {
    Path file = encrypted(EncryptionMode.agile);
    CommandRun alone = CommandRun.of(file.toString());
    assertThat(alone.code()).isEqualTo(7);
    assertThat(alone.err()).contains("locked.xlsx is encrypted with a password");
    CommandRun wrong = dryRun(file, "two bits & a dime");
    assertThat(wrong.code()).isEqualTo(7);
    assertThat(wrong.err()).contains("does not open with that password").hasLineCount(1);
    CommandRun filled = CommandRun.of("refresh", file.toString(), "--spot", "XAG=30");
    assertThat(filled.code()).isEqualTo(7);
    CommandRun empty = dryRun(file, "");
    assertThat(empty.code()).isEqualTo(3);
    assertThat(empty.err()).contains("first line");
  }

  /** The passwords stand in the index of the corpus. */
  @ParameterizedTest
  @CsvSource({"encryptAES.xlsx,password", "xor-encryption-abc.xls,abc"})
  void foreignEncryptedFilesOpen(String name, String word) throws Exception {
    Path file =
        SharedFiles.copy(SharedFiles.folder("workbooks").resolve(name), folder.resolve(name));
    CommandRun run = dryRun(file, word);
    assertThat(run.code()).as("no inventory is in it").isEqualTo(9);
    assertThat(run.err()).contains("no row of headings");
  }

  private CommandRun dryRun(Path file, String word) throws IOException {
    Path words = Files.writeString(folder.resolve("word.txt"), word + "\n");
    return CommandRun.of(
        "refresh",
        file.toString(),
        "--dry-run",
        "--password-file",
        words.toString(),
        "--spot",
        "XAG=30");
  }

  private Stream<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(each -> each.getFileName().toString()).toList().stream();
    }
  }

  private Path encrypted(EncryptionMode mode) throws Exception {
    Path file = folder.resolve("locked.xlsx");
    ByteArrayOutputStream plain = new ByteArrayOutputStream();
    StarterWorkbook.withDemoRows().write(plain);
    Encryptor encryptor = new EncryptionInfo(mode).getEncryptor();
    encryptor.confirmPassword(WORD);
    try (POIFSFileSystem container = new POIFSFileSystem();
        OPCPackage parts = OPCPackage.open(new ByteArrayInputStream(plain.toByteArray()))) {
      try (OutputStream out = encryptor.getDataStream(container)) {
        parts.save(out);
      }
      try (OutputStream out = Files.newOutputStream(file)) {
        container.writeFilesystem(out);
      }
    }
    return file;
  }
}

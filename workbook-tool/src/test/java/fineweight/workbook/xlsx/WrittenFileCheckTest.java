package fineweight.workbook.xlsx;

import static fineweight.workbook.xlsx.Edits.column;
import static fineweight.workbook.xlsx.Edits.fill;
import static fineweight.workbook.xlsx.Edits.n;
import static fineweight.workbook.xlsx.Edits.number;
import static fineweight.workbook.xlsx.Edits.row;
import static fineweight.workbook.xlsx.Edits.text;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fineweight.workbook.WorkbookEdit;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.save.FileFingerprint;
import fineweight.workbook.save.FileReplacement;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.UnaryOperator;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the disk holds is compared with what was written, before it takes the file's place. */
class WrittenFileCheckTest {
  private static final String SHEET = "xl/worksheets/sheet1.xml";
  private static final String PICTURE = "xl/media/picture.bin";

  @TempDir Path folder;
  private Path file;

  /** Changes the written bytes before they are checked. */
  private record Harming(UnaryOperator<byte[]> harm) implements FileReplacement {
    @Override
    public Path replace(Path target, FileFingerprint asRead, Writer writer, Check check)
        throws WorkbookRefusal {
      try {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        writer.writeTo(out);
        Path written = target.resolveSibling("written");
        Files.write(written, harm.apply(out.toByteArray()));
        check.check(written);
        Files.copy(written, target, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        return written;
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  @BeforeEach
  void workbook() throws IOException {
    String rows = row(1, n("A1", "7")) + row(2, n("A2", "8")) + row(3, n("A3", "9"));
    file =
        new RawWorkbook()
            .sheet("Coins", "<sheetData>" + rows + "</sheetData>")
            .part(PICTURE, "a picture".getBytes(StandardCharsets.UTF_8))
            .write(folder.resolve("coins.xlsx"));
  }

  private static WorkbookEdit edit() {
    return fill("Coins", 2, column(1, "Metal", text("silver"), number("4.5")));
  }

  private void save(UnaryOperator<byte[]> harm) throws WorkbookRefusal, IOException {
    try (XlsxWorkbook workbook = XlsxWorkbook.open(file, new Harming(harm))) {
      workbook.save(edit());
    }
  }

  /** The same package with another content of one part; null leaves the part out. */
  private static UnaryOperator<byte[]> part(String name, UnaryOperator<String> other) {
    return bytes -> {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(bytes));
          OutputStream target = out;
          ZipOutputStream zip = new ZipOutputStream(target)) {
        for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
          byte[] content = in.readAllBytes();
          if (entry.getName().equals(name)) {
            String changed = other.apply(new String(content, StandardCharsets.UTF_8));
            content = changed == null ? null : changed.getBytes(StandardCharsets.UTF_8);
          }
          if (content != null) {
            zip.putNextEntry(new ZipEntry(entry.getName()));
            zip.write(content);
            zip.closeEntry();
          }
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
      return out.toByteArray();
    };
  }

  private static UnaryOperator<byte[]> replaced(String name, String from, String to) {
    return part(
        name,
        text -> {
          assertThat(text).contains(from);
          return text.replace(from, to);
        });
  }

  private void assertNoticed(UnaryOperator<byte[]> harm) throws IOException {
    byte[] before = Files.readAllBytes(file);
    assertThatThrownBy(() -> save(harm)).isInstanceOf(WorkbookRefusal.class);
    assertThat(Files.readAllBytes(file)).isEqualTo(before);
  }

  @Test
  void packedAnewWithTheSameContentItIsTheSame() throws Exception {
    save(part(SHEET, text -> text));
    assertThat(RawWorkbook.sheetOne(file)).contains("silver");
  }

  @Test
  void anythingElseIsNoticed() throws Exception {
    assertNoticed(replaced(SHEET, "silver", "copper"));
    assertNoticed(replaced(SHEET, "4.5", "4.6"));
    assertNoticed(replaced(SHEET, "<v>9</v>", "<v>6</v>"));
    assertNoticed(replaced(SHEET, "</worksheet>", "</worksheet><!-- -->"));
    assertNoticed(replaced(PICTURE, "picture", "PICTURE"));
    assertNoticed(part(PICTURE, text -> null));
    assertNoticed(part(SHEET, text -> null));
    assertNoticed(replaced("xl/workbook.xml", "Coins", "Boxes"));
  }

  @Test
  void aDamagedOrShortenedFileIsNoticed() throws Exception {
    assertNoticed(bytes -> java.util.Arrays.copyOf(bytes, bytes.length / 2));
    assertNoticed(bytes -> new byte[0]);
    assertNoticed(
        bytes -> {
          byte[] other = bytes.clone();
          other[other.length / 2] ^= 1;
          return other;
        });
  }
}

package fineweight.workbook.xlsx.zip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fineweight.workbook.xlsx.xml.DamageException;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PackageZipTest {
  @TempDir Path folder;

  private Path zip(String... namesAndContents) throws IOException {
    Path file = folder.resolve("a.zip");
    try (OutputStream out = Files.newOutputStream(file);
        ZipOutputStream zip = new ZipOutputStream(out)) {
      for (int i = 0; i < namesAndContents.length; i += 2) {
        zip.putNextEntry(new ZipEntry(namesAndContents[i]));
        zip.write(namesAndContents[i + 1].getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
      }
    }
    return file;
  }

  private void assertRefused(Path file, String words) {
    assertThatThrownBy(() -> PackageZip.open(file).close())
        .isInstanceOf(DamageException.class)
        .hasMessageContaining(words);
  }

  @Test
  void refusesDangerousNamesAndDoubles() throws IOException {
    assertRefused(zip("../a", "x"), "dangerous");
    assertRefused(zip("/a", "x"), "dangerous");
    assertRefused(zip("a/../../b", "x"), "dangerous");
    assertRefused(zip("C:a", "x"), "dangerous");
    assertRefused(zip("a.xml", "x", "A.XML", "y"), "twice");
  }

  @Test
  void refusesADamagedPart() throws IOException {
    Path file = zip("a.xml", "some content", "b.bin", "other content");
    byte[] bytes = Files.readAllBytes(file);
    bytes[36] ^= 1;
    Files.write(file, bytes);
    try (PackageZip zip = PackageZip.open(file)) {
      assertThatThrownBy(() -> zip.verify("a.xml"))
          .isInstanceOfAny(DamageException.class, java.util.zip.ZipException.class);
      zip.verify("B.BIN");
    }
  }

  @Test
  void refusesAPieceLongerThanAnyCell() throws IOException {
    Path file =
        zip("a.xml", "<a>" + " ".repeat(20 << 20) + "</a>", "b.xml", "<b/>".repeat(5 << 20));
    try (PackageZip zip = PackageZip.open(file)) {
      assertThatThrownBy(() -> zip.xml("a.xml").transferTo(OutputStream.nullOutputStream()))
          .isInstanceOf(DamageException.class)
          .hasMessageContaining("longer than any cell");
      assertThat(zip.xml("b.xml").transferTo(OutputStream.nullOutputStream())).isEqualTo(20 << 20);
    }
  }

  @Test
  void copiesReplacesAddsAndRemovesInOrder() throws Exception {
    Path file = zip("one", "1", "two", "2", "three", "3");
    Path fresh = folder.resolve("b.zip");
    for (int run = 0; run < 2; run++) {
      try (PackageZip zip = PackageZip.open(file);
          OutputStream out = Files.newOutputStream(fresh)) {
        PackageRewrite rewrite = new PackageRewrite(zip);
        rewrite.put("TWO", PartContent.of("zwei".getBytes(StandardCharsets.UTF_8)));
        rewrite.put("four", PartContent.of("4".getBytes(StandardCharsets.UTF_8)));
        rewrite.remove("one");
        rewrite.writeTo(out);
      }
    }
    try (PackageZip zip = PackageZip.open(fresh)) {
      assertThat(zip.parts()).containsExactly("two", "three", "four");
      ByteArrayOutputStream two = new ByteArrayOutputStream();
      zip.xml("two").transferTo(two);
      assertThat(two.toString(StandardCharsets.UTF_8)).isEqualTo("zwei");
    }
  }

  @Test
  void keepsTheOrderOfTheBytesWhateverTheDirectorySays() throws IOException {
    Path file = zip("one", "1", "two", "2");
    byte[] bytes = Files.readAllBytes(file);
    int directory = new String(bytes, StandardCharsets.ISO_8859_1).indexOf("PK\u0001\u0002");
    bytes[directory + 34] = 7;
    Files.write(file, bytes);
    try (PackageZip zip = PackageZip.open(file)) {
      assertThat(zip.parts()).containsExactly("one", "two");
    }
  }
}

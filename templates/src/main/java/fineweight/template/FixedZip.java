package fineweight.template;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDateTime;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** Packs a package again with one fixed time, so that equal content gives equal bytes. */
final class FixedZip {
  /** The first moment that a zip file can hold. */
  private static final LocalDateTime FIRST = LocalDateTime.of(1980, 1, 1, 0, 0);

  private FixedZip() {}

  static void copy(byte[] zip, OutputStream out) throws IOException {
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
      ZipOutputStream packed = new ZipOutputStream(out);
      for (ZipEntry each = in.getNextEntry(); each != null; each = in.getNextEntry()) {
        ZipEntry entry = new ZipEntry(each.getName());
        entry.setTimeLocal(FIRST);
        packed.putNextEntry(entry);
        in.transferTo(packed);
        packed.closeEntry();
      }
      packed.finish();
    }
  }
}

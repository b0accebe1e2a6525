package fineweight.template;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDateTime;
import java.util.Date;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Writes a new workbook that tells nothing of who made it and when, so that equal content gives
 * equal bytes.
 */
public final class FixedWorkbook {
  /** The properties need some moment; this one stands for none. */
  private static final Date NO_MOMENT = new Date(0);

  /** The first moment that a zip file can hold. */
  private static final LocalDateTime FIRST = LocalDateTime.of(1980, 1, 1, 0, 0);

  private FixedWorkbook() {}

  /**
   * Writes it as .xlsx; the stream stays open.
   *
   * @param title for its properties
   * @throws IOException if the stream cannot take it
   */
  public static void write(XSSFWorkbook workbook, String title, OutputStream out)
      throws IOException {
    describe(workbook.getProperties(), title);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    workbook.write(bytes);
    pack(bytes.toByteArray(), out);
  }

  private static void describe(POIXMLProperties properties, String title) {
    properties.getCoreProperties().setCreator("Fineweight");
    properties.getCoreProperties().setTitle(title);
    properties.getCoreProperties().setCreated(Optional.of(NO_MOMENT));
    properties.getCoreProperties().setModified(Optional.of(NO_MOMENT));
    properties.getExtendedProperties().getUnderlyingProperties().setApplication("Fineweight");
  }

  private static void pack(byte[] zip, OutputStream out) throws IOException {
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

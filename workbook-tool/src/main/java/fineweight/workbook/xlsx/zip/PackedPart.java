package fineweight.workbook.xlsx.zip;

import fineweight.workbook.WorkbookRefusal;
import java.io.IOException;
import java.io.InputStream;
import java.util.zip.CRC32;
import java.util.zip.CheckedOutputStream;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import org.apache.commons.io.output.UnsynchronizedByteArrayOutputStream;

/** The packed bytes of a part, with what its entry must say about them. */
final class PackedPart {
  private static final int BUFFER = 1 << 14;

  private final UnsynchronizedByteArrayOutputStream packed =
      UnsynchronizedByteArrayOutputStream.builder().setBufferSize(BUFFER).get();
  private final CRC32 checksum = new CRC32();
  private long size;

  private PackedPart() {}

  /** Packs on a second thread while the content is being made. */
  static PackedPart of(PartContent content, int level) throws IOException, WorkbookRefusal {
    PackedPart part = new PackedPart();
    Deflater deflater = new Deflater(level, true);
    try (DeflaterOutputStream target = new DeflaterOutputStream(part.packed, deflater, BUFFER);
        BackgroundStream background =
            new BackgroundStream(new CheckedOutputStream(target, part.checksum))) {
      content.writeTo(background);
    } finally {
      part.size = deflater.getBytesRead();
      deflater.end();
    }
    return part;
  }

  long size() {
    return size;
  }

  long packedSize() {
    return packed.size();
  }

  long checksum() {
    return checksum.getValue();
  }

  InputStream content() {
    return packed.toInputStream();
  }
}

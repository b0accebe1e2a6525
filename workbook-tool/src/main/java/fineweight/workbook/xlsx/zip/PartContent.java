package fineweight.workbook.xlsx.zip;

import fineweight.workbook.WorkbookRefusal;
import java.io.IOException;
import java.io.OutputStream;

/** The new content of a part. */
@FunctionalInterface
public interface PartContent {
  void writeTo(OutputStream out) throws IOException, WorkbookRefusal;

  static PartContent of(byte[] bytes) {
    return out -> out.write(bytes);
  }
}

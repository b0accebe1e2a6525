package fineweight.workbook.xlsx.zip;

import java.io.IOException;
import java.io.InputStream;

/** Reads the new content of a part on a thread of its own while it is made. */
@FunctionalInterface
public interface PartReader {
  /** What it throws makes the making fail. It need not read to the end. */
  void read(InputStream content) throws IOException;
}

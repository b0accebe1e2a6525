package fineweight.workbook.xls;

import fineweight.workbook.NamedCell;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Set;

/**
 * The edited workbook ready to be written, without POI's model of it, which is large.
 *
 * @param content the workbook's own stream
 * @param sheets names of all sheets, in order
 * @param names all defined names
 * @param removedSheets names of the sheets that were taken out
 */
record XlsCopy(
    XlsFile file,
    byte[] content,
    List<String> sheets,
    List<NamedCell> names,
    XlsChanges changes,
    Set<String> removedSheets) {

  void writeTo(OutputStream out) throws IOException {
    file.writeWith(content, out);
  }
}

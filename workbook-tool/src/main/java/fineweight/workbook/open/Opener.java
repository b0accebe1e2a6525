package fineweight.workbook.open;

import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookRefusal;
import java.nio.file.Path;

/** Opens a file of one kind, which its content has shown. */
@FunctionalInterface
public interface Opener {
  Workbook open(Path file) throws WorkbookRefusal;
}

package fineweight.workbook.xlsx;

import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.save.FileFingerprint;
import fineweight.workbook.save.FileReplacement;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Replaces without any of the care that the real one takes. */
final class PlainReplacement implements FileReplacement {
  int written;

  @Override
  public Path replace(Path target, FileFingerprint asRead, Writer writer, Check check)
      throws WorkbookRefusal {
    Path fresh = target.resolveSibling(target.getFileName() + ".new");
    Path backup = target.resolveSibling(target.getFileName() + ".old");
    try {
      try (OutputStream out = Files.newOutputStream(fresh)) {
        writer.writeTo(out);
      }
      check.check(fresh);
      Files.copy(target, backup, StandardCopyOption.REPLACE_EXISTING);
      Files.move(fresh, target, StandardCopyOption.REPLACE_EXISTING);
      written++;
      return backup;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

package fineweight.tool;

import fineweight.workbook.WorkbookRefusal;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Locale;

/** A file put where nothing was. */
final class NewFile {
  /** What is written. */
  @FunctionalInterface
  interface Content {
    void write(OutputStream out) throws IOException;
  }

  private NewFile() {}

  /**
   * @throws WorkbookRefusal if the file exists, its name is no workbook's, or it cannot be written
   */
  static void workbook(Path file, Content content) throws WorkbookRefusal {
    if (!file.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".xlsx")) {
      throw refusal(file + ": a new workbook needs a name that ends in .xlsx.");
    }
    write(file, content);
  }

  /**
   * @throws WorkbookRefusal if the file exists or cannot be written
   */
  static void write(Path file, Content content) throws WorkbookRefusal {
    try {
      Path folder = file.toAbsolutePath().getParent();
      if (folder != null) {
        Files.createDirectories(folder);
      }
      try (OutputStream out = Files.newOutputStream(file, StandardOpenOption.CREATE_NEW)) {
        content.write(out);
      }
    } catch (FileAlreadyExistsException taken) {
      throw refusal(file + " exists already and was left alone; choose another name.");
    } catch (IOException failed) {
      throw refusal(
          file
              + " cannot be written ("
              + failed.getClass().getSimpleName().replace("Exception", "")
              + "); choose a folder that you may write to.");
    }
  }

  private static WorkbookRefusal refusal(String sentence) {
    return new WorkbookRefusal(WorkbookRefusal.Kind.FILE, sentence);
  }
}

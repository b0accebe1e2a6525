package fineweight.workbook.save;

import fineweight.workbook.WorkbookRefusal;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;

/** The marks that office programs leave beside a file while they have it open. */
final class OwnerFiles {
  private OwnerFiles() {}

  /**
   * @throws WorkbookRefusal if such a mark lies beside the file
   */
  static void refuseIfPresent(Path file) throws WorkbookRefusal {
    String name = file.getFileName().toString();
    for (String mark : List.of("~$" + name, ".~lock." + name + "#")) {
      if (Files.exists(file.resolveSibling(mark), LinkOption.NOFOLLOW_LINKS)) {
        throw new WorkbookRefusal(
            WorkbookRefusal.Kind.IN_USE,
            ("%s is open in another program, which left the mark %s beside it: close it there and"
                    + " run again; if no program has it open, delete that mark.")
                .formatted(name, mark));
      }
    }
  }
}

package fineweight.workbook.corpus;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;

/** The test files that lie beside the checkout. */
public final class SharedFiles {
  private SharedFiles() {}

  /**
   * A folder of the corpus; the test that asks is skipped if it is not there, or fails where it
   * must be.
   */
  public static Path folder(String name) {
    String shared = System.getProperty("fineweight.shared", "../shared");
    Path folder = Path.of(shared, "corpus", name);
    String absent = "the corpus folder " + name + " is not on this machine";
    if (Boolean.getBoolean("fineweight.must.shared") && !Files.isDirectory(folder)) {
      throw new AssertionError(absent);
    }
    Assumptions.assumeTrue(Files.isDirectory(folder), absent);
    return folder;
  }

  /** A copy that may be written, whatever the original's permissions. */
  public static Path copy(Path file, Path copy) throws IOException {
    return Files.write(copy, Files.readAllBytes(file));
  }

  /** The files of a folder whose name ends so, by name. */
  public static List<Path> files(Path folder, String ending) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(each -> each.toString().endsWith(ending)).sorted().toList();
    }
  }
}

package fineweight.workbook.open;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Workbooks made by others, in a folder beside the checkout; tests skip where it is absent. */
public final class CorpusFiles {
  private CorpusFiles() {}

  /** A folder of the corpus, such as {@code hostile}. */
  public static Path folder(String name) {
    Path folder = Path.of(System.getProperty("fineweight.shared", "../shared"), "corpus", name);
    if (Boolean.getBoolean("fineweight.must.shared") && !Files.isDirectory(folder)) {
      throw new AssertionError("the corpus is not there: " + folder);
    }
    assumeTrue(Files.isDirectory(folder), () -> "the corpus is not there: " + folder);
    return folder;
  }

  /** The files of a folder with an ending, in the order of their names. */
  public static List<Path> all(String folder, String ending) throws IOException {
    try (Stream<Path> files = Files.list(folder(folder))) {
      return files.filter(file -> file.toString().endsWith(ending)).sorted().toList();
    }
  }

  /** A copy that a test may change. */
  public static Path copy(Path original, Path folder) throws IOException {
    // Not Files.copy: that would keep the mark that protects the original.
    return Files.write(
        folder.resolve(original.getFileName().toString()), Files.readAllBytes(original));
  }
}

package fineweight.workbook.corpus;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Copies of the corpus, each workbook with the planted sheet where that is possible. */
public final class PlantedCopies {
  /** Larger files would leave a short run with too few cases. */
  private static final long LARGEST = 60_000;

  private PlantedCopies() {}

  public static List<Path> in(Path folder) throws IOException {
    Files.createDirectories(folder);
    List<Path> copies = new ArrayList<>();
    for (String source : List.of("workbooks", "inventories")) {
      try (Stream<Path> files = Files.list(SharedFiles.folder(source))) {
        for (Path file : files.sorted().toList()) {
          if (isTable(file) && Files.size(file) < LARGEST) {
            copies.add(copy(file, folder.resolve(file.getFileName())));
          }
        }
      }
    }
    return copies;
  }

  private static boolean isTable(Path file) {
    String name = file.getFileName().toString();
    return !name.equals("INDEX.csv") && name.matches(".*\\.(xlsx|xls|csv|txt)");
  }

  private static Path copy(Path file, Path copy) throws IOException {
    if (file.toString().endsWith(".xlsx")) {
      try {
        Planting.plant(file, copy);
        return copy;
      } catch (IOException e) {
        // Encrypted or malformed: such a file is spoiled as it is.
        Files.deleteIfExists(copy);
      }
    }
    return SharedFiles.copy(file, copy);
  }
}

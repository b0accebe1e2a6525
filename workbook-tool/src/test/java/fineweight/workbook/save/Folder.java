package fineweight.workbook.save;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** What the tests of this package ask of a folder. */
final class Folder {
  private Folder() {}

  static Path file(Path folder, String name, String content) throws IOException {
    return Files.writeString(folder.resolve(name), content);
  }

  static List<String> names(Path folder) throws IOException {
    try (Stream<Path> entries = Files.list(folder)) {
      return entries.map(entry -> entry.getFileName().toString()).sorted().toList();
    }
  }

  static FileReplacement.Writer writing(String content) {
    return out -> out.write(content.getBytes(StandardCharsets.UTF_8));
  }

  static FileReplacement.Check expecting(String content) {
    return written -> {
      if (!Files.readString(written).equals(content)) {
        throw new IOException("not what was meant");
      }
    };
  }
}

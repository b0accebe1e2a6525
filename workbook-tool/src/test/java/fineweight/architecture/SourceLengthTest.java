package fineweight.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;

/** Files that nobody can oversee are told, and too long ones stop the build. */
class SourceLengthTest {
  private static final int LONG = 300;
  private static final int LONGEST = 350;
  private static final int MANY = 12;

  @Test
  void classesAreShort() throws IOException {
    Map<Path, Integer> lengths = new TreeMap<>();
    for (Path source : sources()) {
      lengths.put(source, Files.readAllLines(source).size());
    }
    List<String> tooLong = new ArrayList<>();
    lengths.forEach(
        (source, lines) -> {
          if (lines > LONG) {
            System.out.println("long: " + root().relativize(source) + ", " + lines + " lines");
          }
          if (lines > LONGEST && source.toString().contains("/src/main/")) {
            tooLong.add(source + ": " + lines);
          }
        });
    assertThat(lengths).hasSizeGreaterThan(100);
    assertThat(tooLong).isEmpty();
  }

  @Test
  void everyPackageSaysWhatItIsFor() throws IOException {
    Map<Path, Integer> sizes = new TreeMap<>();
    for (Path source : sources()) {
      if (source.toString().contains("/src/main/")) {
        sizes.merge(source.getParent(), 1, Integer::sum);
      }
    }
    List<Path> silent = new ArrayList<>();
    sizes.forEach(
        (folder, files) -> {
          if (!Files.exists(folder.resolve("package-info.java"))) {
            silent.add(folder);
          }
          if (files > MANY + 1) {
            System.out.println("large: " + root().relativize(folder) + ", " + files + " files");
          }
        });
    assertThat(silent).isEmpty();
  }

  private static Path root() {
    String root = System.getProperty("fineweight.root", "");
    Assumptions.assumeTrue(!root.isEmpty(), "the tests do not know where the sources are");
    return Path.of(root);
  }

  private static List<Path> sources() throws IOException {
    List<Path> sources = new ArrayList<>();
    for (String module : List.of("functions", "templates", "workbook-tool")) {
      try (Stream<Path> files = Files.walk(root().resolve(module).resolve("src"))) {
        files.filter(each -> each.toString().endsWith(".java")).forEach(sources::add);
      }
    }
    return sources;
  }
}

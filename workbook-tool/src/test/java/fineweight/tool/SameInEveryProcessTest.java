package fineweight.tool;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The order of unordered sets and of enumerations' hashes is drawn anew in every process, so only
 * several processes show whether a result hangs on it.
 */
class SameInEveryProcessTest {
  /** Names of coins that several countries struck alike. */
  private static final List<String> NAMES =
      List.of(
          "sovereign",
          "half sovereign",
          "florin",
          "crown",
          "peso",
          "2 francs",
          "gulden",
          "ducat",
          "krona",
          "2 kroner",
          "rupee",
          "shilling",
          "8 reales",
          "5 lire",
          "dubbeltje",
          "20 francs");

  @TempDir Path folder;

  @Test
  void aListIsFilledAlikeEveryTime() throws Exception {
    StringBuilder list = new StringBuilder("Description,Count\n");
    for (int year : new int[] {1887, 1911, 1937, 1941}) {
      NAMES.forEach(name -> list.append(year).append(' ').append(name).append(",1\n"));
    }
    Set<String> results = new HashSet<>();
    for (int run : IntStream.range(0, 4).toArray()) {
      Path file = Files.createDirectory(folder.resolve("run" + run)).resolve("coins.csv");
      Files.writeString(file, list);
      fill(file);
      results.add(Files.readString(file));
    }
    assertThat(results).hasSize(1);
    assertThat(results.iterator().next()).contains("1911 sovereign,1,").contains("gb-sovereign");
  }

  private static void fill(Path file) throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                "fineweight.tool.Main",
                "refresh",
                file.toString(),
                "--spot",
                "XAG=30",
                "--spot",
                "XAU=2500",
                "--spot-date",
                "2026-11-25",
                "--quiet")
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    assertThat(process.waitFor()).isZero();
  }
}

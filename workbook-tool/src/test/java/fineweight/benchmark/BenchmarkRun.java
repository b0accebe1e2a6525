package fineweight.benchmark;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Starts the benchmark on the tests' class path; its name keeps it out of the ordinary test run.
 * The table is written to {@code target/benchmark.md}. Fewer sizes with {@code
 * -Dfineweight.benchmark.rows=1000,10000}, other than five pairs with {@code
 * -Dfineweight.benchmark.pairs=3}, fewer lines of words than 100,000 with {@code
 * -Dfineweight.benchmark.descriptions=10000}.
 */
class BenchmarkRun {
  private static final int DESCRIPTIONS = 100_000;

  @TempDir Path folder;

  @Test
  void measure() throws Exception {
    List<Integer> sizes =
        Arrays.stream(
                System.getProperty("fineweight.benchmark.rows", "1000,10000,100000,500000")
                    .split(","))
            .map(Integer::valueOf)
            .toList();
    int pairs = Integer.getInteger("fineweight.benchmark.pairs", 5);
    boolean office = !Boolean.getBoolean("fineweight.benchmark.without.office");
    Path report = Path.of("target/benchmark.md");
    try (PrintStream out =
        new PrintStream(Files.newOutputStream(report), true, StandardCharsets.UTF_8)) {
      Benchmark benchmark = new Benchmark(folder, out, pairs);
      benchmark.run(sizes, office);
      benchmark.tell();
      benchmark.descriptions(Integer.getInteger("fineweight.benchmark.descriptions", DESCRIPTIONS));
      if (sizes.contains(10_000)) {
        benchmark.warm(10_000);
      }
      if (sizes.contains(100_000)) {
        benchmark.memory(100_000, 64);
        benchmark.memory(100_000, 128);
      }
      if (sizes.contains(500_000)) {
        benchmark.memory(500_000, 256);
      }
    }
    System.out.println(Files.readString(report));
  }
}

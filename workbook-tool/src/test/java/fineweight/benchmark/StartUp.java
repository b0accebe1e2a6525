package fineweight.benchmark;

import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * How long the command takes to start, as a ratio to a Java that does nothing. Each round runs
 * every candidate once, one after the other, so that what else the machine does falls on all of
 * them; the ratio is taken within a round, and the median of the rounds is told.
 *
 * <p>Words: the folder with {@code workbook-tool-*.jar} and {@code lib}, and the number of rounds.
 */
public final class StartUp {
  private static final int ROWS = 1_000;
  private static final String MAIN = "fineweight.tool.Main";
  private static final List<String> OPTIONS =
      List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xmn24m");

  private final Path folder;
  private final String classPath;
  private final Path inventory;
  private final Path copy;

  private StartUp(Path jars, Path folder) throws IOException {
    this.folder = folder;
    try (Stream<Path> own = Files.list(jars);
        Stream<Path> libraries = Files.list(jars.resolve("lib"))) {
      classPath =
          Stream.concat(own, libraries)
              .filter(each -> each.toString().endsWith(".jar"))
              .filter(each -> !each.toString().matches(".*-(sources|javadoc|tests)\\.jar"))
              .map(Path::toString)
              .sorted()
              .collect(Collectors.joining(System.getProperty("path.separator")));
    }
    inventory = InventoryFile.write(folder.resolve("inventory.xlsx"), ROWS);
    copy = folder.resolve("copy.xlsx");
  }

  public static void main(String[] words) throws Exception {
    Path jars = Path.of(words[0]).toAbsolutePath();
    int rounds = Integer.parseInt(words[1]);
    new StartUp(jars, Files.createTempDirectory("start-up")).measure(rounds, System.out);
  }

  private void measure(int rounds, PrintStream told) throws IOException, InterruptedException {
    Path empty = folder.resolve("Nothing.java");
    Files.writeString(empty, "public class Nothing { public static void main(String[] w) {} }");
    run(List.of(java("javac"), "-d", folder.toString(), empty.toString()));
    Path archive = folder.resolve("classes.jsa");
    Files.copy(inventory, copy, StandardCopyOption.REPLACE_EXISTING);
    run(command(List.of("-XX:ArchiveClassesAtExit=" + archive), refresh()));
    Map<String, List<String>> candidates = new LinkedHashMap<>();
    candidates.put(
        "a Java that does nothing",
        Stream.concat(
                Stream.of(java("java")),
                Stream.concat(OPTIONS.stream(), Stream.of("-cp", folder.toString(), "Nothing")))
            .toList());
    Map<String, String> sharing =
        Map.of(
            "no sharing", "-Xshare:off",
            "Java's classes shared", "-Xshare:auto",
            "the program's too", "-XX:SharedArchiveFile=" + archive);
    for (String way : List.of("no sharing", "Java's classes shared", "the program's too")) {
      candidates.put("`--help`, " + way, command(List.of(sharing.get(way)), List.of("--help")));
      candidates.put(
          "`refresh` of 1,000 rows, " + way, command(List.of(sharing.get(way)), refresh()));
    }
    Map<String, double[]> ratios = new LinkedHashMap<>();
    for (int round = -1; round < rounds; round++) {
      double nothing = 0;
      for (Map.Entry<String, List<String>> each : candidates.entrySet()) {
        Files.copy(inventory, copy, StandardCopyOption.REPLACE_EXISTING);
        double nanos = run(each.getValue());
        nothing = nothing == 0 ? nanos : nothing;
        // The first round warms the disk's memory.
        if (round >= 0) {
          ratios.computeIfAbsent(each.getKey(), key -> new double[rounds])[round] = nanos / nothing;
        }
      }
    }
    told.println("| Run | median | least | most |\n|---|---:|---:|---:|");
    ratios.forEach((name, all) -> told.println(line(name, all)));
  }

  private static String line(String name, double[] all) {
    double[] sorted = all.clone();
    Arrays.sort(sorted);
    return "| %s | %.1f | %.1f | %.1f |"
        .formatted(name, sorted[sorted.length / 2], sorted[0], sorted[sorted.length - 1]);
  }

  private List<String> refresh() {
    return List.of("refresh", copy.toString(), "--spot", "XAG=30.00", "--spot", "XAU=2500.00");
  }

  private List<String> command(List<String> more, List<String> words) {
    List<String> command = new ArrayList<>(List.of(java("java")));
    command.addAll(OPTIONS);
    command.addAll(more);
    command.addAll(List.of("-Xlog:cds=off", "-Xlog:cds+dynamic=off", "-cp", classPath, MAIN));
    command.addAll(words);
    return command;
  }

  private static String java(String tool) {
    return Path.of(System.getProperty("java.home"), "bin", tool).toString();
  }

  private long run(List<String> command) throws InterruptedException {
    try {
      Path log = folder.resolve("log.txt");
      long began = System.nanoTime();
      Process process =
          new ProcessBuilder(command)
              .redirectErrorStream(true)
              .redirectOutput(log.toFile())
              .start();
      int code = process.waitFor();
      long took = System.nanoTime() - began;
      if (code != 0) {
        throw new IllegalStateException(command + "\n" + Files.readString(log));
      }
      return took;
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }
}

package fineweight.workbook.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.workbook.corpus.PlantedCopies;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A short slice of random spoiling; longer with {@code -Dfineweight.fuzz.seconds=1800}, from
 * another start with {@code -Dfineweight.fuzz.seed=N}. A find is written to {@code target/finds}.
 */
class FuzzTest {
  private static final int HANG_SECONDS = 20;

  @TempDir Path folder;

  @Test
  void spoiledFilesAreRefusedOrFilledCleanly() throws Exception {
    long seconds = Long.getLong("fineweight.fuzz.seconds", 15);
    long seed = Long.getLong("fineweight.fuzz.seed", 20_261_125);
    List<Path> bases = PlantedCopies.in(folder.resolve("bases"));
    Map<FuzzCase.Ending, Integer> endings = new EnumMap<>(FuzzCase.Ending.class);
    List<String> finds = new ArrayList<>();
    long end = System.nanoTime() + seconds * 1_000_000_000L;
    int number = 0;
    while (System.nanoTime() < end && finds.size() < 40) {
      Path base = bases.get(number % bases.size());
      byte[] spoiled = new Spoiler(seed + number).spoil(Files.readAllBytes(base));
      String name = number + "-" + base.getFileName();
      try {
        endings.merge(attempt(name, spoiled), 1, Integer::sum);
      } catch (ExecutionException | TimeoutException find) {
        finds.add(keep(seed, name, spoiled, find));
      }
      number++;
    }
    System.out.printf(
        "fuzz: seed %d, %d cases, %s, %d finds%n", seed, number, endings, finds.size());
    finds.forEach(each -> System.out.println("  FIND " + each));
    assertThat(finds).isEmpty();
    assertThat(endings).containsKeys(FuzzCase.Ending.REFUSED, FuzzCase.Ending.FILLED);
  }

  /** A file whose name begins with "filled" is legal and must be filled; others may be refused. */
  @Test
  void formerFindsStaySettled() throws Exception {
    for (Path find : formerFinds()) {
      String name = find.getFileName().toString();
      FuzzCase.Ending ending = attempt(name, Files.readAllBytes(find));
      if (name.startsWith("filled-")) {
        assertThat(ending).as(name).isEqualTo(FuzzCase.Ending.FILLED);
      }
    }
  }

  private static List<Path> formerFinds() throws IOException {
    Path finds = Path.of("src/test/resources/finds");
    if (!Files.isDirectory(finds)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(finds)) {
      return files.sorted().toList();
    }
  }

  private FuzzCase.Ending attempt(String name, byte[] spoiled)
      throws IOException, InterruptedException, ExecutionException, TimeoutException {
    Path place = Files.createDirectories(folder.resolve("case"));
    Path file = Files.write(place.resolve(name), spoiled);
    ExecutorService thread = Executors.newSingleThreadExecutor();
    try {
      Future<FuzzCase.Ending> ending = thread.submit(() -> new FuzzCase(file).run());
      return ending.get(HANG_SECONDS, TimeUnit.SECONDS);
    } finally {
      thread.shutdownNow();
      delete(place);
    }
  }

  private static String keep(long seed, String name, byte[] spoiled, Exception find)
      throws IOException {
    Path finds = Files.createDirectories(Path.of("target/finds"));
    Files.write(finds.resolve(seed + "-" + name), spoiled);
    Throwable cause = find.getCause() == null ? find : find.getCause();
    StackTraceElement[] trace = cause.getStackTrace();
    String where = trace.length == 0 ? "" : " at " + trace[0];
    String words = String.valueOf(cause);
    return name + ": " + words.substring(0, Math.min(300, words.length())) + where;
  }

  private static void delete(Path place) throws IOException {
    try (Stream<Path> files = Files.walk(place)) {
      for (Path each : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(each);
      }
    }
  }
}

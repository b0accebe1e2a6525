package fineweight.benchmark;

import fineweight.workbook.office.Office;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/**
 * Measures filling against the floor, against Apache POI and against an office, always in pairs one
 * after the other, and reports the median of the pairs' ratios.
 */
final class Benchmark {
  private final Path folder;
  private final PrintStream out;
  private final int pairs;
  private final PackedProgram program;
  private final List<String> notes = new ArrayList<>();

  Benchmark(Path folder, PrintStream out, int pairs) throws IOException, InterruptedException {
    this.folder = folder;
    this.out = out;
    this.pairs = pairs;
    program = PackedProgram.in(folder);
  }

  void run(List<Integer> sizes, boolean office) throws Exception {
    out.println(
        "| rows | way | wall ms | CPU ms | peak MB | against the engine, wall | CPU | peak |");
    out.println("|---:|---|---:|---:|---:|---:|---:|---:|");
    for (int rows : sizes) {
      Path source = InventoryFile.write(folder.resolve("source-" + rows + ".xlsx"), rows);
      compareAll(rows, source, office);
      Files.delete(source);
    }
  }

  private void compareAll(int rows, Path source, boolean office) throws Exception {
    int times = rows == 10_000 || rows == 100_000 ? pairs : Math.min(pairs, 2);
    Way engine = file -> Measurement.of(program.quick("-Xmx512m"), "engine", file, rows, 1);
    compare(
        rows,
        "floor",
        source,
        times,
        engine,
        file -> Measurement.of(program.plain("-Xmx512m"), "floor", file, rows, 1));
    compare(
        rows,
        "splice alone",
        source,
        times,
        engine,
        file -> Measurement.of(program.quick("-Xmx512m"), "splice", file, rows, 1));
    compareSplice(rows, source, times);
    if (rows <= 100_000) {
      compare(
          rows,
          "Apache POI",
          source,
          times,
          engine,
          file -> Measurement.of(program.plain("-Xmx8g"), "poi", file, rows, 1));
    }
    if (office) {
      compareOffice(rows, source, rows > 100_000 ? 1 : times, engine);
    }
  }

  /** The gate: what the copying alone costs against the floor. */
  private void compareSplice(int rows, Path source, int times) throws Exception {
    List<Double> walls = new ArrayList<>();
    List<Double> cpus = new ArrayList<>();
    for (int i = 0; i < times; i++) {
      Measurement splice =
          Measurement.of(program.quick("-Xmx512m"), "splice", fresh(source), rows, 1);
      Measurement floor =
          Measurement.of(program.plain("-Xmx512m"), "floor", fresh(source), rows, 1);
      walls.add(splice.wall() / floor.wall());
      cpus.add(splice.cpu() / floor.cpu());
    }
    notes.add(
        String.format(
            Locale.ROOT,
            "%,d rows: splice alone %.2f x the floor in wall time, %.2f x in CPU time.",
            rows,
            median(walls),
            median(cpus)));
  }

  /** What does not fit the table. */
  void tell() {
    notes.forEach(note -> out.printf("%n- %s%n", note));
  }

  private void compareOffice(int rows, Path source, int times, Way engine) throws Exception {
    Office office = Office.onThisMachine();
    Path target = Files.createDirectories(folder.resolve("office"));
    Path lookUps =
        InventoryFile.writeWithLookUps(folder.resolve("look-ups-" + rows + ".xlsx"), rows);
    compare(
        rows,
        "office, file as it is",
        source,
        times,
        engine,
        file -> Measurement.watching(() -> office.saveAgain(file, target)));
    compare(
        rows,
        "office, look-ups",
        source,
        times,
        engine,
        file -> Measurement.watching(() -> office.saveAgain(lookUps, target)));
    Files.delete(lookUps);
  }

  /** One way to do the work. */
  private interface Way {
    Measurement run(Path file) throws Exception;
  }

  private void compare(int rows, String name, Path source, int times, Way engine, Way other)
      throws Exception {
    List<Measurement> ours = new ArrayList<>();
    List<Measurement> theirs = new ArrayList<>();
    for (int i = 0; i < times; i++) {
      ours.add(engine.run(fresh(source)));
      theirs.add(other.run(fresh(source)));
    }
    row(rows, "engine", ours, "", "", "");
    row(
        rows,
        name,
        theirs,
        ratio(ours, theirs, Measurement::wall),
        ratio(ours, theirs, Measurement::cpu),
        ratio(ours, theirs, Measurement::peak));
  }

  private void row(
      int rows, String name, List<Measurement> runs, String wall, String cpu, String peak) {
    out.printf(
        Locale.ROOT,
        "| %,d | %s | %,.0f | %,.0f | %,.0f | %s | %s | %s |%n",
        rows,
        name,
        median(runs.stream().map(Measurement::wall).toList()),
        median(runs.stream().map(Measurement::cpu).toList()),
        median(runs.stream().map(each -> (double) each.peak()).toList()),
        wall,
        cpu,
        peak);
  }

  private static String ratio(
      List<Measurement> ours, List<Measurement> theirs, ToDoubleFunction<Measurement> figure) {
    List<Double> ratios = new ArrayList<>();
    for (int i = 0; i < ours.size(); i++) {
      ratios.add(figure.applyAsDouble(theirs.get(i)) / figure.applyAsDouble(ours.get(i)));
    }
    return String.format(Locale.ROOT, "%.2f", median(ratios));
  }

  /** Splice against floor without the start of a process: laps of warm ones, in pairs. */
  void warm(int rows) throws IOException, InterruptedException {
    Path source = InventoryFile.write(folder.resolve("warm.xlsx"), rows);
    List<Double> ratios = new ArrayList<>();
    List<Double> laps = new ArrayList<>();
    for (int i = 0; i < pairs; i++) {
      double splice = warmLap("splice", fresh(source), rows);
      ratios.add(splice / warmLap("floor", fresh(source), rows));
      laps.add(splice);
    }
    out.printf(
        Locale.ROOT,
        "%n%,d rows, warm: splice alone %.0f ms, %.2f x the floor.%n",
        rows,
        median(laps),
        median(ratios));
  }

  private double warmLap(String kind, Path file, int rows)
      throws IOException, InterruptedException {
    List<Double> laps = Measurement.of(program.plain("-Xmx512m"), kind, file, rows, 12).laps();
    return median(laps.subList(7, laps.size()));
  }

  /** Lines of words: how many a second are read and valued, alone and in the whole job. */
  void descriptions(int rows) throws IOException, InterruptedException {
    Path source = DescriptionList.write(folder.resolve("descriptions.csv"), rows);
    for (String kind : List.of("appraise", "refresh")) {
      Measurement run = Measurement.of(program.quick("-Xmx1g"), kind, fresh(source), rows, 1);
      double lap = run.laps().get(0);
      out.printf(
          Locale.ROOT,
          "%n%,d descriptions, %s: %,.0f ms, %,.0f rows per second, CPU %,.0f ms, peak %d MB.%n",
          rows,
          kind.equals("appraise") ? "read and valued" : "whole job on a text table",
          lap,
          rows * 1000.0 / lap,
          run.cpu(),
          run.peak());
    }
    Files.delete(source);
  }

  /** Whether the engine does with so little memory. */
  void memory(int rows, int megabytes) throws IOException, InterruptedException {
    Path file = fresh(InventoryFile.write(folder.resolve("memory.xlsx"), rows));
    String answer;
    try {
      List<String> java = program.quick("-Xmx" + megabytes + "m");
      Measurement run = Measurement.of(java, "engine", file, rows, 1);
      answer = String.format(Locale.ROOT, "done in %,.0f ms, peak %d MB", run.wall(), run.peak());
    } catch (IOException e) {
      answer = "not enough: " + e.getMessage().lines().skip(0).findFirst().orElse("");
    }
    out.printf(Locale.ROOT, "%n%,d rows within -Xmx%dm: %s.%n", rows, megabytes, answer);
  }

  private Path fresh(Path source) throws IOException {
    Path place = folder.resolve("run");
    if (Files.isDirectory(place)) {
      try (var files = Files.list(place)) {
        for (Path each : files.toList()) {
          Files.delete(each);
        }
      }
    }
    return Files.copy(source, Files.createDirectories(place).resolve("inventory.xlsx"));
  }

  private static double median(List<Double> values) {
    List<Double> sorted = values.stream().sorted().toList();
    int middle = sorted.size() / 2;
    return sorted.size() % 2 == 1
        ? sorted.get(middle)
        : (sorted.get(middle - 1) + sorted.get(middle)) / 2;
  }
}

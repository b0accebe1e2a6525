package fineweight.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * What one run took.
 *
 * @param wall milliseconds from start to end of the process
 * @param cpu milliseconds of all its threads
 * @param peak largest resident memory in MB
 * @param laps milliseconds of the work alone, in order
 */
record Measurement(double wall, double cpu, long peak, List<Double> laps) {
  /**
   * Runs a contender in a process of its own.
   *
   * @param java the program and its options
   */
  static Measurement of(List<String> java, String kind, Path file, int rows, int times)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(java);
    command.addAll(
        List.of(
            "fineweight.benchmark.Contender",
            kind,
            file.toString(),
            String.valueOf(rows),
            String.valueOf(times)));
    Path output = Files.createTempFile("contender", ".txt");
    long start = System.nanoTime();
    Process process =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(output.toFile())
            .start();
    if (process.waitFor() != 0) {
      throw new IOException(kind + " " + rows + ": " + Files.readString(output));
    }
    double wall = (System.nanoTime() - start) / 1_000_000.0;
    List<Double> laps = new ArrayList<>();
    double cpu = 0;
    long peak = 0;
    for (String line : Files.readAllLines(output)) {
      String value = line.substring(line.indexOf(' ') + 1);
      if (line.startsWith("lap ")) {
        laps.add(Double.valueOf(value));
      } else if (line.startsWith("cpu ")) {
        cpu = Double.parseDouble(value);
      } else if (line.startsWith("peak ")) {
        peak = Long.parseLong(value);
      }
    }
    Files.delete(output);
    return new Measurement(wall, cpu, peak, laps);
  }

  /** Runs something that starts processes of its own and looks at them from outside. */
  static Measurement watching(Job job) throws Exception {
    Watch watch = new Watch();
    Thread thread = new Thread(watch, "watch");
    thread.start();
    long start = System.nanoTime();
    job.run();
    double wall = (System.nanoTime() - start) / 1_000_000.0;
    watch.end();
    thread.join();
    return new Measurement(wall, watch.cpu, watch.peak, List.of());
  }

  /** Largest resident memory of a process so far, in MB; 0 where the system does not say. */
  static long peak(long process) throws IOException {
    Path status = Path.of("/proc/" + process + "/status");
    if (!Files.isReadable(status)) {
      return 0;
    }
    for (String line : Files.readAllLines(status)) {
      if (line.startsWith("VmHWM:")) {
        return Long.parseLong(line.replaceAll("\\D", "")) / 1024;
      }
    }
    return 0;
  }

  /** Something to be measured. */
  interface Job {
    void run() throws Exception;
  }

  /** Asks the system every few milliseconds about the children of this process. */
  private static final class Watch implements Runnable {
    private volatile boolean ended;
    private final java.util.Map<Long, Double> cpus = new java.util.HashMap<>();
    private double cpu;
    private long peak;

    void end() {
      ended = true;
    }

    @Override
    public void run() {
      while (!ended) {
        ProcessHandle.current().descendants().forEach(this::look);
        try {
          TimeUnit.MILLISECONDS.sleep(20);
        } catch (InterruptedException e) {
          Thread.currentThread().interrupt();
          return;
        }
      }
      cpu = cpus.values().stream().mapToDouble(Double::doubleValue).sum();
    }

    private void look(ProcessHandle process) {
      process
          .info()
          .totalCpuDuration()
          .ifPresent(time -> cpus.put(process.pid(), (double) time.toMillis()));
      try {
        peak = Math.max(peak, Measurement.peak(process.pid()));
      } catch (IOException ended) {
        // A process that ended between two looks has nothing more to say.
        return;
      }
    }
  }
}

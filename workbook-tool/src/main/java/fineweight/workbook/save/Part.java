package fineweight.workbook.save;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A file in the making, beside the one whose place it shall take. Its name tells the process that
 * makes it, so that a later run knows one that a killed process left behind.
 */
final class Part implements AutoCloseable {
  private static final Pattern NAME = Pattern.compile("\\.fineweight-(\\d{1,18})-\\d+\\.part");
  private static final Duration LONGEST_SAVE = Duration.ofDays(1);
  private static final Duration CLOCK_TOLERANCE = Duration.ofSeconds(5);
  private static final AtomicLong COUNTER = new AtomicLong();
  private static final Set<Path> IN_THE_MAKING = ConcurrentHashMap.newKeySet();

  private final Disk disk;
  private final Path path;

  private Part(Disk disk, Path path) {
    this.disk = disk;
    this.path = path;
  }

  static Part in(Path folder, Disk disk) {
    String name =
        ".fineweight-%d-%d.part"
            .formatted(ProcessHandle.current().pid(), COUNTER.incrementAndGet());
    Path path = folder.resolve(name).toAbsolutePath();
    IN_THE_MAKING.add(path);
    return new Part(disk, path);
  }

  Path path() {
    return path;
  }

  @Override
  public void close() {
    try {
      disk.delete(path);
    } catch (IOException e) {
      // The next run sweeps it; the outcome of this one is decided already.
      return;
    } finally {
      IN_THE_MAKING.remove(path);
    }
  }

  /** Deletes the parts in a folder that nobody works on any more. */
  static void sweep(Path folder, Disk disk) throws IOException {
    for (Path entry : disk.list(folder)) {
      Matcher name = NAME.matcher(entry.getFileName().toString());
      if (name.matches()) {
        sweep(entry.toAbsolutePath(), Long.parseLong(name.group(1)), disk);
      }
    }
  }

  private static void sweep(Path part, long maker, Disk disk) {
    try {
      if (isStale(part, maker)) {
        disk.delete(part);
      }
    } catch (IOException e) {
      // Someone else's, or gone meanwhile: no reason not to save.
      return;
    }
  }

  private static boolean isStale(Path part, long pid) throws IOException {
    if (pid == ProcessHandle.current().pid()) {
      return !IN_THE_MAKING.contains(part);
    }
    Optional<ProcessHandle> maker = ProcessHandle.of(pid);
    if (maker.isEmpty()) {
      return true;
    }
    Instant written = Files.getLastModifiedTime(part).toInstant();
    // A process that began after the last write has only inherited the number.
    Instant certainlyBefore = written.plus(CLOCK_TOLERANCE);
    return maker.get().info().startInstant().map(certainlyBefore::isBefore).orElse(false)
        || written.isBefore(Instant.now().minus(LONGEST_SAVE));
  }
}

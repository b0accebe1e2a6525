package fineweight.workbook.save;

import java.io.FilterInputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The real disk, on which one step, counted from 1, fails. */
final class FaultyDisk implements Disk {
  /** How a step fails. */
  enum Fault {
    ONCE,
    /** And every later step too, as on a disk that was pulled out. */
    FROM_THEN_ON
  }

  private final Disk disk = new RealDisk();
  private final int failing;
  private final Fault fault;
  private final String reason;
  final List<String> steps = new ArrayList<>();

  FaultyDisk(int failing, Fault fault, String reason) {
    this.failing = failing;
    this.fault = fault;
    this.reason = reason;
  }

  boolean hasFailed() {
    return steps.size() >= failing;
  }

  private void step(String name) throws IOException {
    steps.add(name);
    if (steps.size() == failing || (steps.size() > failing && fault == Fault.FROM_THEN_ON)) {
      throw new IOException(reason);
    }
  }

  @Override
  public InputStream read(Path file) throws IOException {
    step("open for reading");
    return new FilterInputStream(disk.read(file)) {
      @Override
      public int read(byte[] bytes, int offset, int length) throws IOException {
        step("read");
        return super.read(bytes, offset, length);
      }
    };
  }

  @Override
  public OutputStream write(Path file) throws IOException {
    step("open for writing");
    return new FilterOutputStream(disk.write(file)) {
      @Override
      public void write(byte[] bytes, int offset, int length) throws IOException {
        step("write");
        // Half of it arrives, as on a disk that fills up.
        out.write(bytes, offset, length / 2);
        step("write on");
        out.write(bytes, offset + length / 2, length - length / 2);
      }

      @Override
      public void close() throws IOException {
        out.close();
        step("close");
      }
    };
  }

  @Override
  public void flush(Path fileOrFolder) throws IOException {
    step("flush");
    disk.flush(fileOrFolder);
  }

  @Override
  public void copyPermissions(Path from, Path to) throws IOException {
    step("permissions");
    disk.copyPermissions(from, to);
  }

  @Override
  public void rename(Path from, Path to) throws IOException {
    step("rename");
    disk.rename(from, to);
  }

  @Override
  public void delete(Path file) throws IOException {
    step("delete");
    disk.delete(file);
  }

  @Override
  public List<Path> list(Path folder) throws IOException {
    step("list");
    return disk.list(folder);
  }
}

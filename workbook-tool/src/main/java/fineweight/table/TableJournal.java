package fineweight.table;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What was typed, line by line in a file beside the workbook, each line on the disk before the
 * answer is given. A line that a crash cut off is dropped when the journal is taken up again: its
 * piece had not been answered.
 */
public final class TableJournal implements Closeable {
  private static final String SUFFIX = ".table-journal";

  private final Path file;
  private final FileChannel channel;
  private final List<Entry> entries = new ArrayList<>();

  /** What an entry does. */
  public enum Kind {
    LOT,
    COST,
    DAY,
    LIST,
    ROWS,
    SHEET,
    ADD,
    CORRECT,
    REMOVE
  }

  /**
   * One line.
   *
   * @param number of the piece, from 1; 0 for what is said of the whole lot
   * @param words as typed, without line breaks
   */
  public record Entry(Kind kind, int number, String words) {
    public Entry {
      words = words.replaceAll("\\p{Cntrl}", " ").strip();
    }

    private String line() {
      return kind.name().toLowerCase(Locale.ROOT) + "\t" + number + "\t" + words + "\n";
    }

    private static Entry of(String line) throws IOException {
      String[] parts = line.split("\t", 3);
      try {
        return new Entry(
            Kind.valueOf(parts[0].toUpperCase(Locale.ROOT)), Integer.parseInt(parts[1]), parts[2]);
      } catch (IllegalArgumentException | ArrayIndexOutOfBoundsException foreign) {
        throw new IOException("a line of it is not ours: " + line, foreign);
      }
    }
  }

  private TableJournal(Path file, FileChannel channel) {
    this.file = file;
    this.channel = channel;
  }

  /** The journal that belongs to a workbook. */
  public static Path beside(Path workbook) {
    return workbook.toAbsolutePath().resolveSibling(workbook.getFileName() + SUFFIX);
  }

  /**
   * Opens a journal, or begins one.
   *
   * @throws IOException if it cannot be read or written, is not ours, or another table has it open
   */
  public static TableJournal open(Path file) throws IOException {
    FileChannel channel =
        FileChannel.open(
            file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
    TableJournal journal = new TableJournal(file, channel);
    try {
      journal.lock();
      journal.readWholeLines();
      return journal;
    } catch (IOException failed) {
      channel.close();
      throw failed;
    }
  }

  private void lock() throws IOException {
    try {
      FileLock lock = channel.tryLock();
      if (lock != null) {
        return;
      }
    } catch (OverlappingFileLockException here) {
      throw new IOException("another table has it open", here);
    }
    throw new IOException("another table has it open");
  }

  private void readWholeLines() throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    int whole = bytes.length;
    while (whole > 0 && bytes[whole - 1] != '\n') {
      whole--;
    }
    String text = new String(bytes, 0, whole, StandardCharsets.UTF_8);
    for (String line : text.split("\n")) {
      if (!line.isEmpty()) {
        entries.add(Entry.of(line));
      }
    }
    channel.truncate(whole);
    channel.position(whole);
  }

  /** All entries so far, the oldest first. */
  public List<Entry> entries() {
    return List.copyOf(entries);
  }

  /** Adds a line; it is on the disk when this returns. */
  public void append(Entry entry) throws IOException {
    ByteBuffer bytes = ByteBuffer.wrap(entry.line().getBytes(StandardCharsets.UTF_8));
    while (bytes.hasRemaining()) {
      channel.write(bytes);
    }
    channel.force(true);
    entries.add(entry);
  }

  /** Takes the journal away once its pieces are kept elsewhere. */
  public void delete() throws IOException {
    channel.close();
    Files.deleteIfExists(file);
  }

  @Override
  public void close() throws IOException {
    channel.close();
  }
}

package fineweight.workbook.csv;

import java.io.IOException;
import java.io.PushbackReader;
import java.io.Reader;

/**
 * Keeps what passed through it until it is taken.
 *
 * <p>A carriage return without a line feed is kept as it is but passed on as a line feed: FastCSV
 * 4.1.0 loses a record whose last field is quoted and holds one.
 */
final class KeepingReader extends Reader {
  private static final int COMPACTED_FROM = 1 << 16;

  private final PushbackReader source;
  private final StringBuilder kept = new StringBuilder();
  private int start;

  KeepingReader(Reader source) {
    this.source = new PushbackReader(source);
  }

  @Override
  public int read(char[] buffer, int offset, int length) throws IOException {
    int count = source.read(buffer, offset, length);
    if (count > 0) {
      if (start > COMPACTED_FROM) {
        kept.delete(0, start);
        start = 0;
      }
      kept.append(buffer, offset, count);
      passLoneReturnsAsFeeds(buffer, offset, offset + count);
    }
    return count;
  }

  private void passLoneReturnsAsFeeds(char[] buffer, int from, int to) throws IOException {
    for (int i = from; i < to; i++) {
      if (buffer[i] == '\r' && (i + 1 < to ? buffer[i + 1] : peek()) != '\n') {
        buffer[i] = '\n';
      }
    }
  }

  private int peek() throws IOException {
    int next = source.read();
    if (next >= 0) {
      source.unread(next);
    }
    return next;
  }

  /** Whether what is not taken yet has this text, as it was passed on, at a place. */
  boolean hasAt(int offset, String text) {
    if (start + offset + text.length() > kept.length()) {
      return false;
    }
    for (int i = 0; i < text.length(); i++) {
      int found = charAt(offset + i);
      if (found != text.charAt(i) && !(found == '\r' && text.charAt(i) == '\n')) {
        return false;
      }
    }
    return true;
  }

  /** -1 after the last character kept. */
  int charAt(int offset) {
    return start + offset < kept.length() ? kept.charAt(start + offset) : -1;
  }

  /** As it was kept. */
  String text(int offset, int length) {
    return kept.substring(start + offset, start + offset + length);
  }

  void take(int length) {
    start += length;
  }

  @Override
  public void close() throws IOException {
    source.close();
  }
}

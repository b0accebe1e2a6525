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
      forgetWhatIsTaken();
      kept.append(buffer, offset, count);
      passLoneReturnsAsFeeds(buffer, offset, offset + count);
    }
    return count;
  }

  /** A line feed that was only looked at may be taken before it is kept. */
  private void forgetWhatIsTaken() {
    int forgotten = Math.min(start, kept.length());
    kept.delete(0, forgotten);
    start -= forgotten;
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
  boolean hasAt(int offset, String text) throws IOException {
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

  /** -1 after the last character of all; looks one ahead of what has passed. */
  int charAt(int offset) throws IOException {
    int at = start + offset;
    return at == kept.length() ? peek() : at < kept.length() ? kept.charAt(at) : -1;
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

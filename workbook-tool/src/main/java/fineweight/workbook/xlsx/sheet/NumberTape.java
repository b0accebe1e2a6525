package fineweight.workbook.xlsx.sheet;

import java.util.ArrayList;
import java.util.List;

/** Numbers from 0 up, packed one behind the other; small ones take one byte. */
final class NumberTape {
  private static final int PAGE = 1 << 16;
  private static final int BITS = 7;
  private static final int MORE = 1 << BITS;

  private final List<byte[]> pages = new ArrayList<>();
  private byte[] page = new byte[0];
  private int filled;

  void add(long number) {
    long rest = number;
    while (rest >= MORE) {
      put((byte) (rest & MORE - 1 | MORE));
      rest >>>= BITS;
    }
    put((byte) rest);
  }

  private void put(byte b) {
    if (filled == page.length) {
      page = new byte[PAGE];
      pages.add(page);
      filled = 0;
    }
    page[filled++] = b;
  }

  long size() {
    return pages.isEmpty() ? 0 : (pages.size() - 1L) * PAGE + filled;
  }

  Reader reader() {
    return new Reader();
  }

  /** Gives the numbers in their order. */
  final class Reader {
    private byte[] current = new byte[0];
    private int number;
    private int at;

    boolean hasNext() {
      return number < pages.size() || number == pages.size() && number > 0 && at < end();
    }

    private int end() {
      return number == pages.size() ? filled : PAGE;
    }

    long next() {
      long result = 0;
      int shift = 0;
      byte b = get();
      while (b < 0) {
        result |= (long) (b & MORE - 1) << shift;
        shift += BITS;
        b = get();
      }
      return result | (long) b << shift;
    }

    int nextInt() {
      return (int) next();
    }

    private byte get() {
      if (at == current.length) {
        current = pages.get(number++);
        at = 0;
      }
      return current[at++];
    }
  }
}

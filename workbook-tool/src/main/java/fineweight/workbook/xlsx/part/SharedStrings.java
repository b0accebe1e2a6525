package fineweight.workbook.xlsx.part;

import fineweight.workbook.xlsx.xml.DamageException;
import fineweight.workbook.xlsx.xml.PlainUtf8;
import fineweight.workbook.xlsx.xml.XmlCursor;
import fineweight.workbook.xlsx.xml.XmlText;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The texts that cells point to, packed as UTF-8, because there may be a million of them. */
public final class SharedStrings {
  private static final int BLOCK = 1 << 18;

  private final List<byte[]> blocks = new ArrayList<>();
  private int filled = BLOCK;
  private long[] places = new long[64];
  private int[] lengths = new int[64];
  private int count;

  private SharedStrings() {}

  public static SharedStrings none() {
    return new SharedStrings();
  }

  public static SharedStrings read(String part, InputStream raw) throws IOException {
    SharedStrings strings = new SharedStrings();
    try (XmlCursor cursor = new XmlCursor(PlainUtf8.of(raw), part)) {
      if (!cursor.nextChild() || !cursor.name().equals("sst")) {
        throw new DamageException("part " + part + " is not a list of texts");
      }
      while (cursor.nextChild()) {
        if (cursor.name().equals("si")) {
          strings.add(richText(cursor));
        } else {
          cursor.skip();
        }
      }
      cursor.finish();
    }
    return strings;
  }

  /**
   * The text of an item or inline cell: runs joined, phonetic text left out.
   *
   * @param cursor at the start tag of {@code si} or {@code is}; afterwards at its end tag
   */
  public static String richText(XmlCursor cursor) {
    String only = "";
    StringBuilder joined = null;
    while (cursor.nextChild()) {
      String name = cursor.name();
      if (name.equals("t") && joined == null && only.isEmpty()) {
        only = cursor.text();
      } else if (name.equals("t") || name.equals("r")) {
        joined = joined == null ? new StringBuilder(only) : joined;
        piece(cursor, name, joined);
      } else {
        cursor.skip();
      }
    }
    return XmlText.unescapeCell(joined == null ? only : joined.toString());
  }

  private static void piece(XmlCursor cursor, String name, StringBuilder text) {
    if (name.equals("t")) {
      text.append(cursor.text());
    } else {
      run(cursor, text);
    }
  }

  private static void run(XmlCursor cursor, StringBuilder text) {
    while (cursor.nextChild()) {
      if (cursor.name().equals("t")) {
        text.append(cursor.text());
      } else {
        cursor.skip();
      }
    }
  }

  private void add(String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    if (blocks.isEmpty() || filled + bytes.length > BLOCK) {
      blocks.add(new byte[Math.max(BLOCK, bytes.length)]);
      filled = 0;
    }
    System.arraycopy(bytes, 0, blocks.get(blocks.size() - 1), filled, bytes.length);
    if (count == places.length) {
      places = Arrays.copyOf(places, count * 2);
      lengths = Arrays.copyOf(lengths, count * 2);
    }
    places[count] = ((long) (blocks.size() - 1) << 32) | filled;
    lengths[count++] = bytes.length;
    filled = bytes.length > BLOCK ? BLOCK : filled + bytes.length;
  }

  public int count() {
    return count;
  }

  /**
   * @param index in the order of the part
   */
  public String get(int index) {
    if (index < 0 || index >= count) {
      throw new DamageException("a cell points to text " + index + ", which is not there");
    }
    byte[] block = blocks.get((int) (places[index] >>> 32));
    return new String(block, (int) places[index], lengths[index], StandardCharsets.UTF_8);
  }
}

package fineweight.workbook.oracle.parts;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.CRC32;
import java.util.zip.Inflater;
import java.util.zip.InflaterInputStream;

/**
 * A zip file as it lies on the disk, entries with their compressed bytes. Written for the tests
 * alone, so that no mistake of the product's zip code can hide here too.
 */
public final class RawZip {
  private static final int END = 0x06054b50;
  private static final int END64 = 0x06064b50;
  private static final int END64_LOCATOR = 0x07064b50;
  private static final int CENTRAL = 0x02014b50;
  private static final int LOCAL = 0x04034b50;
  private static final long MAX_32 = 0xffffffffL;

  private final ByteBuffer bytes;
  private final Map<String, Entry> entries = new LinkedHashMap<>();

  /**
   * @param time seconds of the extended time stamp if there is one, else DOS date and time in one
   *     number
   */
  public record Entry(
      String name, int method, long crc, long size, long time, long offset, byte[] compressed) {
    /** The bytes of the part, its checksum proved. */
    public byte[] content() throws IOException {
      byte[] content = method == 0 ? compressed : inflated();
      CRC32 sum = new CRC32();
      sum.update(content);
      if (sum.getValue() != crc || content.length != size) {
        throw new IOException("checksum or length of " + name + " is wrong");
      }
      return content;
    }

    private byte[] inflated() throws IOException {
      try (InflaterInputStream in =
          new InflaterInputStream(new ByteArrayInputStream(compressed), new Inflater(true))) {
        return in.readAllBytes();
      }
    }

    /** Whether the part was copied as it lay there: same compressed bytes, checksum and time. */
    public boolean sameBytes(Entry other) {
      return method == other.method
          && crc == other.crc
          && time == other.time
          && Arrays.equals(compressed, other.compressed);
    }
  }

  private RawZip(byte[] file) throws IOException {
    bytes = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN);
    try {
      readDirectory();
    } catch (IndexOutOfBoundsException | IllegalArgumentException e) {
      throw new IOException("not a sound zip file", e);
    }
  }

  public static RawZip of(Path file) throws IOException {
    return new RawZip(Files.readAllBytes(file));
  }

  public static RawZip of(byte[] file) throws IOException {
    return new RawZip(file);
  }

  /** By name, in the order in which the entries lie in the file; folders left out. */
  public Map<String, Entry> entries() {
    return entries;
  }

  private void readDirectory() throws IOException {
    int end = findEnd();
    long count = bytes.getShort(end + 10) & 0xffff;
    long size = bytes.getInt(end + 12) & MAX_32;
    long start = bytes.getInt(end + 16) & MAX_32;
    long tail = end;
    if (end >= 20 && bytes.getInt(end - 20) == END64_LOCATOR) {
      int end64 = (int) bytes.getLong(end - 12);
      if (bytes.getInt(end64) != END64) {
        throw new IOException("Zip64 end not found");
      }
      count = bytes.getLong(end64 + 32);
      size = bytes.getLong(end64 + 40);
      start = bytes.getLong(end64 + 48);
      tail = end64;
    }
    long shift = tail - size - start;
    Map<Long, Entry> byOffset = new java.util.TreeMap<>();
    int at = (int) (start + shift);
    for (long i = 0; i < count; i++) {
      at = readEntry(at, shift, byOffset);
    }
    for (Entry entry : byOffset.values()) {
      if (!entry.name().endsWith("/") && entries.put(entry.name(), entry) != null) {
        throw new IOException("two entries are named " + entry.name());
      }
    }
  }

  private int findEnd() throws IOException {
    for (int at = bytes.capacity() - 22; at >= 0; at--) {
      if (bytes.getInt(at) == END) {
        return at;
      }
    }
    throw new IOException("end of zip directory not found");
  }

  private int readEntry(int at, long shift, Map<Long, Entry> byOffset) throws IOException {
    if (bytes.getInt(at) != CENTRAL) {
      throw new IOException("zip directory damaged");
    }
    int nameLength = bytes.getShort(at + 28) & 0xffff;
    int extraLength = bytes.getShort(at + 30) & 0xffff;
    int commentLength = bytes.getShort(at + 32) & 0xffff;
    String name = text(at + 46, nameLength);
    long[] wide = {
      bytes.getInt(at + 24) & MAX_32,
      bytes.getInt(at + 20) & MAX_32,
      bytes.getInt(at + 42) & MAX_32,
      bytes.getInt(at + 12) & MAX_32
    };
    widen(wide, at + 46 + nameLength, extraLength);
    int local = (int) (wide[2] + shift);
    if (bytes.getInt(local) != LOCAL) {
      throw new IOException("local header of " + name + " not found");
    }
    int localName = bytes.getShort(local + 26) & 0xffff;
    if (!text(local + 30, localName).equals(name)) {
      throw new IOException("two names for " + name);
    }
    int data = local + 30 + localName + (bytes.getShort(local + 28) & 0xffff);
    byte[] compressed = Arrays.copyOfRange(bytes.array(), data, (int) (data + wide[1]));
    int method = bytes.getShort(at + 10) & 0xffff;
    long crc = bytes.getInt(at + 16) & MAX_32;
    Entry entry = new Entry(name, method, crc, wide[0], wide[3], wide[2], compressed);
    if (byOffset.put(wide[2], entry) != null) {
      throw new IOException("two entries share the bytes of " + name);
    }
    return at + 46 + nameLength + extraLength + commentLength;
  }

  /** Size, compressed size, offset and time, from the extra fields that know them better. */
  private void widen(long[] wide, int extra, int length) {
    for (int at = extra; at + 4 <= extra + length; ) {
      int id = bytes.getShort(at) & 0xffff;
      if (id == 0x5455 && (bytes.get(at + 4) & 1) != 0) {
        wide[3] = bytes.getInt(at + 5);
      } else if (id == 1) {
        int field = at + 4;
        for (int i = 0; i < 3; i++) {
          if (wide[i] == MAX_32) {
            wide[i] = bytes.getLong(field);
            field += 8;
          }
        }
      }
      at += 4 + (bytes.getShort(at + 2) & 0xffff);
    }
  }

  private String text(int at, int length) {
    return new String(bytes.array(), at, length, StandardCharsets.UTF_8);
  }
}

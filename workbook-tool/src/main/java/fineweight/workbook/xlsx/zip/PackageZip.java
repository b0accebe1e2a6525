package fineweight.workbook.xlsx.zip;

import fineweight.workbook.xlsx.xml.DamageException;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;

/** The opened container. Names of parts are compared without regard to case, as the format does. */
public final class PackageZip implements Closeable {
  /** From here on a second thread is worth its while. */
  private static final int LONG = 1 << 18;

  private final ZipFile zip;
  private final List<ZipArchiveEntry> entries;
  private final Map<String, ZipArchiveEntry> byName = new HashMap<>();

  private PackageZip(ZipFile zip, List<ZipArchiveEntry> entries) {
    this.zip = zip;
    this.entries = entries;
    entries.forEach(e -> byName.put(key(e.getName()), e));
  }

  public static PackageZip open(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      checkStart(in.readNBytes(4));
    }
    return of(openZip(ZipFile.builder().setPath(file)), Files.size(file));
  }

  /** Has a second library, stricter than ours, read the list of parts. */
  public static void requireReadable(Path file) throws IOException {
    try (java.util.zip.ZipFile strict = new java.util.zip.ZipFile(file.toFile())) {
      if (strict.size() == 0) {
        throw new DamageException("its container is empty");
      }
    }
  }

  /** A container in memory. */
  public static PackageZip open(byte[] content) throws IOException {
    checkStart(Arrays.copyOf(content, Math.min(4, content.length)));
    return of(openZip(ZipFile.builder().setByteArray(content)), content.length);
  }

  private static PackageZip of(ZipFile zip, long size) throws IOException {
    try {
      List<ZipArchiveEntry> entries = new ArrayList<>(Collections.list(zip.getEntries()));
      // The library's own order trusts the number of the disk, which may be anything.
      entries.sort(Comparator.comparingLong(ZipArchiveEntry::getLocalHeaderOffset));
      EntryRules.check(entries, size);
      return new PackageZip(zip, entries);
    } catch (RuntimeException e) {
      zip.close();
      throw e;
    }
  }

  private static void checkStart(byte[] start) {
    if (start.length == 4 && start[0] == (byte) 0xD0 && start[1] == (byte) 0xCF) {
      throw new DamageException("it is an older (.xls) or an encrypted workbook");
    }
    if (start.length < 4 || start[0] != 'P' || start[1] != 'K' || start[2] != 3 || start[3] != 4) {
      throw new DamageException("it does not begin as a workbook of this kind does");
    }
  }

  private static ZipFile openZip(ZipFile.Builder builder) throws IOException {
    try {
      return builder.setIgnoreLocalFileHeader(false).get();
    } catch (IOException e) {
      throw new DamageException("its container is damaged or cut off", e);
    }
  }

  private static String key(String part) {
    return part.toLowerCase(Locale.ROOT);
  }

  public boolean has(String part) {
    return byName.containsKey(key(part));
  }

  /** The names as written, in the order of the bytes. */
  public List<String> parts() {
    List<String> names = new ArrayList<>();
    entries.forEach(e -> names.add(e.getName()));
    return names;
  }

  /** The name as the container writes it. */
  public String spelling(String part) {
    return entry(part).getName();
  }

  /** An XML part's content, size and checksum watched. A long one is unpacked ahead. */
  public InputStream xml(String part) throws IOException {
    ZipArchiveEntry entry = entry(part);
    InputStream content = new GuardedStream(zip.getInputStream(entry), entry, true);
    return entry.getSize() > LONG ? new AheadStream(content) : content;
  }

  /** Reads a part to its end for the sake of its checksum. */
  public void verify(String part) throws IOException {
    ZipArchiveEntry entry = entry(part);
    try (GuardedStream in = new GuardedStream(zip.getInputStream(entry), entry, false)) {
      in.drain();
    }
  }

  /** Checksum and length, which tell whether two parts hold the same. */
  public String seal(String part) {
    ZipArchiveEntry entry = entry(part);
    return seal(entry.getCrc(), entry.getSize());
  }

  static String seal(long checksum, long size) {
    return checksum + "/" + size;
  }

  List<ZipArchiveEntry> entries() {
    return entries;
  }

  InputStream raw(ZipArchiveEntry entry) throws IOException {
    return zip.getRawInputStream(entry);
  }

  private ZipArchiveEntry entry(String part) {
    ZipArchiveEntry entry = byName.get(key(part));
    if (entry == null) {
      throw new DamageException("part " + part + " is missing");
    }
    return entry;
  }

  @Override
  public void close() throws IOException {
    zip.close();
  }
}

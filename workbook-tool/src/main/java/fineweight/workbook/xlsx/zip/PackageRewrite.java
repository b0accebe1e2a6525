package fineweight.workbook.xlsx.zip;

import fineweight.workbook.WorkbookRefusal;
import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.zip.ZipEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;

/**
 * A new container from an old one: parts that nobody changes are copied as compressed bytes, in
 * their order; new parts come last. The same input gives the same bytes.
 */
public final class PackageRewrite {
  private static final LocalDateTime FIXED = LocalDateTime.of(1980, 1, 1, 0, 0);
  private static final int LEVEL = 6;

  private final PackageZip source;
  private final Map<String, PackedPart> replaced = new LinkedHashMap<>();
  private final Map<String, PackedPart> added = new LinkedHashMap<>();
  private final Set<String> removed = new HashSet<>();

  public PackageRewrite(PackageZip source) {
    this.source = source;
  }

  /**
   * Replaces a part, or adds it if there is none of this name. The content is made at once and kept
   * packed: then its entry's head can tell its size, and is the same whether the part was packed
   * now or is copied by a later run.
   */
  public void put(String part, PartContent content) throws IOException, WorkbookRefusal {
    put(part, content, List.of());
  }

  /**
   * The same.
   *
   * @param readers each reads the content while it is made
   */
  public void put(String part, PartContent content, List<PartReader> readers)
      throws IOException, WorkbookRefusal {
    PackedPart packed = PackedPart.of(content, LEVEL, readers);
    if (source.has(part)) {
      replaced.put(key(part), packed);
    } else {
      added.put(part, packed);
    }
  }

  public void remove(String part) {
    removed.add(key(part));
  }

  /** Whether each part in it has the content that was copied or made. */
  public boolean isIn(PackageZip copy) {
    for (String part : source.parts()) {
      PackedPart made = replaced.get(key(part));
      String seal = made == null ? source.seal(part) : made.seal();
      if (!removed.contains(key(part)) && !(copy.has(part) && copy.seal(part).equals(seal))) {
        return false;
      }
    }
    return added.entrySet().stream()
        .allMatch(
            each ->
                copy.has(each.getKey()) && copy.seal(each.getKey()).equals(each.getValue().seal()));
  }

  private static String key(String part) {
    return part.toLowerCase(Locale.ROOT);
  }

  public void writeTo(OutputStream out) throws IOException {
    ZipArchiveOutputStream zip = new ZipArchiveOutputStream(out);
    zip.setLevel(LEVEL);
    for (ZipArchiveEntry entry : source.entries()) {
      String key = key(entry.getName());
      if (removed.contains(key)) {
        continue;
      }
      PackedPart content = replaced.get(key);
      if (content == null) {
        zip.addRawArchiveEntry(copied(entry), source.raw(entry));
      } else {
        write(zip, entry.getName(), entry.getTime(), content);
      }
    }
    for (Map.Entry<String, PackedPart> each : added.entrySet()) {
      long time = FIXED.atZone(ZoneId.systemDefault()).toInstant().toEpochMilli();
      write(zip, each.getKey(), time, each.getValue());
    }
    zip.finish();
    zip.flush();
  }

  /** Extra bytes that are no field would make the list of parts unreadable to others. */
  private static ZipArchiveEntry copied(ZipArchiveEntry entry) throws IOException {
    ZipArchiveEntry copy = new ZipArchiveEntry(entry);
    if (copy.getUnparseableExtraFieldData() != null) {
      copy.removeUnparseableExtraFieldData();
    }
    return copy;
  }

  private static void write(ZipArchiveOutputStream zip, String name, long time, PackedPart packed)
      throws IOException {
    ZipArchiveEntry entry = new ZipArchiveEntry(name);
    entry.setMethod(ZipEntry.DEFLATED);
    entry.setTime(time);
    entry.setSize(packed.size());
    entry.setCrc(packed.checksum());
    entry.setCompressedSize(packed.packedSize());
    zip.addRawArchiveEntry(entry, packed.content());
  }
}

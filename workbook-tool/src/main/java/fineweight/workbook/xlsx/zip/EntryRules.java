package fineweight.workbook.xlsx.zip;

import fineweight.workbook.xlsx.xml.DamageException;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.zip.ZipEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;

/** What a directory of entries must be like before anything is inflated. Limits in bytes. */
final class EntryRules {
  private static final int MOST_PARTS = 10_000;
  private static final long LARGEST_PART = 768L << 20;
  private static final long LARGEST_TOTAL = 1536L << 20;

  private EntryRules() {}

  static void check(List<ZipArchiveEntry> entries, long fileSize) {
    if (entries.size() > MOST_PARTS) {
      throw new DamageException("it holds more than " + MOST_PARTS + " parts");
    }
    Set<String> names = new HashSet<>();
    long total = 0;
    for (ZipArchiveEntry entry : entries) {
      checkName(entry.getName());
      if (!names.add(entry.getName().toLowerCase(Locale.ROOT))) {
        throw new DamageException("part " + entry.getName() + " occurs twice");
      }
      checkKind(entry);
      total += entry.getSize();
      if (entry.getSize() > LARGEST_PART || total > LARGEST_TOTAL) {
        throw new DamageException("it would unpack to more than a workbook may have");
      }
    }
    checkOverlap(entries, fileSize);
  }

  private static void checkName(String name) {
    boolean escapes =
        name.startsWith("/")
            || name.contains("\\")
            || name.contains(":")
            || ("/" + name + "/").contains("/../")
            || name.chars().anyMatch(c -> c < ' ');
    if (escapes || name.isEmpty()) {
      throw new DamageException("it holds a part with the dangerous name \"" + name + "\"");
    }
  }

  private static void checkKind(ZipArchiveEntry entry) {
    boolean known = entry.getMethod() == ZipEntry.DEFLATED || entry.getMethod() == ZipEntry.STORED;
    if (!known || entry.getGeneralPurposeBit().usesEncryption()) {
      throw new DamageException(
          "part " + entry.getName() + " is packed in a way that workbooks do not use");
    }
    if (entry.getSize() < 0 || entry.getCompressedSize() < 0) {
      throw new DamageException("part " + entry.getName() + " does not tell its size");
    }
  }

  private static void checkOverlap(List<ZipArchiveEntry> entries, long fileSize) {
    List<ZipArchiveEntry> sorted =
        entries.stream()
            .sorted(Comparator.comparingLong(ZipArchiveEntry::getLocalHeaderOffset))
            .toList();
    long end = 0;
    for (ZipArchiveEntry entry : sorted) {
      if (entry.getLocalHeaderOffset() < end) {
        throw new DamageException("part " + entry.getName() + " overlaps another");
      }
      end = Math.max(entry.getDataOffset(), entry.getLocalHeaderOffset());
      end += entry.getCompressedSize();
    }
    if (end > fileSize) {
      throw new DamageException("it is cut off");
    }
  }
}

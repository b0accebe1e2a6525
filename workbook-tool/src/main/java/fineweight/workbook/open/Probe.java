package fineweight.workbook.open;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.apache.poi.poifs.filesystem.DirectoryNode;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;

/** Looks into a file to tell what it is; its name plays no part. */
final class Probe {
  private static final int HEAD = 4096;
  private static final int CONTENT_TYPES = 1 << 20;
  private static final Pattern WEB_PAGE =
      Pattern.compile("(?s)\\s*(<!doctype html|<html|<head|<meta|<table|<body|mime-version:).*");
  private static final Pattern MARKUP = Pattern.compile("(?s)\\s*(<\\?xml|<workbook).*");

  /** The first bytes, in hexadecimal digits. */
  private static final Map<String, Content> BEGINNINGS = new LinkedHashMap<>();

  static {
    BEGINNINGS.put("25504446", Content.PDF);
    BEGINNINGS.put("89504e47", Content.PICTURE);
    BEGINNINGS.put("ffd8ff", Content.PICTURE);
    BEGINNINGS.put("47494638", Content.PICTURE);
    BEGINNINGS.put("49492a00", Content.PICTURE);
    BEGINNINGS.put("4d4d002a", Content.PICTURE);
    BEGINNINGS.put("1f8b", Content.ARCHIVE);
    BEGINNINGS.put("377abcaf271c", Content.ARCHIVE);
    BEGINNINGS.put("526172211a07", Content.ARCHIVE);
    BEGINNINGS.put("7b5c727466", Content.OTHER_DOCUMENT);
    // Sheets of Excel 2, 3, 4 and 5 without a container.
    BEGINNINGS.put("09000400", Content.OLD_XLS);
    BEGINNINGS.put("09020600", Content.OLD_XLS);
    BEGINNINGS.put("09040600", Content.OLD_XLS);
    BEGINNINGS.put("09080800", Content.OLD_XLS);
  }

  private static final String ZIP = "504b0304";
  private static final String EMPTY_ZIP = "504b0506";
  private static final String COMPOUND = "d0cf11e0a1b11ae1";

  private Probe() {}

  static Content of(Path file) throws IOException {
    byte[] head;
    try (InputStream in = Files.newInputStream(file)) {
      head = in.readNBytes(HEAD);
    }
    if (head.length == 0) {
      return Content.EMPTY;
    }
    String start = HexFormat.of().formatHex(head, 0, Math.min(8, head.length));
    if (start.startsWith(ZIP) || start.startsWith(EMPTY_ZIP)) {
      return zip(file);
    }
    if (start.equals(COMPOUND)) {
      return compound(file);
    }
    for (Map.Entry<String, Content> beginning : BEGINNINGS.entrySet()) {
      if (start.startsWith(beginning.getKey())) {
        return beginning.getValue();
      }
    }
    return text(head, start);
  }

  private static Content zip(Path file) {
    try (ZipFile zip = new ZipFile(file.toFile())) {
      ZipEntry types = zip.getEntry("[Content_Types].xml");
      ZipEntry mimetype = zip.getEntry("mimetype");
      if (types != null) {
        return packageKind(beginning(zip, types, CONTENT_TYPES));
      }
      if (mimetype != null && beginning(zip, mimetype, HEAD).contains("opendocument")) {
        return beginning(zip, mimetype, HEAD).contains("spreadsheet")
            ? Content.OPEN_DOCUMENT
            : Content.OTHER_DOCUMENT;
      }
      return Content.ARCHIVE;
    } catch (IOException e) {
      return Content.CUT_OFF;
    }
  }

  private static Content packageKind(String types) {
    if (types.contains("ms-excel.sheet.binary")) {
      return Content.BINARY_PACKAGE;
    }
    boolean otherDocument =
        types.contains("wordprocessingml.document.main")
            || types.contains("presentationml.presentation.main");
    // What else is wrong with it, the reader of packages knows better.
    return otherDocument ? Content.OTHER_DOCUMENT : Content.PACKAGE;
  }

  private static String beginning(ZipFile zip, ZipEntry entry, int length) throws IOException {
    try (InputStream in = zip.getInputStream(entry)) {
      // Without its zero bytes, text in UTF-16 reads like text in UTF-8.
      return new String(in.readNBytes(length), StandardCharsets.ISO_8859_1).replace("\0", "");
    }
  }

  private static Content compound(Path file) {
    try (POIFSFileSystem container = new POIFSFileSystem(file.toFile(), true)) {
      DirectoryNode root = container.getRoot();
      if (root.hasEntryCaseInsensitive("EncryptedPackage")) {
        return Content.ENCRYPTED;
      }
      if (root.hasEntryCaseInsensitive("Workbook")) {
        return Content.XLS;
      }
      return root.hasEntryCaseInsensitive("Book") ? Content.OLD_XLS : Content.OTHER_DOCUMENT;
    } catch (IOException e) {
      return Content.CUT_OFF;
    }
  }

  private static Content text(byte[] head, String start) {
    boolean wide = start.startsWith("fffe") || start.startsWith("feff");
    String text = new String(head, StandardCharsets.ISO_8859_1);
    if (!wide && text.indexOf('\0') >= 0) {
      return Content.UNKNOWN;
    }
    String plain =
        text.replace("\0", "").replaceFirst("^(\u00EF\u00BB\u00BF|\u00FF\u00FE|\u00FE\u00FF)", "");
    String small = plain.toLowerCase(Locale.ROOT);
    if (WEB_PAGE.matcher(small).matches()) {
      return Content.WEB_PAGE;
    }
    return MARKUP.matcher(small).matches() ? Content.XML : Content.TEXT;
  }
}

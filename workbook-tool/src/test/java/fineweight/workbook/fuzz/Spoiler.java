package fineweight.workbook.fuzz;

import fineweight.workbook.oracle.parts.RawZip;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Spoils a file in one of many ways. The same random numbers spoil it the same way. */
final class Spoiler {
  private static final List<String> WORDS =
      List.of(
          "-1",
          "0",
          "1048577",
          "99999999999",
          "1E308",
          "NaN",
          "",
          " ",
          "A1:XFD1048576",
          "XFE1",
          "A0",
          "s",
          "str",
          "inlineStr",
          "b",
          "e",
          "d",
          "shared",
          "array",
          "dataTable",
          "&amp;",
          "&#0;",
          "\u0000",
          "<c/>",
          "<row/>",
          "</row>",
          "<row r=\"1\"/>",
          "<f>A1</f>",
          "<f t=\"shared\" si=\"0\"/>",
          "<v>1</v>",
          "<!-- -->",
          "<![CDATA[x]]>",
          "<?x?>",
          "]]>",
          "xml:space=\"preserve\"",
          "_x000D_",
          "rId1",
          "../x.xml",
          "/xl/workbook.xml",
          "1",
          "true");

  private final Random random;

  Spoiler(long seed) {
    this.random = new Random(seed);
  }

  byte[] spoil(byte[] sound) {
    boolean isPackage = sound.length > 4 && sound[0] == 'P' && sound[1] == 'K';
    if (!isPackage || random.nextInt(5) == 0) {
      return spoilBytes(sound, 1 + random.nextInt(4));
    }
    try {
      Map<String, byte[]> parts = new LinkedHashMap<>();
      for (RawZip.Entry entry : RawZip.of(sound).entries().values()) {
        parts.put(entry.name(), entry.content());
      }
      int times = 1 + random.nextInt(3);
      for (int i = 0; i < times; i++) {
        spoilParts(parts);
      }
      return zip(parts);
    } catch (IOException e) {
      return spoilBytes(sound, 1);
    }
  }

  private void spoilParts(Map<String, byte[]> parts) {
    List<String> names = new ArrayList<>(parts.keySet());
    String name = names.get(random.nextInt(names.size()));
    String other = names.get(random.nextInt(names.size()));
    switch (random.nextInt(12)) {
      case 0 -> parts.remove(name);
      case 1 -> parts.put(other, parts.put(name, parts.get(other)));
      case 2 -> parts.put(name + "x", parts.remove(name));
      case 3 -> parts.put(name, spoilBytes(parts.get(name), 1));
      default -> parts.put(name, spoilXml(parts.get(name)));
    }
    parts.values().removeIf(java.util.Objects::isNull);
  }

  /** Changes words between quotes or brackets, so that most results are still well-formed. */
  private byte[] spoilXml(byte[] part) {
    String text = new String(part, StandardCharsets.UTF_8);
    if (text.length() < 10) {
      return part;
    }
    int at = random.nextInt(text.length());
    boolean attribute = random.nextBoolean();
    int start = text.indexOf(attribute ? '"' : '>', at) + 1;
    int end = text.indexOf(attribute ? '"' : '<', Math.max(start, 0));
    if (start <= 0 || end < start) {
      return spoilBytes(part, 1);
    }
    String old = text.substring(start, end);
    String now =
        switch (random.nextInt(6)) {
          case 0 -> "";
          case 1 -> old + old;
          case 2 -> number(old);
          case 3 -> old.isEmpty() ? "x" : old.substring(random.nextInt(old.length()));
          default -> WORDS.get(random.nextInt(WORDS.size()));
        };
    if (random.nextInt(6) == 0) {
      return moveElement(text, at).getBytes(StandardCharsets.UTF_8);
    }
    return (text.substring(0, start) + now + text.substring(end)).getBytes(StandardCharsets.UTF_8);
  }

  private String number(String old) {
    return old.matches("\\d{1,8}")
        ? String.valueOf(Integer.parseInt(old) + random.nextInt(5) - 2)
        : old + "1";
  }

  /** Cuts an element out and puts it somewhere else, or nowhere. */
  private String moveElement(String text, int at) {
    int start = text.indexOf('<', at);
    int end = start < 0 ? -1 : text.indexOf("/>", start);
    if (end < 0 || end - start > 400) {
      return text;
    }
    String element = text.substring(start, end + 2);
    String rest = text.substring(0, start) + text.substring(end + 2);
    int place = rest.indexOf('<', random.nextInt(rest.length()));
    boolean keep = place > 0 && random.nextBoolean();
    return keep ? rest.substring(0, place) + element + rest.substring(place) : rest;
  }

  private byte[] spoilBytes(byte[] sound, int times) {
    byte[] bytes = sound.clone();
    for (int i = 0; i < times && bytes.length > 8; i++) {
      int at = random.nextInt(bytes.length);
      int length = 1 + random.nextInt(Math.min(64, bytes.length - at));
      switch (random.nextInt(5)) {
        case 0 -> bytes = Arrays.copyOf(bytes, at);
        case 1 -> bytes = joined(bytes, at, at + length);
        case 2 -> bytes = joined(bytes, at + length, at);
        default -> bytes[at] ^= (byte) (1 << random.nextInt(8));
      }
    }
    return bytes;
  }

  /** The first bytes up to one place and those from another: a cut or a doubling. */
  private static byte[] joined(byte[] bytes, int to, int from) {
    byte[] joined = Arrays.copyOf(bytes, to + bytes.length - from);
    System.arraycopy(bytes, from, joined, to, bytes.length - from);
    return joined;
  }

  private static byte[] zip(Map<String, byte[]> parts) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (Map.Entry<String, byte[]> part : parts.entrySet()) {
        ZipEntry entry = new ZipEntry(part.getKey());
        entry.setTime(1_000_000_000_000L);
        zip.putNextEntry(entry);
        zip.write(part.getValue());
      }
    }
    return bytes.toByteArray();
  }
}

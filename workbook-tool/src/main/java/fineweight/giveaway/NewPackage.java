package fineweight.giveaway;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** A container built part by part; the same parts give the same bytes. */
final class NewPackage {
  static final String RELATIONSHIPS =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  private static final String DECLARATION =
      "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n";
  private static final String KINDS = "application/vnd.openxmlformats-package.relationships+xml";

  /** The first moment that a zip file can hold. */
  private static final LocalDateTime FIRST = LocalDateTime.of(1980, 1, 1, 0, 0);

  private final Map<String, byte[]> parts = new LinkedHashMap<>();
  private final Map<String, String> types = new LinkedHashMap<>();
  private final Map<String, List<String>> relationships = new LinkedHashMap<>();

  /**
   * @param part without leading slash
   * @param type the content type behind {@code application/vnd.openxmlformats-officedocument.}
   */
  void add(String part, String type, byte[] content) {
    parts.put(part, content);
    types.put(part, "application/vnd.openxmlformats-officedocument." + type + "+xml");
  }

  /** The same for a part that is written here from its root element on. */
  void add(String part, String type, String root) {
    add(part, type, (DECLARATION + root).getBytes(StandardCharsets.UTF_8));
  }

  /**
   * @param source the part that points; empty for the package itself
   * @param kind such as {@code worksheet}
   * @return the id of the relationship
   */
  String relate(String source, String kind, String target) {
    List<String> all = relationships.computeIfAbsent(source, none -> new ArrayList<>());
    String id = "rId" + (all.size() + 1);
    all.add(
        "<Relationship Id=\"%s\" Type=\"%s/%s\" Target=\"/%s\"/>"
            .formatted(id, RELATIONSHIPS, kind, target));
    return id;
  }

  void writeTo(OutputStream out) throws IOException {
    ZipOutputStream zip = new ZipOutputStream(out);
    put(zip, "[Content_Types].xml", contentTypes());
    for (Map.Entry<String, List<String>> each : relationships.entrySet()) {
      put(zip, relationshipsOf(each.getKey()), relationships(each.getValue()));
    }
    for (Map.Entry<String, byte[]> part : parts.entrySet()) {
      put(zip, part.getKey(), part.getValue());
    }
    zip.finish();
  }

  private static void put(ZipOutputStream zip, String name, byte[] content) throws IOException {
    ZipEntry entry = new ZipEntry(name);
    entry.setTimeLocal(FIRST);
    zip.putNextEntry(entry);
    zip.write(content);
    zip.closeEntry();
  }

  private byte[] contentTypes() {
    StringBuilder text = new StringBuilder(DECLARATION);
    text.append("<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">");
    text.append("<Default Extension=\"rels\" ContentType=\"" + KINDS + "\"/>");
    types.forEach(
        (part, type) ->
            text.append("<Override PartName=\"/%s\" ContentType=\"%s\"/>".formatted(part, type)));
    return text.append("</Types>").toString().getBytes(StandardCharsets.UTF_8);
  }

  private static byte[] relationships(List<String> all) {
    return (DECLARATION
            + "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
            + String.join("", all)
            + "</Relationships>")
        .getBytes(StandardCharsets.UTF_8);
  }

  private static String relationshipsOf(String source) {
    int slash = source.lastIndexOf('/') + 1;
    return source.substring(0, slash) + "_rels/" + source.substring(slash) + ".rels";
  }
}

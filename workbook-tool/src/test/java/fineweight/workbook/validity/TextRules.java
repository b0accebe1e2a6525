package fineweight.workbook.validity;

import fineweight.workbook.oracle.parts.PackageParts;
import fineweight.workbook.oracle.parts.XmlElement;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/**
 * The shared strings.
 *
 * @param texts the texts by number, phonetic notes left out
 */
record TextRules(List<String> texts) {
  static TextRules check(PackageParts parts, List<String> findings) throws IOException {
    Optional<String> part = parts.related("sharedStrings");
    if (part.isEmpty()) {
      return new TextRules(List.of());
    }
    XmlElement table = parts.tree(part.get());
    List<String> texts = table.all("si").stream().map(TextRules::text).toList();
    String unique = table.get("uniqueCount");
    if (!unique.isEmpty() && Integer.parseInt(unique) != texts.size()) {
      findings.add(part.get() + ": says " + unique + " texts but holds " + texts.size());
    }
    for (String text : texts) {
      if (text.length() > 32_767) {
        findings.add(part.get() + ": a text of " + text.length() + " characters");
      }
    }
    return new TextRules(texts);
  }

  static String text(XmlElement item) {
    StringBuilder text = new StringBuilder();
    for (XmlElement child : item.children()) {
      if (child.name().equals("t")) {
        text.append(child.text());
      } else if (child.name().equals("r")) {
        child.all("t").forEach(each -> text.append(each.text()));
      }
    }
    return text.toString();
  }
}

package fineweight.giveaway;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Tells in the owner's words which parts were not taken along. */
final class LeftBehind {
  private static final Map<String, String> WORDS = new LinkedHashMap<>();

  static {
    WORDS.put("docprops", "properties of the document, such as author and company");
    WORDS.put("customxml", "custom data");
    WORDS.put("threadedcomment", "comments");
    WORDS.put("comment", "comments");
    WORDS.put("person", "names of those who commented");
    WORDS.put("pivot", "pivot tables and their stored rows");
    WORDS.put("externallink", "links to other workbooks and their stored figures");
    WORDS.put("printersettings", "settings of a printer");
    WORDS.put("vba", "macros");
    WORDS.put("macrosheet", "macros");
    WORDS.put("embedding", "embedded files");
    WORDS.put("media", "pictures and sounds");
    WORDS.put("connection", "connections to databases and files");
    WORDS.put("querytable", "connections to databases and files");
    WORDS.put("xmlmaps", "maps of XML data");
    WORDS.put("tablesinglecells", "maps of XML data");
    WORDS.put("activex", "form controls");
    WORDS.put("ctrlprop", "form controls");
    WORDS.put("slicer", "slicers");
    WORDS.put("timeline", "slicers");
    WORDS.put("revision", "history of changes");
    WORDS.put("usernames", "history of changes");
    WORDS.put("sharedstrings", "the stored texts of all cells");
  }

  private final Findings findings;

  LeftBehind(Findings findings) {
    this.findings = findings;
  }

  void tell(List<String> parts) {
    for (String part : parts) {
      String name = part.toLowerCase(Locale.ROOT);
      WORDS.entrySet().stream()
          .filter(each -> name.contains(each.getKey()))
          .findFirst()
          .ifPresent(each -> findings.removed(each.getValue()));
    }
  }
}

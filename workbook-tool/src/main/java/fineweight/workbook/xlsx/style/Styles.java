package fineweight.workbook.xlsx.style;

import fineweight.workbook.CellLook;
import fineweight.workbook.xlsx.style.DateFormats.Shows;
import fineweight.workbook.xlsx.xml.ByteEdits;
import fineweight.workbook.xlsx.xml.DamageException;
import fineweight.workbook.xlsx.xml.Element;
import fineweight.workbook.xlsx.xml.Markup;
import fineweight.workbook.xlsx.xml.XmlText;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The cell formats of a workbook. New ones are appended, equal ones used again, none changed. */
public final class Styles {
  public static final String WRAPPED = "<%salignment vertical=\"top\" wrapText=\"1\"/>";
  private static final int FIRST_OWN_FORMAT = 164;

  private final Markup markup;
  private final List<CellFormat> formats = new ArrayList<>();
  private final Map<Integer, String> codes = new LinkedHashMap<>();
  private final Map<String, Integer> numbers = new HashMap<>();
  private final Map<String, Integer> known = new HashMap<>();
  private final Map<String, Integer> derived = new HashMap<>();
  private final int oldFormats;
  private final List<String> newNumberFormats = new ArrayList<>();
  private final Map<String, Pool> pools = new LinkedHashMap<>();

  public Styles(Markup markup) {
    this.markup = markup;
    Element root = markup.root();
    for (Element each : children("numFmts", "numFmt")) {
      codes.put(
          each.number("numFmtId", -1), Optional.ofNullable(each.get("formatCode")).orElse(""));
    }
    codes.forEach((id, code) -> numbers.putIfAbsent(code, id));
    for (String list : List.of("fonts", "fills", "borders")) {
      pools.put(list, new Pool(markup, root.child(list)));
    }
    for (Element each : children("cellXfs", "xf")) {
      CellFormat format = format(each);
      known.putIfAbsent(format.key(), formats.size());
      formats.add(format);
    }
    oldFormats = formats.size();
  }

  private List<Element> children(String list, String child) {
    return markup.root().child(list).map(l -> l.children(child)).orElse(List.of());
  }

  private CellFormat format(Element xf) {
    return new CellFormat(
        xf.number("numFmtId", 0),
        xf.number("fontId", 0),
        xf.number("fillId", 0),
        xf.number("borderId", 0),
        xf.number("xfId", 0),
        xf.child("alignment").map(markup::source).orElse(""),
        xf.child("protection").map(markup::source).orElse(""));
  }

  /** Refuses a format number that is not there. */
  public void check(int index) {
    if (index < 0 || index >= Math.max(1, formats.size())) {
      throw new DamageException("a cell has the format number " + index + ", which is not there");
    }
  }

  public boolean isDate(int index) {
    return shows(index) != Shows.NUMBER;
  }

  public boolean isYearOnly(int index) {
    return shows(index) == Shows.YEAR;
  }

  private Shows shows(int index) {
    if (index >= formats.size()) {
      return Shows.NUMBER;
    }
    int number = formats.get(index).numberFormat();
    String code = codes.get(number);
    return code == null ? DateFormats.builtIn(number) : DateFormats.custom(code);
  }

  /**
   * A format with the font, fill and border of another and with our number format.
   *
   * @param ownFormat whether the base was meant for this column: then its number format, if it has
   *     one, is kept with everything else
   */
  public int derive(int base, CellLook look, boolean ownFormat) {
    if (ownFormat && base < formats.size() && formats.get(base).numberFormat() != 0) {
      return base;
    }
    String wanted = base + (look.wrapped() ? "w" : " ") + look.numberFormat();
    return derived.computeIfAbsent(wanted, key -> derive(base, look));
  }

  private int derive(int number, CellLook look) {
    CellFormat base =
        number < formats.size() ? formats.get(number) : new CellFormat(0, 0, 0, 0, 0, "", "");
    String alignment = look.wrapped() ? WRAPPED.formatted(prefix()) : "";
    return add(
        new CellFormat(
            numberFormat(look.numberFormat()),
            base.font(),
            base.fill(),
            base.border(),
            base.parent(),
            alignment,
            ""));
  }

  /** A format of our own making. The parts are XML of the main namespace without prefix. */
  public int own(String font, String fill, String border, CellLook look, String protection) {
    return add(
        new CellFormat(
            numberFormat(look.numberFormat()),
            pools.get("fonts").index(prefixed(font)),
            pools.get("fills").index(prefixed(fill)),
            pools.get("borders").index(prefixed(border)),
            0,
            look.wrapped() ? WRAPPED.formatted(prefix()) : "",
            prefixed(protection)));
  }

  /** The size of the first font, in points. */
  String fontSize() {
    return firstFont("sz", "11");
  }

  /** The name of the first font, escaped for an attribute. */
  String fontName() {
    return XmlText.attribute(firstFont("name", "Calibri"));
  }

  private String firstFont(String child, String otherwise) {
    return children("fonts", "font").stream()
        .findFirst()
        .flatMap(f -> f.child(child))
        .map(c -> c.get("val"))
        .orElse(otherwise);
  }

  private String prefixed(String xml) {
    String prefix = prefix();
    return prefix.isEmpty() ? xml : xml.replaceAll("<(/?)([a-zA-Z])", "<$1" + prefix + "$2");
  }

  private String prefix() {
    String prefix = markup.root().prefix();
    return prefix.isEmpty() ? "" : prefix + ":";
  }

  private int add(CellFormat format) {
    if (formats.isEmpty()) {
      formats.add(new CellFormat(0, 0, 0, 0, 0, "", ""));
    }
    return known.computeIfAbsent(
        format.key(),
        key -> {
          formats.add(format);
          return formats.size() - 1;
        });
  }

  private int numberFormat(String code) {
    if (code.isEmpty() || code.equals("General")) {
      return 0;
    }
    Integer builtIn = BuiltInFormats.number(code);
    return builtIn != null ? builtIn : numbers.computeIfAbsent(code, this::newNumberFormat);
  }

  private int newNumberFormat(String code) {
    int id = FIRST_OWN_FORMAT;
    while (codes.containsKey(id)) {
      id++;
    }
    codes.put(id, code);
    newNumberFormats.add(
        "<"
            + prefix()
            + "numFmt numFmtId=\""
            + id
            + "\" formatCode=\""
            + XmlText.attribute(code)
            + "\"/>");
    return id;
  }

  /** The changed part; null if nothing changed. */
  public byte[] changed() {
    ByteEdits edits = new ByteEdits(markup);
    if (!newNumberFormats.isEmpty()) {
      appendNumberFormats(edits);
    }
    pools.values().forEach(p -> p.appendTo(edits));
    if (formats.size() > oldFormats) {
      StringBuilder xml = new StringBuilder();
      formats.subList(oldFormats, formats.size()).forEach(f -> xml.append(xf(f)));
      appendTo(edits, "cellXfs", xml.toString(), formats.size() - oldFormats);
    }
    return edits.isEmpty() ? null : edits.apply();
  }

  private void appendNumberFormats(ByteEdits edits) {
    String xml = String.join("", newNumberFormats);
    Element root = markup.root();
    if (root.child("numFmts").isPresent()) {
      appendTo(edits, "numFmts", xml, newNumberFormats.size());
      return;
    }
    String tag = prefix() + "numFmts";
    String list = "<%s count=\"%d\">%s</%s>".formatted(tag, newNumberFormats.size(), xml, tag);
    if (root.children().isEmpty()) {
      edits.append(root, list);
    } else {
      edits.insertBefore(root.children().get(0), list);
    }
  }

  private void appendTo(ByteEdits edits, String list, String xml, int added) {
    Element parent =
        markup
            .root()
            .child(list)
            .orElseThrow(() -> new DamageException("its styles have no list " + list));
    edits.append(parent, xml, "count", Integer.toString(parent.children().size() + added));
  }

  private String xf(CellFormat f) {
    String tag = prefix() + "xf";
    String children = f.alignment() + f.protection();
    StringBuilder start = new StringBuilder("<").append(tag);
    attribute(start, "numFmtId", f.numberFormat());
    attribute(start, "fontId", f.font());
    attribute(start, "fillId", f.fill());
    attribute(start, "borderId", f.border());
    attribute(start, "xfId", f.parent());
    for (String each : List.of("NumberFormat", "Font", "Fill", "Border")) {
      attribute(start, "apply" + each, 1);
    }
    if (!f.alignment().isEmpty()) {
      attribute(start, "applyAlignment", 1);
    }
    if (!f.protection().isEmpty()) {
      attribute(start, "applyProtection", 1);
    }
    return children.isEmpty() ? start + "/>" : start + ">" + children + "</" + tag + ">";
  }

  private static void attribute(StringBuilder tag, String name, int value) {
    tag.append(' ').append(name).append("=\"").append(value).append('"');
  }
}

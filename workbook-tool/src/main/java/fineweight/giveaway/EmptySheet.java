package fineweight.giveaway;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.namespace.QName;
import org.apache.xmlbeans.XmlCursor;
import org.apache.xmlbeans.XmlObject;
import org.apache.xmlbeans.XmlOptions;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCfRule;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTConditionalFormatting;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTWorksheet;

/** What surrounds the cells of a sheet, sieved. */
final class EmptySheet {
  /** The children of a sheet that are taken along. */
  private static final Set<String> KEPT =
      Set.of(
          "sheetPr",
          "dimension",
          "sheetViews",
          "sheetFormatPr",
          "cols",
          "sheetData",
          "sheetProtection",
          "autoFilter",
          "mergeCells",
          "conditionalFormatting",
          "dataValidations",
          "printOptions",
          "pageMargins",
          "pageSetup",
          "headerFooter",
          "rowBreaks",
          "colBreaks",
          "ignoredErrors");

  /** What the others are to their owner; those that are not named here hold nothing of anybody. */
  private static final Map<String, String> WORDS =
      Map.of(
          "hyperlinks", "links",
          "protectedRanges", "areas with passwords",
          "scenarios", "scenarios",
          "customSheetViews", "views of other users",
          "oleObjects", "embedded objects",
          "controls", "form controls",
          "picture", "background picture",
          "extLst", "extras of newer programs (such as sparklines or slicers)",
          "sortState", "order of sorting");

  private static final String PLACES =
      "\\$?[A-Z]{0,3}\\$?[0-9]{0,7}(:\\$?[A-Z]{0,3}\\$?[0-9]{0,7})?"
          + "( \\$?[A-Z]{0,3}\\$?[0-9]{0,7}(:\\$?[A-Z]{0,3}\\$?[0-9]{0,7})?)*";

  /** The owner's program may write a prefix before every element. */
  private static final Pattern NO_ROWS = Pattern.compile("<([A-Za-z0-9_]+:)?sheetData/>");

  private static final Set<String> PLACE_NAMES =
      Set.of("ref", "sqref", "activeCell", "topLeftCell");
  private static final Set<String> MESSAGES =
      Set.of("prompt", "promptTitle", "error", "errorTitle");

  private final String sheet;
  private final FormulaRules formulas;
  private final LookRules looks;
  private final KeptWords words;
  private final Findings findings;

  EmptySheet(
      String sheet, FormulaRules formulas, LookRules looks, KeptWords words, Findings findings) {
    this.sheet = sheet;
    this.formulas = formulas;
    this.looks = looks;
    this.words = words;
    this.findings = findings;
  }

  /** Sieves the frame in place; its checks of cells are clean already. */
  void sieve(CTWorksheet worksheet, XmlObject document) {
    children(worksheet);
    conditions(worksheet);
    if (worksheet.isSetAutoFilter()) {
      String area = worksheet.getAutoFilter().getRef();
      worksheet.unsetAutoFilter();
      worksheet.addNewAutoFilter().setRef(area);
    }
    if (worksheet.isSetSheetProtection()) {
      try (XmlCursor cursor = worksheet.getSheetProtection().newCursor()) {
        cursor.removeAttribute(new QName("password"));
      }
      findings.left("sheet that stays protected, without a password", sheet);
    }
    if (worksheet.isSetPageSetup()) {
      try (XmlCursor cursor = worksheet.getPageSetup().newCursor()) {
        cursor.removeAttribute(new QName(NewPackage.RELATIONSHIPS, "id"));
      }
    }
    new SchemaSieve(
            Set.of("extLst", "filterColumn", "sortState"), Set.of("headerFooter"), this::free)
        .sieve(document);
  }

  private void children(CTWorksheet worksheet) {
    try (XmlCursor at = worksheet.newCursor()) {
      boolean more = at.toFirstChild();
      while (more) {
        String name = at.getName().getLocalPart();
        if (KEPT.contains(name)) {
          more = at.toNextSibling();
        } else {
          if (WORDS.containsKey(name)) {
            findings.removed(WORDS.get(name) + " on \"" + sheet + "\"");
          }
          at.removeXml();
          more = at.isStart() || at.toNextSibling();
        }
      }
    }
  }

  private void conditions(CTWorksheet worksheet) {
    for (int i = worksheet.sizeOfConditionalFormattingArray() - 1; i >= 0; i--) {
      CTConditionalFormatting all = worksheet.getConditionalFormattingArray(i);
      for (int rule = all.sizeOfCfRuleArray() - 1; rule >= 0; rule--) {
        Optional<String> objection = objection(all.getCfRuleArray(rule));
        if (objection.isPresent()) {
          findings.removed("coloured cells on \"" + sheet + "\" whose rule " + objection.get());
          all.removeCfRule(rule);
        }
      }
      if (all.sizeOfCfRuleArray() == 0) {
        worksheet.removeConditionalFormatting(i);
      }
    }
  }

  private Optional<String> objection(CTCfRule rule) {
    if (rule.isSetText() && !words.knows(rule.getText())) {
      return Optional.of("looks for the words \"" + rule.getText() + "\"");
    }
    for (String formula : rule.getFormulaList()) {
      boolean limit = formula.matches("-?[0-9.]{1,20}") || isKnownText(formula);
      Optional<String> objection = limit ? Optional.empty() : formulas.objection(formula);
      if (objection.isPresent()) {
        return objection;
      }
    }
    return Optional.empty();
  }

  private boolean isKnownText(String formula) {
    return formula.matches("\"[^\"]*\"") && words.knows(formula.substring(1, formula.length() - 1));
  }

  private String free(String element, String attribute, String value) {
    boolean place = PLACE_NAMES.contains(attribute) && value.matches(PLACES);
    boolean checked =
        element.equals("dataValidation") && MESSAGES.contains(attribute)
            || element.equals("cfRule") && attribute.equals("text")
            || element.startsWith("formula") && attribute.isEmpty();
    if (place || checked) {
      return value;
    }
    if (element.equals("cfvo") && attribute.equals("val")) {
      return value.matches("-?[0-9.]{1,20}") || formulas.objection(value).isEmpty() ? value : null;
    }
    boolean header = element.matches("(odd|even|first)(Header|Footer)");
    if (header && looks.isPlainHeader(value)) {
      return value;
    }
    if (header) {
      findings.removed("text in a header or footer on \"" + sheet + "\"");
    }
    return null;
  }

  /** The part with the rows at their place. */
  static byte[] bytes(XmlObject document, String rows) throws IOException {
    ByteArrayOutputStream frame = new ByteArrayOutputStream();
    document.save(frame, writing());
    String text = frame.toString(StandardCharsets.UTF_8);
    Matcher place = NO_ROWS.matcher(text);
    if (!place.find()) {
      throw new IOException("the sheet has no place for its rows");
    }
    return (text.substring(0, place.start())
            + "<sheetData xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\">"
            + rows
            + "</sheetData>"
            + text.substring(place.end()))
        .getBytes(StandardCharsets.UTF_8);
  }

  static XmlOptions writing() {
    return new XmlOptions()
        .setUseDefaultNamespace()
        .setSaveAggressiveNamespaces()
        .setSaveSuggestedPrefixes(Map.of(NewPackage.RELATIONSHIPS, "r"));
  }
}

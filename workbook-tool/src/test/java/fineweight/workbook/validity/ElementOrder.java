package fineweight.workbook.validity;

import fineweight.workbook.oracle.parts.XmlElement;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The sequence of children that the schema demands (ECMA-376 Part 1, sml.xsd). */
final class ElementOrder {
  static final List<String> WORKSHEET =
      List.of(
          ("sheetPr dimension sheetViews sheetFormatPr cols sheetData sheetCalcPr sheetProtection"
                  + " protectedRanges scenarios autoFilter sortState dataConsolidate"
                  + " customSheetViews mergeCells phoneticPr conditionalFormatting dataValidations"
                  + " hyperlinks printOptions pageMargins pageSetup headerFooter rowBreaks"
                  + " colBreaks customProperties cellWatches ignoredErrors smartTags drawing"
                  + " legacyDrawing legacyDrawingHF drawingHF picture oleObjects controls"
                  + " webPublishItems tableParts extLst")
              .split(" "));
  static final List<String> WORKBOOK =
      List.of(
          ("fileVersion fileSharing workbookPr workbookProtection bookViews sheets functionGroups"
                  + " externalReferences definedNames calcPr oleSize customWorkbookViews"
                  + " pivotCaches smartTagPr smartTagTypes webPublishing fileRecoveryPr"
                  + " webPublishObjects extLst")
              .split(" "));
  static final List<String> STYLES =
      List.of(
          ("numFmts fonts fills borders cellStyleXfs cellXfs cellStyles dxfs tableStyles colors"
                  + " extLst")
              .split(" "));
  static final List<String> TABLE =
      List.of("autoFilter sortState tableColumns tableStyleInfo extLst".split(" "));

  /** May stand more than once. */
  private static final Set<String> REPEATED =
      Set.of("conditionalFormatting", "fileRecoveryPr", "smartTagTypes");

  private ElementOrder() {}

  static void check(String part, XmlElement parent, List<String> order, List<String> findings) {
    int last = -1;
    Set<String> seen = new HashSet<>();
    for (XmlElement child : parent.children()) {
      int place = order.indexOf(child.name());
      if (place < 0) {
        continue;
      }
      if (place < last) {
        findings.add(part + ": " + child.name() + " stands too late");
      }
      if (!seen.add(child.name()) && !REPEATED.contains(child.name())) {
        findings.add(part + ": " + child.name() + " stands twice");
      }
      last = Math.max(last, place);
    }
  }

  /** That the attribute count, if there, is the number of children of that name. */
  static void checkCount(String part, XmlElement list, String child, List<String> findings) {
    String count = list.get("count");
    int real = list.all(child).size();
    if (!count.isEmpty() && Integer.parseInt(count) != real) {
      findings.add(part + ": " + list.name() + " says " + count + " but holds " + real);
    }
  }
}

package fineweight.workbook.oracle;

import static fineweight.workbook.oracle.Difference.Kind.ADDED;
import static fineweight.workbook.oracle.Difference.Kind.ATTRIBUTE;
import static fineweight.workbook.oracle.Difference.Kind.CELL;
import static fineweight.workbook.oracle.Difference.Kind.PART_GONE;
import static fineweight.workbook.oracle.Difference.Kind.PART_NEW;
import static fineweight.workbook.oracle.Difference.Kind.REMOVED;
import static fineweight.workbook.oracle.Difference.Kind.TEXT;
import static fineweight.workbook.oracle.Difference.PartRole.CALC_CHAIN;
import static fineweight.workbook.oracle.Difference.PartRole.CONTENT_TYPES;
import static fineweight.workbook.oracle.Difference.PartRole.OWN_SHEET;
import static fineweight.workbook.oracle.Difference.PartRole.SHARED_STRINGS;
import static fineweight.workbook.oracle.Difference.PartRole.SHEET;
import static fineweight.workbook.oracle.Difference.PartRole.STYLES;
import static fineweight.workbook.oracle.Difference.PartRole.TABLE;
import static fineweight.workbook.oracle.Difference.PartRole.WORKBOOK;
import static fineweight.workbook.oracle.Difference.PartRole.WORKBOOK_RELATIONS;

import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;

/**
 * Everything that a run may change in a workbook beside the cells that it was asked to change, each
 * with the reason. What is not here is a loss.
 */
enum AllowedDifference {
  OWN_CELL("the cells we were asked for", (d, c) -> c.cells().own(d)),

  STALE_RESULT(
      "the stored result of an owner's formula that depends on our cells would be out of date;"
          + " without it every office calculates anew",
      (d, c) -> d.is(SHEET, CELL) && c.cells().stale(d)),

  CALLED_RESULT(
      "the stored result of an owner's formula that calls our functions is brought up to date",
      (d, c) -> d.is(SHEET, CELL) && c.cells().renews(d)),

  ROW_FOR_OWN_CELL(
      "a row that had no cell yet gets one of ours, or loses the only ones, ours",
      (d, c) -> (d.is(SHEET, ADDED) || d.is(SHEET, REMOVED)) && c.cells().ownRow(d)),

  SPANS(
      "a hint for readers, wrong once a row gets longer",
      (d, c) -> d.is(SHEET, ATTRIBUTE) && d.path().contains("/row[") && at(d, "spans")),

  DIMENSION(
      "the used area, wrong once a column is added",
      (d, c) ->
          d.is(SHEET, ATTRIBUTE) && d.path().startsWith("/worksheet/dimension") && at(d, "ref")),

  OWN_COLUMN_WIDTH(
      "a new column needs its width", (d, c) -> d.role() == SHEET && c.structure().ownWidth(d)),

  FILTER_GROWS(
      "a filter over the whole list has to cover the list's new columns",
      (d, c) -> c.structure().filterGrows(d)),

  TABLE_GROWS(
      "a table has to cover the columns that are put beside it",
      (d, c) -> d.role() == TABLE && c.structure().tableGrows(d)),

  LIST_GROWS_DOWN(
      "a table, drop-down or conditional format that ended with a list has to cover the rows that"
          + " are put under it",
      (d, c) -> c.structure().growsDown(d)),

  CALC_CHAIN_GONE(
      "a cache of the order of calculation, which the office builds anew; a wrong entry makes it"
          + " offer a repair",
      (d, c) ->
          d.is(CALC_CHAIN, PART_GONE)
              || (d.is(WORKBOOK_RELATIONS, REMOVED)
                  && d.before().get("Type").endsWith("/calcChain"))
              || (d.is(CONTENT_TYPES, REMOVED)
                  && (d.before().get("ContentType").contains(".calcChain+xml")
                      || d.before().get("PartName").endsWith("/calcChain.xml")))),

  FULL_CALCULATION(
      "the office shall calculate all formulas when it opens the file",
      (d, c) -> d.role() == WORKBOOK && fullCalculation(d)),

  OWN_SHEET_PART("a sheet of our own", (d, c) -> d.role() == OWN_SHEET),

  OWN_SHEET_LISTED(
      "a sheet of our own stands behind all the owner's, or is taken out again",
      (d, c) ->
          d.path().startsWith("/workbook/sheets[0]/sheet[")
              && c.expected().ownsSheet(d.element().get("name"))
              && (d.is(WORKBOOK, REMOVED) || (d.is(WORKBOOK, ADDED) && d.atEnd()))),

  OWN_NAME(
      "defined names of ours mark our columns and the spot cells",
      (d, c) -> d.role() == WORKBOOK && ownName(d, c)),

  NEW_PART_KNOWN(
      "a part of ours needs its relationship and content type",
      (d, c) -> c.structure().newPartKnown(d)),

  STYLE_APPENDED(
      "a number format that the workbook did not have yet; no older style changes its number",
      (d, c) -> d.role() == STYLES && (d.kind() == PART_NEW || styleAppended(d))),

  STYLES_COMPLETED(
      "a list of formats that the workbook does without has to be there before one of ours can be",
      (d, c) -> d.is(STYLES, ADDED) && styleList(d)),

  TEXT_APPENDED(
      "new texts behind all old ones; no older text changes its number",
      (d, c) -> d.role() == SHARED_STRINGS && (d.kind() == PART_NEW || textAppended(d)));

  private static final Set<String> STYLE_LISTS =
      Set.of("numFmts", "fonts", "fills", "borders", "cellXfs");

  private final String reason;
  private final BiPredicate<Difference, Comparison> covers;

  AllowedDifference(String reason, BiPredicate<Difference, Comparison> covers) {
    this.reason = reason;
    this.covers = covers;
  }

  String reason() {
    return reason;
  }

  static Optional<AllowedDifference> of(Difference difference, Comparison comparison) {
    return Arrays.stream(values())
        .filter(each -> each.covers.test(difference, comparison))
        .findFirst();
  }

  private static boolean at(Difference difference, String attribute) {
    return difference.attribute().equals(attribute);
  }

  private static boolean fullCalculation(Difference d) {
    if (d.path().equals("/workbook/calcPr[0]") && d.kind() == ADDED) {
      return Set.of("calcId", "fullCalcOnLoad").containsAll(d.after().attributes().keySet());
    }
    return d.path().equals("/workbook/calcPr[0]")
        && d.kind() == ATTRIBUTE
        && at(d, "fullCalcOnLoad")
        && d.afterValue().equals("1");
  }

  private static boolean ownName(Difference d, Comparison comparison) {
    boolean comesOrGoes = d.kind() == ADDED || d.kind() == REMOVED;
    if (d.path().equals("/workbook/definedNames[0]") && comesOrGoes) {
      return d.element().children().stream().allMatch(comparison.expected()::ownsName);
    }
    return d.path().startsWith("/workbook/definedNames[0]/definedName[")
        && (comesOrGoes || d.kind() == TEXT || at(d, "hidden"))
        && comparison.expected().ownsName(d.element());
  }

  private static boolean styleAppended(Difference d) {
    String[] steps = d.path().split("/");
    String list = steps.length > 2 ? steps[2].replaceAll("\\[.*", "") : "";
    return switch (steps.length) {
      case 3 -> STYLE_LISTS.contains(list) && d.kind() == ATTRIBUTE && at(d, "count");
      case 4 -> STYLE_LISTS.contains(list) && d.kind() == ADDED && d.atEnd();
      default -> false;
    };
  }

  private static boolean styleList(Difference d) {
    String name = d.after().name();
    return d.path().equals("/styleSheet/" + name + "[0]")
        && (STYLE_LISTS.contains(name) || name.equals("cellStyleXfs"));
  }

  private static boolean textAppended(Difference d) {
    boolean count = at(d, "count") || at(d, "uniqueCount");
    return d.path().equals("/sst")
        ? d.kind() == ATTRIBUTE && count
        : d.path().matches("/sst/si\\[\\d+]") && d.kind() == ADDED && d.atEnd();
  }
}

package fineweight.workbook.oracle;

import fineweight.workbook.CellPlace;
import fineweight.workbook.oracle.Difference.Kind;
import fineweight.workbook.oracle.Difference.PartRole;
import fineweight.workbook.oracle.parts.Places;
import fineweight.workbook.oracle.parts.Places.Area;
import fineweight.workbook.oracle.parts.XmlElement;
import java.util.Set;

/** Judges differences in what stands around the cells: widths, filters, tables, new parts. */
final class StructureJudge {
  private static final String AREA = "[A-Z]{1,3}[0-9]{1,7}(:[A-Z]{1,3}[0-9]{1,7})?";

  private final Expected expected;
  private final Set<String> newParts;
  private final Set<String> goneOwnParts;

  StructureJudge(Expected expected, Set<String> newParts, Set<String> goneOwnParts) {
    this.expected = expected;
    this.newParts = newParts;
    this.goneOwnParts = goneOwnParts;
  }

  boolean ownWidth(Difference d) {
    if (!d.path().startsWith("/worksheet/cols[0]") || d.kind() == Kind.ORDER) {
      return false;
    }
    if (d.element().name().equals("cols")) {
      return (d.kind() == Kind.ADDED || d.kind() == Kind.REMOVED)
          && d.element().children().stream().allMatch(each -> ownColumn(d.sheet(), each));
    }
    return ownColumn(d.sheet(), d.element());
  }

  private boolean ownColumn(String sheet, XmlElement col) {
    return col.get("min").equals(col.get("max"))
        && expected.ownsColumn(sheet, Integer.parseInt(col.get("min")) - 1);
  }

  /** The sheet's filter and the hidden name that goes with it, both only to the right. */
  boolean filterGrows(Difference d) {
    if (d.is(PartRole.SHEET, Kind.ATTRIBUTE) && d.path().equals("/worksheet/autoFilter[0]")) {
      return d.attribute().equals("ref") && grows(d.sheet(), d.beforeValue(), d.afterValue());
    }
    if (d.is(PartRole.WORKBOOK, Kind.TEXT)
        && d.path().startsWith("/workbook/definedNames[0]/definedName[_xlnm._FilterDatabase")) {
      String before = d.before().text();
      String after = d.after().text();
      int cut = before.lastIndexOf('!') + 1;
      String sheet = before.substring(0, Math.max(0, cut - 1)).replaceAll("^'|'$", "");
      return cut > 0
          && after.startsWith(before.substring(0, cut))
          && grows(
              sheet.replace("''", "'"),
              before.substring(cut).replace("$", ""),
              after.substring(cut).replace("$", ""));
    }
    return false;
  }

  boolean tableGrows(Difference d) {
    boolean reference = d.kind() == Kind.ATTRIBUTE && d.attribute().equals("ref");
    if (reference && (d.path().equals("/table") || d.path().equals("/table/autoFilter[0]"))) {
      return grows(d.sheet(), d.beforeValue(), d.afterValue());
    }
    if (d.path().equals("/table/tableColumns[0]")) {
      return d.kind() == Kind.ATTRIBUTE && d.attribute().equals("count");
    }
    if (d.path().matches("/table/tableColumns\\[0]/tableColumn\\[\\d+]")) {
      // That names are unique and as many as columns is the validator's business.
      return (d.kind() == Kind.ADDED && d.atEnd()) || d.kind() == Kind.REMOVED;
    }
    return d.path().endsWith("/calculatedColumnFormula[0]") && d.kind() == Kind.REMOVED;
  }

  /** A table, drop-down or conditional format that ended with a list ends with its new last row. */
  boolean growsDown(Difference d) {
    boolean table = d.path().equals("/table") || d.path().equals("/table/autoFilter[0]");
    boolean ofTable = d.role() == PartRole.TABLE && table && d.attribute().equals("ref");
    boolean ofSheet =
        d.role() == PartRole.SHEET
            && d.attribute().equals("sqref")
            && d.path()
                .matches(
                    "/worksheet/(conditionalFormatting\\[\\d+]|dataValidations\\[0]/dataValidation\\[\\d+])");
    if (d.kind() != Kind.ATTRIBUTE || !ofTable && !ofSheet) {
      return false;
    }
    String[] before = d.beforeValue().strip().split("\\s+");
    String[] after = d.afterValue().strip().split("\\s+");
    boolean good = before.length == after.length;
    for (int i = 0; good && i < before.length; i++) {
      good = before[i].equals(after[i]) || longer(d.sheet(), before[i], after[i]);
    }
    return good;
  }

  private boolean longer(String sheet, String before, String after) {
    if (!before.matches(AREA) || !after.matches(AREA)) {
      return false;
    }
    Area old = Places.area(sheet, before);
    Area now = Places.area(sheet, after);
    boolean own = old.lastRow() < now.lastRow() && old.firstRow() == now.firstRow();
    for (int row = old.lastRow(); row <= now.lastRow() + 1; row++) {
      boolean isNew = row > old.lastRow() && row <= now.lastRow();
      own &= expected.owns(new CellPlace(sheet, row, old.firstColumn())) == isNew;
    }
    return own && old.firstColumn() == now.firstColumn() && old.lastColumn() == now.lastColumn();
  }

  /** Whether one area is the other plus or minus columns of ours at the right. */
  private boolean grows(String sheet, String before, String after) {
    if (!before.matches(AREA) || !after.matches(AREA)) {
      return false;
    }
    Area old = Places.area(sheet, before);
    Area now = Places.area(sheet, after);
    boolean sameElse =
        old.firstRow() == now.firstRow()
            && old.lastRow() == now.lastRow()
            && old.firstColumn() == now.firstColumn();
    int from = Math.min(old.lastColumn(), now.lastColumn()) + 1;
    int to = Math.max(old.lastColumn(), now.lastColumn());
    boolean own = true;
    for (int column = from; column <= to; column++) {
      own &= expected.ownsColumn(sheet, column);
    }
    return sameElse && own;
  }

  boolean newPartKnown(Difference d) {
    if (d.kind() != Kind.ADDED && d.kind() != Kind.REMOVED) {
      return false;
    }
    Set<String> parts = d.kind() == Kind.ADDED ? newParts : goneOwnParts;
    return switch (d.role()) {
      case WORKBOOK_RELATIONS -> {
        String target = d.element().get("Target");
        yield parts.stream().anyMatch(each -> ("/" + each).endsWith("/" + plain(target)));
      }
      case CONTENT_TYPES ->
          d.element().name().equals("Override")
              && parts.contains(plain(d.element().get("PartName")));
      default -> false;
    };
  }

  private static String plain(String target) {
    return target.startsWith("/") ? target.substring(1) : target;
  }
}

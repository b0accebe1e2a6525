package fineweight.workbook.oracle;

import fineweight.workbook.CellPlace;
import fineweight.workbook.oracle.Difference.Kind;
import fineweight.workbook.oracle.Difference.PartRole;
import fineweight.workbook.oracle.parts.Places;
import fineweight.workbook.oracle.parts.XmlElement;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Judges differences between cells: ours, dependent on ours, or a loss. */
final class CellJudge {
  private final Expected expected;
  private final Set<CellPlace> possible;
  private final Set<CellPlace> changedOwn = new HashSet<>();
  private final Set<CellPlace> dropped = new HashSet<>();
  private final Set<CellPlace> calling;
  private final Set<CellPlace> renewed = new HashSet<>();

  /**
   * @param possible formula cells that may depend on ours
   * @param calling cells with the result of a formula that calls our functions
   */
  CellJudge(Expected expected, Set<CellPlace> possible, Set<CellPlace> calling) {
    this.expected = expected;
    this.possible = possible;
    this.calling = calling;
  }

  /** Places of ours whose content changed, as far as the judge has seen them. */
  Set<CellPlace> changedOwn() {
    return changedOwn;
  }

  /** Formula cells of the owner whose stored result was taken out. */
  Set<CellPlace> dropped() {
    return dropped;
  }

  /** Cells that call our functions and got another result. */
  Set<CellPlace> renewed() {
    return renewed;
  }

  boolean calls(CellPlace place) {
    return calling.contains(place);
  }

  /** Whether nothing but the stored result is another, and the formula calls our functions. */
  boolean renews(Difference d) {
    CellPlace place = place(d, d.before());
    boolean onlyResult = withoutResult(d.before()).equals(withoutResult(d.after()));
    boolean there = d.after().child("v").isPresent();
    if (!onlyResult || !there || !calling.contains(place)) {
      return false;
    }
    renewed.add(place);
    return expected.listed().contains(place);
  }

  boolean own(Difference d) {
    boolean cell = d.kind() == Kind.CELL || isCell(d);
    if (d.role() != PartRole.SHEET || !cell) {
      return false;
    }
    CellPlace place = place(d, d.element());
    if (!expected.owns(place)) {
      return false;
    }
    boolean content = !content(d.before()).equals(content(d.after()));
    if (content) {
      changedOwn.add(place);
    }
    return !content || !expected.exact() || expected.listed().contains(place);
  }

  boolean ownRow(Difference d) {
    if (!d.path().matches("/worksheet/sheetData\\[0]/row\\[\\d+]")) {
      return false;
    }
    boolean bare = Set.of("r", "spans").containsAll(d.element().attributes().keySet());
    List<XmlElement> cells = d.element().children();
    boolean allOwn =
        cells.stream().allMatch(each -> each.name().equals("c") && expected.owns(place(d, each)));
    if (bare && allOwn) {
      cells.stream()
          .filter(each -> !content(each).isEmpty())
          .forEach(each -> changedOwn.add(place(d, each)));
    }
    return bare && allOwn && !cells.isEmpty();
  }

  /** Whether nothing but the stored result is gone, and the cell may depend on ours. */
  boolean stale(Difference d) {
    CellPlace place = place(d, d.before());
    boolean inArray = d.before().child("f").isEmpty();
    boolean onlyResult = withoutResult(d.before()).equals(withoutResult(d.after()));
    boolean gone = d.after().child("v").isEmpty() && d.before().child("v").isPresent();
    if (!onlyResult || !gone || !possible.contains(place)) {
      return false;
    }
    if (!inArray) {
      dropped.add(place);
    }
    return inArray || expected.listed().contains(place);
  }

  private static XmlElement withoutResult(XmlElement cell) {
    Map<String, String> attributes = new TreeMap<>(cell.attributes());
    attributes.remove("t");
    return cell.with(
        attributes, cell.children().stream().filter(each -> !each.name().equals("v")).toList());
  }

  private static boolean isCell(Difference d) {
    return (d.kind() == Kind.ADDED || d.kind() == Kind.REMOVED)
        && d.path().contains("/row[")
        && d.element().name().equals("c");
  }

  private static CellPlace place(Difference d, XmlElement cell) {
    return Places.place(d.sheet(), cell.get("r"));
  }

  /** What a cell holds, its look left out; an empty list for nothing. */
  private static List<Object> content(XmlElement cell) {
    if (cell == null || cell.children().isEmpty()) {
      return List.of();
    }
    return List.of(cell.get("t"), cell.children());
  }
}

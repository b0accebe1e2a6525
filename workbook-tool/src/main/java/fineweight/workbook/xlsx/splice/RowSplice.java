package fineweight.workbook.xlsx.splice;

import fineweight.workbook.CellChange;
import fineweight.workbook.CellContent;
import fineweight.workbook.CellPlace;
import fineweight.workbook.CellValue;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.xlsx.sheet.CellCompare;
import fineweight.workbook.xlsx.sheet.CellWriter;
import fineweight.workbook.xlsx.sheet.CellXml;
import fineweight.workbook.xlsx.sheet.RowTag;
import fineweight.workbook.xlsx.xml.StartTag;
import java.io.IOException;
import java.util.BitSet;
import java.util.List;
import java.util.function.Consumer;

/** Puts our cells into the rows. Everything that is not ours is copied. */
final class RowSplice {
  private static final String RECALCULATED = "(recalculated when opened)";

  private final SheetPlan plan;
  private final Cutting cutting;
  private final OwnersResults results;
  private final Consumer<CellChange> changes;
  private final Outcome outcome;
  private final CellCompare compare;
  private final GroupGuard guard;
  private final List<ColumnTarget> targets;
  private final RowWishes rowWishes;
  private final Wish[] wishes;
  private final BitSet ours = new BitSet();

  private final boolean seesAll;
  private final Leavings leavings;
  private String prefix = "";
  private CellWriter writer;
  private CellLooks looks;
  private RowTag row;
  private int firstFilled = Integer.MAX_VALUE;
  private int lastFilled = -1;
  private int nextRow;
  private int nextTarget;
  private boolean openedRow;
  private boolean keptAny;
  private boolean justDropped;

  /**
   * @param changes null if nobody listens
   * @param rowWishes is asked for each row once
   */
  RowSplice(
      SheetPlan plan,
      Cutting cutting,
      OwnersResults results,
      Consumer<CellChange> changes,
      Outcome outcome,
      RowWishes rowWishes) {
    this.plan = plan;
    this.cutting = cutting;
    this.results = results;
    this.changes = changes;
    this.outcome = outcome;
    this.rowWishes = rowWishes;
    compare = new CellCompare(plan.sheet(), plan.reading());
    guard = new GroupGuard(plan.sheet(), plan.targets());
    targets = plan.targets();
    wishes = new Wish[targets.size()];
    leavings = new Leavings(cutting);
    seesAll = plan.facts().grouped() || !results.isEmpty();
    targets.forEach(t -> ours.set(t.column()));
    for (ColumnTarget target : targets) {
      if (!target.removes()) {
        firstFilled = Math.min(firstFilled, Math.min(target.headerRow(), target.firstRow()));
        lastFilled = Math.max(lastFilled, Math.max(target.headerRow(), target.lastRow()));
      }
    }
  }

  void begin(String namespacePrefix, ColumnWidths widths) {
    prefix = namespacePrefix;
    writer = new CellWriter(plan.sheet(), prefix);
    looks = new CellLooks(plan.reading().styles(), widths);
  }

  String tag(String name) {
    return prefix.isEmpty() ? name : prefix + ":" + name;
  }

  boolean mayWrite() {
    return targets.stream().anyMatch(t -> !t.removes());
  }

  boolean touched() {
    return outcome.touched;
  }

  /** Whether cells beside our columns matter for what stands in them. */
  boolean seesAll() {
    return seesAll;
  }

  boolean wants(int column) {
    return seesAll || ours.get(column);
  }

  boolean reads(CellXml cell) {
    return ours.get(cell.column()) || results.concerns(cell.row(), cell.column());
  }

  void row(RowTag tag) throws IOException, WorkbookRefusal {
    leavings.settleRow(tag.referenced());
    missingRows(tag.index(), tag.start());
    row = tag;
    boolean writes = makeWishes(tag.index());
    looks.beginRow(tag.style());
    keptAny = false;
    justDropped = false;
    openedRow = tag.empty() && writes;
    if (writes && cutting.isKept()) {
      String old = cutting.text(tag.start(), tag.end());
      String changed = Spans.with(openedRow ? StartTag.opened(old) : old, targets, wishes);
      if (!changed.equals(old)) {
        cutting.replace(tag.start(), tag.end(), changed);
      }
    }
    nextRow = tag.index() + 1;
  }

  private boolean makeWishes(int index) {
    rowWishes.fill(index, wishes);
    boolean writes = false;
    for (Wish wish : wishes) {
      writes |= wish != null && wish.writes();
    }
    nextTarget = 0;
    return writes;
  }

  /** Rows that the sheet does not have yet, up to one that it has. */
  private void missingRows(int before, long position) throws IOException, WorkbookRefusal {
    for (int i = Math.max(nextRow, firstFilled); i < before && i <= lastFilled; i++) {
      missingRow(i, position);
    }
  }

  private void missingRow(int index, long position) throws IOException, WorkbookRefusal {
    if (!makeWishes(index)) {
      return;
    }
    cutting.copyToTag(position);
    cutting.write("<" + tag("row") + " r=\"" + (index + 1) + "\">");
    row = new RowTag(index, position, position, false, true, -1);
    openedRow = false;
    looks.beginRow(-1);
    ourCellsBefore(Integer.MAX_VALUE, position);
    cutting.write("</" + tag("row") + ">");
  }

  private void ourCellsBefore(int column, long position) throws IOException, WorkbookRefusal {
    for (; nextTarget < wishes.length; nextTarget++) {
      ColumnTarget target = targets.get(nextTarget);
      if (target.column() >= column) {
        return;
      }
      Wish wish = wishes[nextTarget];
      if (wish != null && wish.writes()) {
        guard.refuseInside(row.index(), target.column());
        leavings.drop();
        if (!openedRow) {
          cutting.copyToTag(position);
        }
        if (wish.isFormatOnly()) {
          format(target.column(), wish);
        } else {
          put(target.column(), looks.forNew(target.column(), wish), wish, "", false);
        }
      }
    }
  }

  private void put(int column, int style, Wish wish, String before, boolean wasFormula)
      throws IOException, WorkbookRefusal {
    boolean isFormula = wish.content() instanceof CellContent.Formula;
    if (cutting.isKept()) {
      cutting.write(writer.cell(row.index(), column, style, wish.content()));
    }
    outcome.formulaWritten |= isFormula;
    outcome.formulaGone |= wasFormula;
    outcome.wrote(row.index(), column);
    change(column, before, changes == null ? "" : CellCompare.words(wish.content()));
    looks.passed(style);
    keptAny = true;
  }

  /** A cell with nothing but a look changes no content and is not told. */
  private void format(int column, Wish wish) throws IOException, WorkbookRefusal {
    cutting.write(writer.cell(row.index(), column, wish.style(), wish.content()));
    outcome.touched = true;
    outcome.wrote(row.index(), column);
    looks.passed(wish.style());
    keptAny = true;
  }

  private void change(int column, String before, String after) {
    outcome.changed(row.index(), column);
    if (changes != null) {
      CellPlace place = new CellPlace(plan.sheet(), row.index(), column);
      changes.accept(new CellChange(place, before, after));
    }
  }

  /** Made only for somebody who listens. */
  private String words(CellXml cell) {
    return changes == null ? "" : compare.words(cell);
  }

  void cell(CellXml cell) throws IOException, WorkbookRefusal {
    if (isPassedBy(cell.column())) {
      pass(cell);
      return;
    }
    ourCellsBefore(cell.column(), cell.start());
    Wish wish = null;
    if (nextTarget < wishes.length && targets.get(nextTarget).column() == cell.column()) {
      wish = wishes[nextTarget++];
    }
    if (justDropped && !cell.referenced()) {
      throw new WorkbookRefusal(
          WorkbookRefusal.Kind.UNSUPPORTED,
          "Cell %s does not say where it stands, so the one before it cannot be taken out."
              .formatted(new CellPlace(plan.sheet(), cell.row(), cell.column())));
    }
    justDropped = false;
    if (wish == null || wish.content() != null && compare.same(cell, wish.content())) {
      keep(cell);
    } else if (wish.content() == null) {
      takeOut(cell);
    } else {
      guard.see(cell, true);
      String before = words(cell);
      leavings.drop();
      cutting.copyToTag(cell.start());
      cutting.dropTo(cell.end());
      put(cell.column(), cell.style(), wish, before, cell.isFormula());
    }
  }

  /** Whether nothing is to be done here, nor was anything just before. */
  private boolean isPassedBy(int column) {
    boolean before = nextTarget == wishes.length || column < targets.get(nextTarget).column();
    return before && !seesAll && !justDropped && leavings.isEmpty();
  }

  private void pass(CellXml cell) {
    keptAny = true;
    outcome.lastKeptColumn = Math.max(outcome.lastKeptColumn, cell.column());
    looks.passed(cell.style());
  }

  private void keep(CellXml cell) throws IOException, WorkbookRefusal {
    guard.see(cell, false);
    leavings.drop();
    pass(cell);
    CellValue fresh = results.fresh(cell.row(), cell.column());
    if (fresh != null) {
      put(cell, fresh);
    } else if (cell.hasValue() && results.drops(cell.row(), cell.column())) {
      String before = words(cell);
      String tag = cutting.text(cell.start(), cell.tagEnd());
      cutting.replace(cell.start(), cell.tagEnd(), StartTag.without(tag, "t"));
      cutting.copyToTag(cell.valueStart());
      cutting.dropTo(cell.valueEnd());
      change(cell.column(), before, RECALCULATED);
    }
  }

  /** The formula stays and gets another result. */
  private void put(CellXml cell, CellValue fresh) throws IOException {
    String before = words(cell);
    StoredResult.put(cutting, cell, fresh, prefix);
    change(cell.column(), before, changes == null ? "" : compare.words(cell, fresh));
  }

  private void takeOut(CellXml cell) throws IOException, WorkbookRefusal {
    guard.see(cell, true);
    outcome.formulaGone |= cell.isFormula();
    outcome.touched = true;
    if (!cell.isBlank()) {
      change(cell.column(), words(cell), "");
    }
    if (cell.referenced()) {
      leavings.add(cell.start(), cell.end());
      justDropped = true;
    } else {
      leavings.drop();
      cutting.replace(cell.start(), cell.end(), "<" + tag("c") + "/>");
      keptAny = true;
    }
  }

  void rowEnd(long start, long end) throws IOException, WorkbookRefusal {
    ourCellsBefore(Integer.MAX_VALUE, start);
    if (openedRow) {
      cutting.write("</" + tag("row") + ">");
    } else if (!keptAny && leavings.areAllOf(row, start)) {
      leavings.keepForNow(row.start(), end);
      return;
    } else {
      leavings.drop();
    }
    cutting.settle(end);
  }

  void end(long position) throws IOException, WorkbookRefusal {
    leavings.settleRow(true);
    missingRows(Integer.MAX_VALUE, position);
  }

  void finish() throws WorkbookRefusal {
    guard.finish();
  }
}

package fineweight.workbook.xls;

import fineweight.workbook.NamedCell;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import org.apache.poi.hssf.record.NameRecord;
import org.apache.poi.hssf.usermodel.HSSFName;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;

/**
 * Defined names. POI neither reads nor calculates a formula with a hidden name in it: while an edit
 * is made, none is hidden.
 */
final class XlsNames {
  private final HSSFWorkbook workbook;
  private final XlsChanges changes;

  private final Set<NameRecord> hidden = Collections.newSetFromMap(new IdentityHashMap<>());

  /** Shows all names until {@link #hideAgain}. */
  XlsNames(HSSFWorkbook workbook, XlsChanges changes) {
    this.workbook = workbook;
    this.changes = changes;
    for (HSSFName name : workbook.getAllNames()) {
      if (name.isHidden() && !name.isFunctionName()) {
        hidden.add(record(name));
        record(name).setHidden(false);
      }
    }
  }

  void hideAgain() {
    hidden.forEach(record -> record.setHidden(true));
  }

  private NameRecord record(HSSFName name) {
    return workbook.getNameRecord(workbook.getAllNames().indexOf(name));
  }

  /** All of them but functions of add-ins, which refer to nothing. */
  static List<NamedCell> all(HSSFWorkbook workbook) {
    List<NamedCell> names = new ArrayList<>();
    for (HSSFName name : workbook.getAllNames()) {
      if (!name.isFunctionName()) {
        names.add(new NamedCell(name.getNameName(), refersTo(name), name.isHidden()));
      }
    }
    return List.copyOf(names);
  }

  private static String refersTo(HSSFName name) {
    String formula = name.getRefersToFormula();
    return formula == null ? "" : formula;
  }

  void put(NamedCell wanted) {
    HSSFName name = ofWorkbook(wanted.name());
    String before = name == null ? "" : refersTo(name);
    if (name == null) {
      name = workbook.createName();
      name.setNameName(wanted.name());
    }
    name.setRefersToFormula(wanted.refersTo());
    boolean otherwiseShown =
        wanted.hidden() ? hidden.add(record(name)) : hidden.remove(record(name));
    if (otherwiseShown || !before.equals(refersTo(name))) {
      changes.other();
    }
  }

  void remove(String wanted) {
    HSSFName name = ofWorkbook(wanted);
    if (name != null) {
      hidden.remove(record(name));
      workbook.removeName(name);
      changes.other();
    }
  }

  /** One that holds in the whole workbook; a sheet may have its own of the same name. */
  private HSSFName ofWorkbook(String wanted) {
    for (HSSFName name : workbook.getAllNames()) {
      if (name.getSheetIndex() == -1 && wanted.equalsIgnoreCase(name.getNameName())) {
        return name;
      }
    }
    return null;
  }
}

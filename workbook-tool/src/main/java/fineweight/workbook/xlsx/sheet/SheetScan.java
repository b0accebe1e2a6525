package fineweight.workbook.xlsx.sheet;

import fineweight.workbook.SheetLayout.Area;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.xlsx.part.CellRef;
import fineweight.workbook.xlsx.xml.DamageException;
import fineweight.workbook.xlsx.xml.PlainUtf8;
import fineweight.workbook.xlsx.xml.XmlCursor;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** Looks over a whole sheet and refuses what is broken in it. */
public final class SheetScan implements SheetVisitor {
  private final String sheet;
  private final CellReading reading;
  private final Consumer<CellXml> formulaCells;
  private final CellMap map;
  private final List<Area> merged = new ArrayList<>();
  private final List<String> tables = new ArrayList<>();
  private int lastRow = -1;
  private int lastColumn = -1;
  private long formulas;
  private boolean grouped;
  private boolean isProtected;

  private SheetScan(
      String sheet, CellReading reading, Consumer<CellXml> formulaCells, CellMap map) {
    this.sheet = sheet;
    this.reading = reading;
    this.formulaCells = formulaCells;
    this.map = map;
  }

  /**
   * @param formulaCells is shown each cell with a formula; it may keep it until the next one only
   * @param map a new one, to be filled
   */
  public static SheetFacts scan(
      String sheet,
      String part,
      InputStream raw,
      CellReading reading,
      Consumer<CellXml> formulaCells,
      CellMap map)
      throws IOException, WorkbookRefusal {
    SheetScan scan = new SheetScan(sheet, reading, formulaCells, map);
    SheetWalk.walk(sheet, part, PlainUtf8.of(raw), scan);
    return new SheetFacts(
        scan.lastRow,
        scan.lastColumn,
        scan.formulas,
        scan.grouped,
        scan.isProtected,
        List.copyOf(scan.merged),
        List.copyOf(scan.tables));
  }

  @Override
  public void element(XmlCursor at) {
    if (at.name().equals("sheetProtection")) {
      String on = at.attribute("sheet");
      isProtected = "1".equals(on) || "true".equals(on);
    }
  }

  @Override
  public void child(String parent, XmlCursor at) {
    if (parent.equals("mergeCells") && at.name().equals("mergeCell")) {
      Area area = CellRef.area(at.attribute("ref"));
      if (area == null) {
        throw new DamageException("sheet \"" + sheet + "\" merges cells that it does not name");
      }
      merged.add(area);
    } else if (parent.equals("tableParts")) {
      var reader = at.attributes();
      for (int i = 0; i < reader.getAttributeCount(); i++) {
        if (reader.getAttributeLocalName(i).equals("id")) {
          tables.add(reader.getAttributeValue(i));
        }
      }
    }
  }

  /** Only the numbers of shared texts are checked. */
  @Override
  public boolean reads(CellXml cell) {
    return cell.type.equals("s");
  }

  @Override
  public boolean readsFormulas() {
    return true;
  }

  @Override
  public void rowsBegin(XmlCursor at, boolean empty) {
    map.begin(at.end());
  }

  @Override
  public void row(RowTag row) {
    map.row(row);
  }

  @Override
  public void rowEnd(long start, long end) {
    map.rowEnd(start, end);
  }

  @Override
  public void rowsEnd(long start, long end) {
    map.end(start);
  }

  @Override
  public void cell(CellXml cell) {
    reading.check(sheet, cell);
    map.cell(cell);
    if (cell.formula) {
      formulas++;
      grouped |= !cell.formulaKind.equals("normal");
      formulaCells.accept(cell);
    }
    lastRow = cell.row;
    lastColumn = Math.max(lastColumn, cell.column);
  }
}

package fineweight.workbook.xlsx.sheet;

import fineweight.workbook.Cell;
import fineweight.workbook.CellPlace;
import fineweight.workbook.CellValue;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.xlsx.xml.PlainUtf8;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntPredicate;

/** Gives the wanted cells of a sheet row by row. */
public final class CellStream implements SheetVisitor {
  private final String sheet;
  private final CellReading reading;
  private final IntPredicate columns;
  private final int lastRow;
  private final Consumer<List<Cell>> rows;
  private List<Cell> cells = new ArrayList<>();
  private boolean done;
  private boolean beyond;

  private CellStream(
      String sheet,
      CellReading reading,
      IntPredicate columns,
      int lastRow,
      Consumer<List<Cell>> rows) {
    this.sheet = sheet;
    this.reading = reading;
    this.columns = columns;
    this.lastRow = lastRow;
    this.rows = rows;
  }

  public static void read(
      String sheet,
      String part,
      InputStream raw,
      CellReading reading,
      IntPredicate columns,
      int lastRow,
      Consumer<List<Cell>> rows,
      CellMap map)
      throws IOException, WorkbookRefusal {
    SheetWalk.walk(
        sheet,
        part,
        PlainUtf8.of(raw),
        new CellStream(sheet, reading, columns, lastRow, rows),
        map);
  }

  @Override
  public void row(RowTag row) {
    beyond = row.index() > lastRow;
    done = row.index() >= lastRow;
  }

  @Override
  public boolean wants(int column) {
    return !beyond && columns.test(column);
  }

  @Override
  public void cell(CellXml cell) {
    if (!wants(cell.column)) {
      return;
    }
    CellValue value = reading.value(sheet, cell);
    if (value != CellValue.BLANK || cell.formula) {
      cells.add(
          new Cell(
              new CellPlace(sheet, cell.row, cell.column),
              value,
              cell.formula ? Optional.of(cell.formulaText) : Optional.empty()));
    }
  }

  @Override
  public void rowEnd(long start, long end) {
    if (!cells.isEmpty()) {
      rows.accept(cells);
      cells = new ArrayList<>();
    }
  }

  @Override
  public boolean done() {
    return done;
  }
}

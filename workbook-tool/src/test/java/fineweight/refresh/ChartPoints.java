package fineweight.refresh;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSource;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The charts of a workbook as another library reads them. */
final class ChartPoints {
  private final XSSFWorkbook workbook;

  ChartPoints(XSSFWorkbook workbook) {
    this.workbook = workbook;
  }

  /** Titles of the charts on a sheet, in the order of the drawing. */
  List<String> titles(String sheet) {
    return charts(workbook.getSheet(sheet)).stream()
        .map(chart -> chart.getTitleText().getString())
        .toList();
  }

  /** The stored values of one series. */
  List<Double> values(String sheet, int chart, int series) {
    XDDFDataSource<?> source =
        charts(workbook.getSheet(sheet))
            .get(chart)
            .getChartSeries()
            .get(0)
            .getSeries(series)
            .getValuesData();
    List<Double> values = new ArrayList<>();
    for (int i = 0; i < source.getPointCount(); i++) {
      values.add(((Number) source.getPointAt(i)).doubleValue());
    }
    return values;
  }

  /** Compares every point of every chart with the cell that it refers to, and counts them. */
  int compareAll() {
    int points = 0;
    for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
      for (XSSFChart chart : charts(workbook.getSheetAt(i))) {
        assertThat(chart.getCTChartSpace().validate()).isTrue();
        XDDFChartData drawn = chart.getChartSeries().get(0);
        for (int number = 0; number < drawn.getSeriesCount(); number++) {
          XDDFChartData.Series series = drawn.getSeries(number);
          points += compare(series.getValuesData());
          compare(series.getCategoryData());
        }
      }
    }
    return points;
  }

  private static List<XSSFChart> charts(XSSFSheet sheet) {
    XSSFDrawing drawing = sheet.getDrawingPatriarch();
    return drawing == null ? List.of() : drawing.getCharts();
  }

  private int compare(XDDFDataSource<?> source) {
    CellReference[] cells =
        new AreaReference(source.getDataRangeReference(), workbook.getSpreadsheetVersion())
            .getAllReferencedCells();
    assertThat(source.getPointCount()).isEqualTo(cells.length);
    for (int i = 0; i < cells.length; i++) {
      Cell cell =
          workbook
              .getSheet(cells[i].getSheetName())
              .getRow(cells[i].getRow())
              .getCell(cells[i].getCol());
      if (cell.getCellType() == CellType.STRING) {
        assertThat(source.getPointAt(i)).hasToString(cell.getStringCellValue());
      } else {
        double point = Double.parseDouble(source.getPointAt(i).toString());
        assertThat(point).isEqualTo(cell.getNumericCellValue());
      }
    }
    return cells.length;
  }
}

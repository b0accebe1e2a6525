package fineweight.calc;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.beans.PropertyValue;
import com.sun.star.bridge.UnoUrlResolver;
import com.sun.star.bridge.XUnoUrlResolver;
import com.sun.star.comp.helper.Bootstrap;
import com.sun.star.connection.NoConnectException;
import com.sun.star.container.XIndexAccess;
import com.sun.star.frame.XComponentLoader;
import com.sun.star.frame.XDesktop;
import com.sun.star.lang.XComponent;
import com.sun.star.lang.XMultiComponentFactory;
import com.sun.star.sheet.FillDirection;
import com.sun.star.sheet.XArrayFormulaRange;
import com.sun.star.sheet.XCalculatable;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellSeries;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.XCellRange;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.uno.XComponentContext;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/**
 * How long a hard recalculation of 100,000 cells takes, against as many cells of plain arithmetic
 * in the same run of the same office. Prints; nothing is asserted of time. Not run with the tests.
 */
class RecalculationRun {
  private static final int ROWS = 100_000;
  private static final int TIMES = 5;

  private static final List<String> COINS =
      List.of("half dollar", "quarter", "dime", "Morgan dollar", "Peace dollar");

  /** Each year is another coin to the functions, so that what they keep is not asked every time. */
  private static final int YEARS = 60;

  @Test
  void measure() throws Exception {
    try (NormalUserOffice office = NormalUserOffice.fresh()) {
      office.install(
          Path.of(System.getProperty("fineweight.extension", "target/fineweight-calc.oxt")));
      int port = freePort();
      Process process = office.listen(port);
      try {
        XDesktop desktop = desktop(port);
        double plain = median(desktop, "=A1*3+1", false);
        print("arithmetic (A1*3+1)", plain, plain);
        print(
            "FINEWEIGHT.FINEOUNCES in each cell",
            median(desktop, "=FINEWEIGHT.FINEOUNCES(B1;\"silver\";C1;A1)", false),
            plain);
        print(
            "FINEWEIGHT.MELT in each cell",
            median(desktop, "=FINEWEIGHT.MELT(B1;30;C1;0;1;A1)", false),
            plain);
        print(
            "FINEWEIGHT.FINEOUNCESLIST, one array",
            median(desktop, "=FINEWEIGHT.FINEOUNCESLIST(A1:B" + ROWS + ";\"silver\")", true),
            plain);
        desktop.terminate();
      } finally {
        process.destroy();
        process.waitFor();
      }
    }
  }

  private static void print(String what, double seconds, double plain) {
    System.out.printf(
        Locale.ROOT, "| %s | %.3f s | %.0f |%n", what, seconds, Math.ceil(seconds / plain));
  }

  private static int freePort() throws IOException {
    try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      return socket.getLocalPort();
    }
  }

  private static XDesktop desktop(int port) throws Exception {
    XComponentContext local = Bootstrap.createInitialComponentContext(null);
    XUnoUrlResolver resolver = UnoUrlResolver.create(local);
    String url = "uno:socket,host=127.0.0.1,port=" + port + ";urp;StarOffice.ComponentContext";
    for (int attempt = 0; ; attempt++) {
      try {
        XComponentContext context =
            UnoRuntime.queryInterface(XComponentContext.class, resolver.resolve(url));
        XMultiComponentFactory factory = context.getServiceManager();
        return UnoRuntime.queryInterface(
            XDesktop.class,
            factory.createInstanceWithContext("com.sun.star.frame.Desktop", context));
      } catch (NoConnectException notYet) {
        if (attempt == 120) {
          throw notYet;
        }
        Thread.sleep(500);
      }
    }
  }

  /** Seconds of a hard recalculation, the first one left out: it reads the catalogue. */
  private static double median(XDesktop desktop, String formula, boolean array) throws Exception {
    PropertyValue hidden = new PropertyValue();
    hidden.Name = "Hidden";
    hidden.Value = true;
    XComponent component =
        UnoRuntime.queryInterface(XComponentLoader.class, desktop)
            .loadComponentFromURL(
                "private:factory/scalc", "_blank", 0, new PropertyValue[] {hidden});
    XSpreadsheet sheet = sheet(component);
    fill(sheet);
    XCellRange cells = sheet.getCellRangeByName("D1:D" + ROWS);
    if (array) {
      UnoRuntime.queryInterface(XArrayFormulaRange.class, cells).setArrayFormula(formula);
    } else {
      sheet.getCellByPosition(3, 0).setFormula(formula);
      UnoRuntime.queryInterface(XCellSeries.class, cells).fillAuto(FillDirection.TO_BOTTOM, 1);
    }
    XCalculatable document = UnoRuntime.queryInterface(XCalculatable.class, component);
    document.calculateAll();
    assertThat(sheet.getCellByPosition(3, ROWS - 1).getError()).as(formula).isZero();
    double[] seconds = new double[TIMES];
    for (int i = 0; i < TIMES; i++) {
      long before = System.nanoTime();
      document.calculateAll();
      seconds[i] = (System.nanoTime() - before) / 1e9;
    }
    component.dispose();
    Arrays.sort(seconds);
    return seconds[TIMES / 2];
  }

  private static XSpreadsheet sheet(XComponent component) throws Exception {
    XIndexAccess sheets =
        UnoRuntime.queryInterface(
            XIndexAccess.class,
            UnoRuntime.queryInterface(XSpreadsheetDocument.class, component).getSheets());
    return UnoRuntime.queryInterface(XSpreadsheet.class, sheets.getByIndex(0));
  }

  private static void fill(XSpreadsheet sheet) throws Exception {
    Object[][] rows = new Object[ROWS][];
    for (int i = 0; i < ROWS; i++) {
      rows[i] =
          new Object[] {
            (double) (1878 + i % YEARS), COINS.get(i / YEARS % COINS.size()), (double) (1 + i % 20)
          };
    }
    UnoRuntime.queryInterface(XCellRangeData.class, sheet.getCellRangeByName("A1:C" + ROWS))
        .setDataArray(rows);
  }
}

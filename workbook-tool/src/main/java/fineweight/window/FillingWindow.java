package fineweight.window;

import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import java.awt.AWTError;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import javax.swing.SwingUtilities;

/** Opens the window. */
public final class FillingWindow {
  /** The workbooks' dark blue, for what has the focus and for the button. */
  private static final Map<String, String> LOOK =
      Map.of("@accentColor", "#2B435C", "Component.focusWidth", "2");

  private FillingWindow() {}

  /**
   * Opens the window and waits until it is closed.
   *
   * @param file the workbook to look into at once
   * @throws NoScreenException on a machine without a screen
   */
  public static void open(FillingJob job, Optional<Path> file)
      throws NoScreenException, InterruptedException {
    CountDownLatch closed = new CountDownLatch(1);
    try {
      if (GraphicsEnvironment.isHeadless()) {
        throw new NoScreenException();
      }
      SwingUtilities.invokeAndWait(() -> show(job, file, closed));
    } catch (HeadlessException | AWTError | LinkageError none) {
      throw new NoScreenException();
    } catch (InvocationTargetException failed) {
      throw new IllegalStateException(failed.getCause());
    }
    closed.await();
  }

  private static void show(FillingJob job, Optional<Path> file, CountDownLatch closed) {
    FlatLaf.setGlobalExtraDefaults(LOOK);
    FlatLightLaf.setup();
    WindowControl control = new WindowControl(job, closed::countDown);
    control.show();
    file.ifPresent(control::take);
  }
}

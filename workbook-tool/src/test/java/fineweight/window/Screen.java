package fineweight.window;

import java.awt.AWTException;
import java.awt.Component;
import java.awt.Container;
import java.awt.KeyboardFocusManager;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.Robot;
import java.awt.Window;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.FutureTask;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;

/** Eyes and hands of a person at the screen: finds parts of the window, presses keys, drags. */
final class Screen {
  private static final long PATIENCE = 60_000;
  private static final int ATTEMPTS = 8;
  private static final int ATTENTION = 100;

  private final Robot robot;

  Screen() throws AWTException {
    robot = new Robot();
    robot.setAutoDelay(10);
  }

  static JFrame window() {
    return Arrays.stream(Window.getWindows())
        .filter(JFrame.class::isInstance)
        .map(JFrame.class::cast)
        .filter(frame -> frame.isShowing() && frame.getTitle().contains("Fineweight"))
        .findFirst()
        .orElseThrow();
  }

  static boolean isOpen() {
    return Arrays.stream(Window.getWindows())
        .anyMatch(each -> each instanceof JFrame frame && frame.isShowing());
  }

  /** All parts, in their order. */
  static Stream<Component> parts(Container whole) {
    return Arrays.stream(whole.getComponents())
        .flatMap(
            each ->
                each instanceof Container inner
                    ? Stream.concat(Stream.of(each), parts(inner))
                    : Stream.of(each));
  }

  static <T extends Component> T part(Class<T> kind, String name) {
    Optional<Component> found =
        parts(window()).filter(each -> name.equals(each.getName())).findFirst();
    return kind.cast(found.orElseThrow(() -> new AssertionError("nothing is named " + name)));
  }

  /** Asks in the event thread, as Swing wants it. */
  static <T> T ask(Callable<T> question) throws Exception {
    FutureTask<T> task = new FutureTask<>(question);
    SwingUtilities.invokeAndWait(task);
    return task.get();
  }

  /** Waits until it is so. */
  static void until(String what, BooleanSupplier so) throws Exception {
    long end = System.currentTimeMillis() + PATIENCE;
    while (!ask(so::getAsBoolean)) {
      if (System.currentTimeMillis() > end) {
        throw new AssertionError("waited in vain until " + what);
      }
      Thread.sleep(50);
    }
  }

  /** What hands do. */
  @FunctionalInterface
  interface Deed {
    void perform() throws Exception;
  }

  /**
   * Does it again until it has worked, as a person does: on a screen without a window manager a key
   * now and then goes to a window that has just closed.
   */
  void repeat(String what, Deed deed, BooleanSupplier so) throws Exception {
    for (int attempt = 0; attempt < ATTEMPTS; attempt++) {
      if (attempt > 0) {
        window().toFront();
        window().requestFocus();
      }
      deed.perform();
      for (int wait = 0; wait < ATTENTION && !ask(so::getAsBoolean); wait++) {
        Thread.sleep(50);
      }
      if (ask(so::getAsBoolean)) {
        return;
      }
    }
    throw new AssertionError("tried in vain until " + what);
  }

  void press(int... keys) throws Exception {
    for (int key : keys) {
      robot.keyPress(key);
    }
    for (int at = keys.length - 1; at >= 0; at--) {
      robot.keyRelease(keys[at]);
    }
    settle();
  }

  /**
   * Until the keys and clicks have been heard. The robot's own wait for quiet lasts up to ten
   * seconds on a screen where something blinks.
   */
  private void settle() throws Exception {
    for (int i = 0; i < 3; i++) {
      robot.delay(60);
      SwingUtilities.invokeAndWait(() -> {});
    }
  }

  void alt(char letter) throws Exception {
    press(KeyEvent.VK_ALT, KeyEvent.getExtendedKeyCodeForChar(letter));
  }

  void type(String text) throws Exception {
    for (char each : text.toCharArray()) {
      press(KeyEvent.getExtendedKeyCodeForChar(each));
    }
  }

  void click(Component part) throws Exception {
    Point at = middle(part);
    robot.mouseMove(at.x, at.y);
    robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
    robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
    settle();
  }

  void drag(Component from, Component to) throws Exception {
    Point start = middle(from);
    Point end = middle(to);
    robot.mouseMove(start.x, start.y);
    robot.delay(100);
    robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
    robot.delay(150);
    int steps = 30;
    for (int step = 1; step <= steps; step++) {
      robot.mouseMove(
          start.x + (end.x - start.x) * step / steps, start.y + (end.y - start.y) * step / steps);
    }
    robot.delay(300);
    robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
    settle();
  }

  private static Point middle(Component part) throws Exception {
    return ask(
        () -> {
          Point corner = part.getLocationOnScreen();
          return new Point(corner.x + part.getWidth() / 2, corner.y + part.getHeight() / 2);
        });
  }

  static Component focused() {
    return KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
  }

  /** Keeps what the window looks like. */
  void picture(Path file) throws IOException {
    robot.delay(300);
    Rectangle where = window().getBounds();
    File made = file.toFile();
    ImageIO.write(robot.createScreenCapture(where), "png", made);
  }
}

package fineweight.window;

import com.formdev.flatlaf.FlatLaf;
import java.awt.Font;
import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.JRootPane;
import javax.swing.KeyStroke;
import javax.swing.UIManager;

/** Larger and smaller text by the keys that do so in most programs: control with plus, minus, 0. */
final class TextSize {
  /** Of one step, in per cent of the size before. */
  private static final int LARGER = 115;

  private static final int LEAST = 8;
  private static final int MOST = 48;

  private final Font usual = UIManager.getFont("defaultFont");
  private final Runnable resized;

  private TextSize(Runnable resized) {
    this.resized = resized;
  }

  /**
   * @param resized is run after each change
   */
  static void keysOf(JRootPane pane, Runnable resized) {
    TextSize size = new TextSize(resized);
    for (int key : new int[] {KeyEvent.VK_PLUS, KeyEvent.VK_EQUALS, KeyEvent.VK_ADD}) {
      size.bind(pane, key, () -> size.set(size.now() * LARGER / 100));
    }
    for (int key : new int[] {KeyEvent.VK_MINUS, KeyEvent.VK_SUBTRACT}) {
      size.bind(pane, key, () -> size.set(size.now() * 100 / LARGER));
    }
    for (int key : new int[] {KeyEvent.VK_0, KeyEvent.VK_NUMPAD0}) {
      size.bind(pane, key, () -> size.set(size.usual.getSize2D()));
    }
  }

  private void bind(JRootPane pane, int key, Runnable action) {
    KeyStroke stroke = KeyStroke.getKeyStroke(key, InputEvent.CTRL_DOWN_MASK);
    pane.getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW).put(stroke, stroke);
    pane.getActionMap()
        .put(
            stroke,
            new AbstractAction() {
              private static final long serialVersionUID = 1L;

              @Override
              public void actionPerformed(ActionEvent pressed) {
                action.run();
              }
            });
  }

  private float now() {
    return UIManager.getFont("defaultFont").getSize2D();
  }

  private void set(float points) {
    float wanted = Math.max((float) LEAST, Math.min(MOST, points));
    UIManager.put("defaultFont", usual.deriveFont(wanted));
    FlatLaf.updateUI();
    resized.run();
  }
}

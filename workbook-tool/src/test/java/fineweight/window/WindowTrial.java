package fineweight.window;

import fineweight.standard.Standards;
import fineweight.workbook.open.AnyWorkbook;
import fineweight.workbook.save.SafeSave;
import fineweight.workbook.xlsx.XlsxWorkbook;
import java.awt.Component;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.event.KeyEvent;
import java.awt.event.WindowEvent;
import java.io.File;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.accessibility.Accessible;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JList;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import javax.swing.TransferHandler;

/**
 * A person at the window, in a process of its own on a screen of its own. Prints a line for each
 * thing seen; the test judges them.
 */
final class WindowTrial {
  /** On a screen without a window manager a drag now and then begins too early to be seen. */
  private static final int DRAGS = 6;

  private final Screen screen;
  private final Path workbook;
  private final Path picture;

  private WindowTrial(Path workbook, Path picture) throws Exception {
    this.screen = new Screen();
    this.workbook = workbook;
    this.picture = picture;
  }

  /** Words: the workbook, the picture to make. */
  public static void main(String[] words) throws Exception {
    WindowTrial trial = new WindowTrial(Path.of(words[0]), Path.of(words[1]));
    Thread person =
        new Thread(
            () -> {
              try {
                trial.work();
              } catch (Throwable failed) {
                failed.printStackTrace(System.out);
                Runtime.getRuntime().halt(1);
              }
            });
    person.setDaemon(true);
    person.start();
    SafeSave save = SafeSave.onDisk();
    FillingWindow.open(
        new FillingJob(
            AnyWorkbook.of(file -> XlsxWorkbook.open(file, save), save),
            Standards.catalogue(),
            "US",
            Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC)),
        Optional.empty());
    tell("closed", "yes");
    System.exit(0);
  }

  private static void tell(String what, Object seen) {
    System.out.println(what + ": " + seen.toString().replace('\n', '|'));
  }

  private static String message() {
    return Screen.part(JTextArea.class, "message").getText();
  }

  /** Waits until nothing has been at work for two seconds: the last price may come in late. */
  private static void rest() throws Exception {
    for (int calm = 0; calm < 8; ) {
      Thread.sleep(250);
      boolean shown =
          Screen.ask(
              () ->
                  message().contains("would change")
                      && Screen.part(JButton.class, "fill").isEnabled());
      calm = shown ? calm + 1 : 0;
    }
  }

  private void work() throws Exception {
    while (!Screen.ask(Screen::isOpen)) {
      Thread.sleep(50);
    }
    tell("fill at first", Screen.ask(() -> Screen.part(JButton.class, "fill").isEnabled()));
    drop();
    Screen.until("the file is understood", () -> message().contains("would change"));
    tell("dropped", Screen.ask(WindowTrial::message));
    tell("understood", Screen.ask(() -> cells("Understood")));
    price('G', "Gold", "2500");
    price('S', "Silver", "3x");
    Screen.until("the price is refused", () -> message().contains("3x"));
    tell("wrong price", Screen.ask(WindowTrial::message));
    tell(
        "fill after a wrong price",
        Screen.ask(() -> Screen.part(JButton.class, "fill").isEnabled()));
    price('S', "Silver", "30.00");
    price('P', "Platinum", "1000");
    Screen.until(
        "the melt is shown",
        () -> message().contains("Melt") && Screen.part(JButton.class, "fill").isEnabled());
    tell("priced", Screen.ask(WindowTrial::message));
    screen.alt('W');
    tell("changes", Screen.ask(() -> cells("Will change")));
    rest();
    screen.picture(picture);
    tabThrough();
    names();
    larger();
    screen.repeat("it is filled", () -> screen.alt('F'), () -> message().startsWith("Filled"));
    tell("filled", Screen.ask(WindowTrial::message));
    JFrame frame = Screen.window();
    SwingUtilities.invokeLater(
        () -> frame.dispatchEvent(new WindowEvent(frame, WindowEvent.WINDOW_CLOSING)));
  }

  /** Drags the file from another window, as from a file manager. */
  private void drop() throws Exception {
    JList<File> files = new JList<>(new DefaultListModel<>());
    JFrame[] folder = new JFrame[1];
    SwingUtilities.invokeAndWait(
        () -> {
          ((DefaultListModel<File>) files.getModel()).addElement(workbook.toFile());
          files.setDragEnabled(true);
          files.setSelectedIndex(0);
          files.setTransferHandler(new FilesOut());
          folder[0] = new JFrame("a folder");
          folder[0].add(files);
          folder[0].setBounds(0, 0, 200, 40);
          folder[0].setAlwaysOnTop(true);
          folder[0].setVisible(true);
        });
    for (int attempt = 0; attempt < DRAGS && !arrived(); attempt++) {
      Thread.sleep(500);
      screen.drag(files, Screen.part(JTable.class, "Understood").getParent());
      for (int wait = 0; wait < 40 && !arrived(); wait++) {
        Thread.sleep(50);
      }
    }
    Screen.until("the file has arrived", () -> Screen.window().getTitle().contains(".xlsx"));
    SwingUtilities.invokeAndWait(folder[0]::dispose);
    screen.click(Screen.part(JTextArea.class, "message"));
  }

  private static boolean arrived() throws Exception {
    return Screen.ask(() -> Screen.window().getTitle().contains(".xlsx"));
  }

  private static final class FilesOut extends TransferHandler {
    private static final long serialVersionUID = 1L;

    @Override
    public int getSourceActions(JComponent source) {
      return COPY;
    }

    @Override
    protected Transferable createTransferable(JComponent source) {
      File file = (File) ((JList<?>) source).getSelectedValue();
      return new Transferable() {
        @Override
        public DataFlavor[] getTransferDataFlavors() {
          return new DataFlavor[] {DataFlavor.javaFileListFlavor};
        }

        @Override
        public boolean isDataFlavorSupported(DataFlavor flavor) {
          return flavor.equals(DataFlavor.javaFileListFlavor);
        }

        @Override
        public Object getTransferData(DataFlavor flavor) {
          return List.of(file);
        }
      };
    }
  }

  private void price(char letter, String field, String typed) throws Exception {
    JTextField wanted = Screen.part(JTextField.class, field);
    screen.repeat(
        field + " has the focus", () -> screen.alt(letter), () -> Screen.focused() == wanted);
    screen.repeat(
        field + " holds " + typed,
        () -> {
          screen.press(KeyEvent.VK_CONTROL, KeyEvent.VK_A);
          screen.type(typed);
        },
        () -> wanted.getText().equals(typed));
  }

  private static String cells(String table) {
    JTable shown = Screen.part(JTable.class, table);
    StringBuilder text = new StringBuilder();
    for (int row = 0; row < shown.getRowCount(); row++) {
      for (int column = 0; column < shown.getColumnCount(); column++) {
        text.append(shown.getValueAt(row, column)).append(column == 0 ? " = " : " ");
      }
      text.append(';');
    }
    return text.toString();
  }

  /** The tab key goes once round the window. */
  private void tabThrough() throws Exception {
    JTextField first = Screen.part(JTextField.class, "Gold");
    screen.repeat("Gold has the focus", () -> screen.alt('G'), () -> Screen.focused() == first);
    Set<Component> met = new LinkedHashSet<>();
    while (met.add(Screen.ask(Screen::focused)) && met.size() < 100) {
      screen.press(KeyEvent.VK_TAB);
    }
    StringBuilder names = new StringBuilder();
    met.forEach(
        each ->
            names.append(each.getName() == null ? each.getClass() : each.getName()).append(';'));
    tell("tab order", names);
  }

  /** What a reader of the screen would call each part that takes the focus. */
  private static void names() throws Exception {
    tell(
        "without a name",
        Screen.ask(
            () ->
                Screen.parts(Screen.window())
                    .filter(Component::isFocusable)
                    .filter(
                        part ->
                            part instanceof JTextField
                                || part instanceof JButton
                                || part instanceof JTable
                                || part instanceof JTextArea
                                || part instanceof JCheckBox)
                    .filter(Component::isShowing)
                    .map(part -> ((Accessible) part).getAccessibleContext().getAccessibleName())
                    .filter(name -> name == null || name.isBlank())
                    .count()));
  }

  private void larger() throws Exception {
    JTextField field = Screen.part(JTextField.class, "Gold");
    int height = Screen.ask(field::getHeight);
    screen.repeat(
        "the text is larger",
        () -> screen.press(KeyEvent.VK_CONTROL, KeyEvent.VK_EQUALS),
        () -> field.getHeight() > height);
    tell("larger", Screen.ask(() -> Screen.window().getHeight()));
    screen.repeat(
        "the text is as before",
        () -> screen.press(KeyEvent.VK_CONTROL, KeyEvent.VK_0),
        () -> field.getHeight() == height);
  }
}

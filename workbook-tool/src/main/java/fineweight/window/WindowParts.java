package fineweight.window;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.BorderLayout;
import java.awt.FlowLayout;
import java.awt.KeyboardFocusManager;
import javax.swing.BorderFactory;
import javax.swing.Box;
import javax.swing.BoxLayout;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;

/** What is on the window and where. Does nothing by itself. */
final class WindowParts {
  /** The first choice of sheets. */
  static final String BY_ITSELF = "(found by itself)";

  final JLabel file = new JLabel("Drop a workbook anywhere on this window, or choose one.");
  final JButton choose = new JButton("Choose a workbook...");
  final JComboBox<String> sheet = new JComboBox<>(new String[] {BY_ITSELF});
  final JCheckBox leaveOutBadRows = new JCheckBox("Leave out bad rows");
  final PriceFields prices;
  final JTextArea message = new JTextArea(7, 60);
  final ResultTables tables = new ResultTables();
  final JProgressBar busy = new JProgressBar();
  final JButton fill = new JButton("Fill the sheet");

  /**
   * @param typed is told of every change of a price
   */
  WindowParts(Runnable typed) {
    prices = new PriceFields(typed);
    choose.setMnemonic('C');
    choose.setName("choose");
    fill.setMnemonic('F');
    fill.setName("fill");
    fill.setEnabled(false);
    fill.putClientProperty(
        FlatClientProperties.STYLE, "background: #2B435C; foreground: #FFFFFF; font: bold");
    fill.getAccessibleContext()
        .setAccessibleDescription("Writes into the workbook; the file as it was is kept beside it");
    leaveOutBadRows.setMnemonic('B');
    leaveOutBadRows.setName("leave out");
    leaveOutBadRows.setToolTipText(
        "Fill the other rows even if some cells hold an error, a negative count or an impossible year");
    sheet.setName("sheet");
    sheet.setToolTipText("The sheet that holds your list");
    busy.setVisible(false);
    busy.setIndeterminate(true);
    busy.getAccessibleContext().setAccessibleName("At work");
    message();
  }

  private void message() {
    message.setName("message");
    message.setEditable(false);
    message.setLineWrap(true);
    message.setWrapStyleWord(true);
    message.getAccessibleContext().setAccessibleName("What was found");
    message.setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
    message.setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
    message.setText(
        "Looking writes nothing. You see what is understood and every cell that would change;"
            + " nothing happens to the file until you press \"Fill the sheet\".");
  }

  JComponent laidOut() {
    JPanel whole = new JPanel(new BorderLayout(8, 8));
    whole.setBorder(BorderFactory.createEmptyBorder(10, 10, 10, 10));
    JPanel top = new JPanel();
    top.setLayout(new BoxLayout(top, BoxLayout.PAGE_AXIS));
    top.add(dropPlace());
    top.add(Box.createVerticalStrut(6));
    top.add(prices);
    top.add(choices());
    top.add(new JScrollPane(message));
    whole.add(top, BorderLayout.PAGE_START);
    whole.add(tables, BorderLayout.CENTER);
    JPanel bottom = new JPanel(new BorderLayout(8, 8));
    bottom.add(busy, BorderLayout.CENTER);
    bottom.add(fill, BorderLayout.LINE_END);
    whole.add(bottom, BorderLayout.PAGE_END);
    return whole;
  }

  private JComponent dropPlace() {
    JPanel place = new JPanel(new BorderLayout(12, 8));
    place.setBorder(
        BorderFactory.createCompoundBorder(
            BorderFactory.createDashedBorder(null, 2, 6, 4, true),
            BorderFactory.createEmptyBorder(12, 12, 12, 12)));
    file.setName("file");
    file.putClientProperty(FlatClientProperties.STYLE_CLASS, "h3");
    place.add(file, BorderLayout.CENTER);
    place.add(choose, BorderLayout.LINE_END);
    return place;
  }

  private JComponent choices() {
    JPanel row = new JPanel(new FlowLayout(FlowLayout.LEADING));
    JLabel label = new JLabel("Sheet");
    label.setDisplayedMnemonic('E');
    label.setLabelFor(sheet);
    row.add(label);
    row.add(sheet);
    row.add(Box.createHorizontalStrut(12));
    row.add(leaveOutBadRows);
    return row;
  }
}

package fineweight.window;

import fineweight.refresh.RefreshReport;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.KeyboardFocusManager;
import java.util.List;
import javax.swing.JScrollPane;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import javax.swing.table.DefaultTableModel;

/** What was understood, what will change, and which rows need a person. */
final class ResultTables extends JTabbedPane {
  private static final long serialVersionUID = 1L;
  private static final int ROWS_SHOWN = 14;

  /** Characters that each of the tables is wide. */
  private static final int WIDE = 110;

  private final DefaultTableModel understood = model("Heading in your sheet", "Understood as");
  private final DefaultTableModel changes = model("Cell", "Now", "Will be");
  private final DefaultTableModel open = model("Row", "What stands there", "Question or reason");

  ResultTables() {
    add("Understood", 'U', understood, "What your headings mean", 40, 70);
    add("Will change", 'W', changes, "Cells that will change", 25, 25, 60);
    add("Needs you", 'N', open, "Rows that need you, most money at stake first", 20, 30, 60);
  }

  private static DefaultTableModel model(String... columns) {
    return new DefaultTableModel(columns, 0) {
      private static final long serialVersionUID = 1L;

      @Override
      public boolean isCellEditable(int row, int column) {
        return false;
      }
    };
  }

  private void add(String title, char letter, DefaultTableModel model, String name, int... widths) {
    JTable table = new JTable(model);
    table.setName(title);
    table.setShowHorizontalLines(true);
    table.getAccessibleContext().setAccessibleName(name);
    // The tab key leads out of the table, to the next field.
    table.setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
    table.setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
    FontMetrics metrics = table.getFontMetrics(table.getFont());
    int letterWidth = metrics.charWidth('n');
    table.setPreferredScrollableViewportSize(
        new Dimension(WIDE * letterWidth, ROWS_SHOWN * table.getRowHeight()));
    for (int column = 0; column < widths.length; column++) {
      table.getColumnModel().getColumn(column).setPreferredWidth(widths[column] * letterWidth);
    }
    addTab(title, null, new JScrollPane(table), name);
    setMnemonicAt(getTabCount() - 1, letter);
  }

  void clear() {
    understood.setRowCount(0);
    changes.setRowCount(0);
    open.setRowCount(0);
  }

  void show(Outcome outcome) {
    clear();
    outcome.report().ifPresent(this::report);
    outcome
        .changes()
        .forEach(
            change ->
                changes.addRow(
                    new String[] {change.place().toString(), change.before(), change.after()}));
  }

  private void report(RefreshReport report) {
    report
        .inventory()
        .columns()
        .forEach((heading, meaning) -> understood.addRow(new String[] {line(heading), meaning}));
    for (String unused : report.inventory().unused()) {
      understood.addRow(new String[] {line(unused), "(not used)"});
    }
    for (RefreshReport.OpenRow row : report.open()) {
      open.addRow(new String[] {row.place(), row.words(), row.note()});
    }
    List<RefreshReport.OpenRow> rows = report.open();
    setTitleAt(2, rows.isEmpty() ? "Needs you" : "Needs you (" + rows.size() + ")");
  }

  private static String line(String heading) {
    return heading.replaceAll("\\s+", " ");
  }
}

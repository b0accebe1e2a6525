package fineweight.window;

import java.awt.Dimension;
import java.awt.Rectangle;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JFileChooser;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import javax.swing.WindowConstants;
import javax.swing.filechooser.FileNameExtensionFilter;

/** What happens on the window. Every method runs in the event thread; the work does not. */
final class WindowControl {
  /** Who types is not disturbed: the look follows this long after the last key, in milliseconds. */
  private static final int PAUSE = 500;

  private final FillingJob job;
  private final Runnable closed;
  private final JFrame frame = new JFrame("Fineweight");
  private final Timer pause = new Timer(PAUSE, event -> look());
  private final WindowParts parts = new WindowParts(this::typed);
  private final ExecutorService worker =
      Executors.newSingleThreadExecutor(
          work -> {
            Thread thread = new Thread(work, "workbook");
            thread.setDaemon(true);
            return thread;
          });

  private Path file;
  private long latest;
  private boolean filling;
  private boolean toBeClosed;
  private boolean settingSheets;

  WindowControl(FillingJob job, Runnable closed) {
    this.job = job;
    this.closed = closed;
    pause.setRepeats(false);
    parts.choose.addActionListener(event -> choose());
    parts.fill.addActionListener(event -> fill());
    parts.leaveOutBadRows.addActionListener(event -> look());
    parts.sheet.addActionListener(event -> look());
    frame.setContentPane((java.awt.Container) parts.laidOut());
    FileDrop.on(frame.getRootPane(), this::take);
    TextSize.keysOf(frame.getRootPane(), this::fit);
    frame.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
    frame.addWindowListener(
        new WindowAdapter() {
          @Override
          public void windowClosing(WindowEvent event) {
            close();
          }
        });
  }

  void show() {
    fit();
    frame.setLocationRelativeTo(null);
    frame.setVisible(true);
    parts.choose.requestFocusInWindow();
  }

  /** As large as its parts want, but not larger than the screen. */
  private void fit() {
    frame.pack();
    Rectangle screen = frame.getGraphicsConfiguration().getBounds();
    Dimension wanted = frame.getSize();
    frame.setSize(Math.min(wanted.width, screen.width), Math.min(wanted.height, screen.height));
  }

  private void choose() {
    JFileChooser chooser = new JFileChooser(file == null ? null : file.toFile());
    chooser.setDialogTitle("Choose a workbook");
    chooser.setFileFilter(
        new FileNameExtensionFilter(
            "Workbooks and lists (.xlsx, .xlsm, .xls, .csv)", "xlsx", "xlsm", "xls", "csv"));
    if (chooser.showOpenDialog(frame) == JFileChooser.APPROVE_OPTION) {
      take(chooser.getSelectedFile().toPath());
    }
  }

  private void take(List<Path> dropped) {
    if (filling) {
      return;
    }
    if (dropped.size() == 1) {
      take(dropped.get(0));
    } else {
      say("Drop one workbook at a time; " + dropped.size() + " files were dropped.");
    }
  }

  /** Looks into a workbook. */
  void take(Path taken) {
    file = taken;
    parts.file.setText(taken.getFileName().toString());
    parts.file.setToolTipText(taken.toAbsolutePath().toString());
    frame.setTitle(taken.getFileName() + " - Fineweight");
    sheets(List.of());
    look();
  }

  private void typed() {
    if (file != null) {
      pause.restart();
    }
  }

  private Wanted wanted() {
    Object chosen = parts.sheet.getSelectedItem();
    return new Wanted(
        file,
        Optional.ofNullable(chosen)
            .map(Object::toString)
            .filter(name -> !name.equals(WindowParts.BY_ITSELF)),
        parts.prices.prices(),
        parts.prices.others(),
        parts.prices.currency(),
        parts.leaveOutBadRows.isSelected());
  }

  private void look() {
    if (file == null || filling || settingSheets) {
      return;
    }
    parts.fill.setEnabled(false);
    start("Looking into " + file.getFileName() + " ...", job::look, this::looked);
  }

  private void looked(Outcome outcome) {
    sheets(outcome.sheets());
    parts.tables.show(outcome);
    outcome.report().ifPresent(report -> say(Sentences.looked(report)));
    outcome.refusal().ifPresent(this::complain);
    parts.fill.setEnabled(outcome.report().isPresent());
  }

  private void fill() {
    pause.stop();
    filling = true;
    inputs(false);
    start("Filling " + file.getFileName() + " ...", job::fill, this::filled);
  }

  private void filled(Outcome outcome) {
    filling = false;
    inputs(true);
    if (outcome.report().isPresent()) {
      parts.tables.show(outcome);
    }
    outcome.report().ifPresent(report -> say(Sentences.filled(report)));
    outcome.refusal().ifPresent(this::complain);
    parts.fill.requestFocusInWindow();
    if (toBeClosed) {
      close();
    }
  }

  /** Works beside the event thread; only the latest work's outcome is shown. */
  private void start(String words, Function<Wanted, Outcome> work, Consumer<Outcome> shown) {
    long number = ++latest;
    Wanted wanted = wanted();
    parts.busy.setVisible(true);
    say(words);
    worker.execute(
        () -> {
          Outcome outcome = work.apply(wanted);
          SwingUtilities.invokeLater(
              () -> {
                if (number == latest) {
                  parts.busy.setVisible(false);
                  shown.accept(outcome);
                }
              });
        });
  }

  private void inputs(boolean enabled) {
    parts.choose.setEnabled(enabled);
    parts.fill.setEnabled(enabled);
    parts.sheet.setEnabled(enabled);
    parts.leaveOutBadRows.setEnabled(enabled);
    parts.prices.setEnabled(enabled);
  }

  /** Offers the sheets of the workbook; what is chosen stays chosen. */
  private void sheets(List<String> names) {
    settingSheets = true;
    Object chosen = parts.sheet.getSelectedItem();
    DefaultComboBoxModel<String> offered = new DefaultComboBoxModel<>();
    offered.addElement(WindowParts.BY_ITSELF);
    offered.addAll(names);
    parts.sheet.setModel(offered);
    parts.sheet.setSelectedItem(names.contains(chosen) ? chosen : WindowParts.BY_ITSELF);
    settingSheets = false;
  }

  private void complain(String sentence) {
    say("Nothing was written. " + sentence);
  }

  private void say(String words) {
    parts.message.setText(words);
    parts.message.setCaretPosition(0);
  }

  private void close() {
    if (filling) {
      toBeClosed = true;
      say("The file is being written; the window closes when that is done.");
      return;
    }
    worker.shutdown();
    frame.dispose();
    closed.run();
  }
}

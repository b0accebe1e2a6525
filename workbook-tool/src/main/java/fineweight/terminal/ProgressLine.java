package fineweight.terminal;

import fineweight.refresh.inventory.Progress;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.time.Duration;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.Optional;
import me.tongfei.progressbar.DefaultProgressBarRenderer;
import me.tongfei.progressbar.DelegatingProgressBarConsumer;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;
import me.tongfei.progressbar.ProgressState;

/**
 * One line on the terminal that tells rows, rate and time left of work that takes long. It is shown
 * only where standard error is a terminal, only once the work has taken some seconds, and is gone
 * when the work is done.
 */
public final class ProgressLine implements Progress, AutoCloseable {
  private static final long PATIENCE_NANOS = 2_000_000_000L;
  private static final int ROWS_BETWEEN_LOOKS = 64;
  private static final int BETWEEN_UPDATES_MILLIS = 200;

  private final PrintWriter err;
  private final long began = System.nanoTime();
  private long stageBegan = began;
  private int calls;
  private Boolean seen;
  private Stage stage;
  private int row;
  private ProgressBar bar;

  /**
   * @param err standard error
   */
  public ProgressLine(PrintWriter err) {
    this.err = err;
  }

  @Override
  public void at(Stage at, int done, int last) {
    if (stage != at || done < row) {
      stopBar();
      stage = at;
      stageBegan = System.nanoTime();
    }
    row = done;
    if (bar != null) {
      bar.stepTo(done);
    } else if (calls++ % ROWS_BETWEEN_LOOKS == 0 && isLong() && isSeen()) {
      startBar(last);
    }
  }

  private boolean isLong() {
    return System.nanoTime() - began > PATIENCE_NANOS;
  }

  private boolean isSeen() {
    if (seen == null) {
      seen = Terminal.isTerminal(Terminal.Stream.ERR);
    }
    return seen;
  }

  private void startBar(int last) {
    boolean blocks = Terminal.letters().equals(StandardCharsets.UTF_8);
    bar =
        new ProgressBarBuilder()
            .setTaskName(stage == Stage.READING ? "Reading" : "Writing")
            .setInitialMax(last > 0 ? last : -1)
            .startsFrom(row, Duration.ofNanos(System.nanoTime() - stageBegan))
            .setUpdateIntervalMillis(BETWEEN_UPDATES_MILLIS)
            .continuousUpdate()
            .clearDisplayOnFinish()
            .setRenderer(
                new Words(blocks ? ProgressBarStyle.UNICODE_BLOCK : ProgressBarStyle.ASCII))
            .setConsumer(new DelegatingProgressBarConsumer(this::show, Terminal.width() - 1))
            .build();
  }

  private void show(String line) {
    err.print("\r" + line);
    err.flush();
  }

  private void stopBar() {
    if (bar != null) {
      bar.close();
      bar = null;
    }
  }

  /** Takes the line away. */
  @Override
  public void close() {
    stopBar();
  }

  /** The figures in the words of a list. */
  private static final class Words extends DefaultProgressBarRenderer {
    Words(ProgressBarStyle style) {
      super(
          style,
          " rows",
          1,
          true,
          new DecimalFormat("#,##0", DecimalFormatSymbols.getInstance(Locale.ROOT)),
          ChronoUnit.SECONDS,
          true,
          Words::left);
    }

    private static Optional<Duration> left(ProgressState state) {
      long done = state.getCurrent() - state.getStart();
      return done <= 0 || state.isIndefinite()
          ? Optional.empty()
          : Optional.of(
              state
                  .getElapsedAfterStart()
                  .multipliedBy(Math.max(0, state.getMax() - state.getCurrent()))
                  .dividedBy(done));
    }

    @Override
    protected String etaString(ProgressState state) {
      return super.etaString(state) + " left";
    }
  }
}

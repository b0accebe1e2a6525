package fineweight.result;

import fineweight.refresh.RefreshReport;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;

/**
 * What became of one file. Immutable.
 *
 * @param file as it was named
 * @param outcome what was done
 * @param exitCode the code that a run over this file alone ends with
 * @param complaint one sentence; there is one exactly where the file failed or was left alone
 * @param report what was understood; empty where there is a complaint
 */
public record FileResult(
    Path file,
    Outcome outcome,
    int exitCode,
    Optional<String> complaint,
    Optional<RefreshReport> report) {

  /** What was done with a file. */
  public enum Outcome {
    /** It was written. */
    FILLED("filled"),
    /** Nothing in it had to change. */
    UNCHANGED("unchanged"),
    /** A dry run looked at it. */
    PREVIEWED("previewed"),
    /** It stood in a folder and holds no inventory. */
    LEFT_ALONE("left alone"),
    /** It could not be filled. */
    FAILED("failed");

    private final String words;

    Outcome(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  public FileResult {
    Objects.requireNonNull(file, "file");
    if (report.isPresent() == complaint.isPresent()) {
      throw new IllegalArgumentException("a file has either a report or a complaint: " + file);
    }
  }

  /** A file that was read, and written if it had to be. */
  public static FileResult of(Path file, RefreshReport report, boolean dryRun) {
    boolean written = report.changedCells() > 0 || report.backup().isPresent();
    Outcome outcome = dryRun ? Outcome.PREVIEWED : written ? Outcome.FILLED : Outcome.UNCHANGED;
    return new FileResult(file, outcome, 0, Optional.empty(), Optional.of(report));
  }

  public static FileResult failed(Path file, int exitCode, String complaint) {
    return new FileResult(file, Outcome.FAILED, exitCode, Optional.of(complaint), Optional.empty());
  }

  public static FileResult leftAlone(Path file, String complaint) {
    return new FileResult(file, Outcome.LEFT_ALONE, 0, Optional.of(complaint), Optional.empty());
  }
}

package fineweight.result;

import java.util.List;
import java.util.Optional;

/**
 * What a run came to. Immutable.
 *
 * @param exitCode what the run ends with
 * @param complaint one sentence, if the run as a whole could not be made
 * @param warnings sentences about prices and the like
 * @param files in the order they were taken
 */
public record RunResult(
    int exitCode, Optional<String> complaint, List<String> warnings, List<FileResult> files) {
  public RunResult {
    warnings = List.copyOf(warnings);
    files = List.copyOf(files);
  }
}

package fineweight.tool;

import fineweight.result.ResultJson;
import fineweight.result.RunResult;
import fineweight.settings.SettingException;
import fineweight.terminal.Screen;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Option;

/** The option that tells another program what a run came to. */
final class ResultOption {
  private static final String STANDARD_OUTPUT = "-";

  @Option(
      names = "--result",
      paramLabel = "FILE",
      description = {
        "Write what the run came to as JSON to a file; - for standard output, which then holds nothing else.",
        "The form is described by the schema docs/result.schema.json."
      })
  private String result;

  /** Where words for a person go. */
  PrintWriter words(PrintWriter out, Screen screen) {
    if (STANDARD_OUTPUT.equals(result)) {
      screen.keepLinesWhole();
    }
    return STANDARD_OUTPUT.equals(result) ? new PrintWriter(Writer.nullWriter()) : out;
  }

  /**
   * @throws SettingException if the result would be written over one of the files
   */
  void refuseOver(List<Path> files) throws SettingException {
    if (result == null || result.equals(STANDARD_OUTPUT)) {
      return;
    }
    Path place = Path.of(result).toAbsolutePath().normalize();
    if (files.stream().anyMatch(file -> file.toAbsolutePath().normalize().equals(place))) {
      throw new SettingException("--result names the workbook itself; choose another file");
    }
  }

  /** Writes it, if it is wanted. */
  void write(RunResult run, PrintWriter out) throws SettingException {
    if (result == null) {
      return;
    }
    if (result.equals(STANDARD_OUTPUT)) {
      out.print(ResultJson.ofPlainLetters().of(run));
      out.flush();
      return;
    }
    try {
      Files.writeString(Path.of(result), new ResultJson().of(run));
    } catch (IOException failed) {
      throw new SettingException(
          "--result: " + result + " cannot be written; choose a folder that you may write to");
    }
  }
}

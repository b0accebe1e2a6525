package fineweight.tool;

import fineweight.workbook.Passwords;
import fineweight.workbook.WorkbookRefusal;
import java.io.BufferedReader;
import java.io.Console;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Where the password of an encrypted workbook comes from: never from the command line itself. */
final class PasswordOption {
  @Option(
      names = "--password-file",
      paramLabel = "FILE",
      description = {
        "With --dry-run: a file whose first line is the password of an encrypted workbook;",
        "without it you are asked at the terminal."
      })
  private Path file;

  Passwords passwords() {
    return file == null ? PasswordOption::asked : workbook -> Optional.of(read());
  }

  private String read() throws WorkbookRefusal {
    try (BufferedReader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
      String line = reader.readLine();
      if (line != null && !line.isEmpty()) {
        return line;
      }
    } catch (IOException e) {
      throw new WorkbookRefusal(
          WorkbookRefusal.Kind.FILE,
          "The password file %s cannot be read: check its name, its rights and that it is text in UTF-8."
              .formatted(file),
          e);
    }
    throw new WorkbookRefusal(
        WorkbookRefusal.Kind.FILE,
        "The password file %s is empty: write the password on its first line.".formatted(file));
  }

  /** Nobody is asked where nobody sits. */
  private static Optional<String> asked(Path workbook) {
    Console console = System.console();
    if (console == null) {
      return Optional.empty();
    }
    char[] typed = console.readPassword("Password of %s: ", workbook.getFileName());
    return typed == null || typed.length == 0
        ? Optional.empty()
        : Optional.of(String.valueOf(typed));
  }
}

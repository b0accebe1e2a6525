package fineweight.tool;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

class CommandPageTest {
  /** After a change: run with {@code -Dfineweight.write.docs=true} once, and read the page. */
  @Test
  void thePageIsThatOfTheCommands() throws IOException {
    Path page = Vocabulary.root().resolve("docs/commands.md");
    if (Boolean.getBoolean("fineweight.write.docs")) {
      Files.writeString(page, markdown());
    }
    assertThat(page).content().isEqualTo(markdown());
  }

  private static String markdown() {
    CommandLine line = Main.commandLine(Told.surroundings(new StringWriter(), new StringWriter()));
    StringBuilder page =
        new StringBuilder(
            "# Commands and options\n\nThis page is made from the program's own help.\n");
    help(page, line);
    line.getSubcommands().values().forEach(command -> help(page, command));
    return page.toString();
  }

  private static void help(StringBuilder page, CommandLine command) {
    page.append("\n## ")
        .append(command.getCommandSpec().qualifiedName())
        .append("\n\n```\n")
        .append(command.getUsageMessage().strip())
        .append("\n```\n");
  }
}

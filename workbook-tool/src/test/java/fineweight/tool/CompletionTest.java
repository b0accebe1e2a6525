package fineweight.tool;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A real shell completes with what the command prints. */
class CompletionTest {
  @TempDir Path folder;

  @Test
  void bashCompletesCommandsAndOptions() throws Exception {
    assumeTrue(Files.isExecutable(Path.of("/bin/bash")));
    Told told = Told.by("completion");
    assertThat(told.code()).isZero();
    Path script = Files.writeString(folder.resolve("completion.sh"), told.out());
    assertThat(completed(script, "fineweight ref")).contains("refresh").doesNotContain("restore");
    assertThat(completed(script, "fineweight refresh --sp"))
        .contains("--spot", "--spot-file", "--spot-date")
        .doesNotContain("--wear");
  }

  private static String completed(Path script, String line) throws Exception {
    int words = line.split(" ").length;
    String bash =
        "source '%s'; COMP_LINE='%s'; COMP_WORDS=(%s); COMP_CWORD=%d; _complete_fineweight; echo \"${COMPREPLY[@]}\""
            .formatted(script, line, line, words - 1);
    Process process = new ProcessBuilder("/bin/bash", "-c", bash).redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(said).isZero();
    return said;
  }
}

package fineweight.workbook.save;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.BufferedReader;
import java.io.File;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A process that saves is killed at random moments. */
class SafeSaveKillTest {
  private static final int KILLS = 50;
  private static final long SEED = 20261125;

  @TempDir Path folder;

  @Test
  void aKilledProcessLeavesAWholeFile() throws Exception {
    Path file = Files.write(folder.resolve("coins.txt"), EndlessSaver.content(0));
    Random random = new Random(SEED);
    int leftovers = 0;
    for (int kill = 1; kill <= KILLS; kill++) {
      killAfter(random.nextInt(40_000), file, 1000L * kill);

      assertThatCode(() -> EndlessSaver.requireWhole(file)).doesNotThrowAnyException();
      for (Backups.Backup backup : Backups.onDisk().list(file)) {
        assertThatCode(() -> EndlessSaver.requireWhole(backup.path())).doesNotThrowAnyException();
      }
      leftovers += parts();
      saveOnce(file, 1000L * kill + 999);
      assertThat(parts()).as("stray files after the next run").isZero();
      assertThat(Backups.onDisk().list(file)).hasSizeLessThanOrEqualTo(5);
    }
    // Otherwise every kill came between two saves, and nothing was proven.
    assertThat(leftovers).as("kills in the middle of a save").isPositive();
  }

  private int parts() throws Exception {
    return (int) Folder.names(folder).stream().filter(name -> name.endsWith(".part")).count();
  }

  private static void saveOnce(Path file, long state) throws Exception {
    SafeSave.onDisk()
        .replace(
            file,
            FileFingerprint.of(file),
            out -> out.write(EndlessSaver.content(state)),
            EndlessSaver::requireWhole);
  }

  private static void killAfter(int microseconds, Path file, long state) throws Exception {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    String classes = place(EndlessSaver.class) + File.pathSeparator + place(SafeSave.class);
    Process saver =
        new ProcessBuilder(
                java,
                "-Xshare:auto",
                "-XX:TieredStopAtLevel=1",
                "-Xmx32m",
                "-cp",
                classes,
                EndlessSaver.class.getName(),
                file.toString(),
                Long.toString(state))
            .redirectErrorStream(true)
            .start();
    try (BufferedReader output = saver.inputReader(StandardCharsets.UTF_8)) {
      assertThat(output.readLine()).isEqualTo("saved");
      TimeUnit.MICROSECONDS.sleep(microseconds);
    } finally {
      saver.destroyForcibly().waitFor();
    }
  }

  private static Path place(Class<?> type) throws URISyntaxException {
    return Path.of(type.getProtectionDomain().getCodeSource().getLocation().toURI());
  }
}

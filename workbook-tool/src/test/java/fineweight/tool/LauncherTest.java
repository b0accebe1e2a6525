package fineweight.tool;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The launcher script, in a checkout of its own with stand-ins for Java and Maven. */
@EnabledOnOs({OS.LINUX, OS.MAC})
class LauncherTest {
  @TempDir Path folder;
  private Path root;
  private Path programs;

  @BeforeEach
  void checkout() throws IOException {
    root = Files.createDirectories(folder.resolve("a checkout with spaces"));
    programs = Files.createDirectories(folder.resolve("programs"));
    for (String source :
        new String[] {"functions/src/main", "templates/src/main", "workbook-tool/src/main"}) {
      Files.createDirectories(root.resolve(source));
      Files.writeString(root.resolve(source).getParent().getParent().resolve("pom.xml"), "");
    }
    Files.writeString(root.resolve("pom.xml"), "");
    Path script =
        Path.of(System.getProperty("fineweight.root", ".."), "workbook-tool", "fineweight");
    Files.copy(script, launcher());
    Files.setPosixFilePermissions(launcher(), PosixFilePermissions.fromString("rwxr-xr-x"));
  }

  private Path launcher() {
    return root.resolve("workbook-tool/fineweight");
  }

  private void java(int version) throws IOException {
    program(
        "java",
        """
        if [ "$1" = -version ]; then echo 'openjdk version "%d.0.1" 2026-01-01' >&2; exit 0; fi
        while [ "$1" != fineweight.tool.Main ]; do shift; done
        shift
        for word; do echo "[$word]"; done
        exit 7
        """
            .formatted(version));
  }

  private void maven() throws IOException {
    program("mvn", "echo built >>'%s/builds'".formatted(folder));
  }

  private void program(String name, String script) throws IOException {
    program(programs.resolve(name), script);
  }

  private static void program(Path program, String script) throws IOException {
    Files.writeString(program, "#!/bin/sh\n" + script + "\n");
    Files.setPosixFilePermissions(program, PosixFilePermissions.fromString("rwxr-xr-x"));
  }

  private record Ended(int code, String out, String err) {}

  private Ended start(Map<String, String> settings, Path script, String... words)
      throws IOException, InterruptedException {
    String[] command = new String[words.length + 1];
    command[0] = script.toString();
    System.arraycopy(words, 0, command, 1, words.length);
    ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile());
    builder.environment().remove("JAVA_HOME");
    builder.environment().put("PATH", programs + ":" + tools());
    builder.environment().putAll(settings);
    Path out = folder.resolve("out");
    Path err = folder.resolve("err");
    Process process = builder.redirectOutput(out.toFile()).redirectError(err.toFile()).start();
    assertThat(process.waitFor(1, TimeUnit.MINUTES)).isTrue();
    return new Ended(
        process.exitValue(),
        Files.readString(out, StandardCharsets.UTF_8),
        Files.readString(err, StandardCharsets.UTF_8));
  }

  /** The tools of every Unix, without any Java or Maven of this machine. */
  private Path tools() throws IOException {
    Path tools = folder.resolve("tools");
    if (!Files.exists(tools)) {
      Files.createDirectories(tools);
      for (String tool : "cat dirname find head mkdir readlink rm sed".split(" ")) {
        Path place = Path.of(Files.isExecutable(Path.of("/bin", tool)) ? "/bin" : "/usr/bin", tool);
        program(tools.resolve(tool), "exec %s \"$@\"".formatted(place));
      }
    }
    return tools;
  }

  private long builds() throws IOException {
    Path log = folder.resolve("builds");
    return Files.exists(log) ? Files.readAllLines(log).size() : 0;
  }

  @Test
  void buildsOnceThenStartsAtOnceAndHandsWordsAndCodeOn() throws Exception {
    java(17);
    maven();
    Ended first = start(Map.of(), launcher(), "refresh", "my coins.xlsx", "--spot", "XAG=30");
    assertThat(first.err().lines()).hasSize(1);
    assertThat(first.err()).contains("once");
    assertThat(first.out().lines())
        .containsExactly("[refresh]", "[my coins.xlsx]", "[--spot]", "[XAG=30]");
    assertThat(first.code()).isEqualTo(7);
    Ended second = start(Map.of(), launcher(), "--version");
    assertThat(second.err()).isEmpty();
    assertThat(builds()).isEqualTo(1);
  }

  @Test
  void buildsAgainForNewerSourcesAndWhenAsked() throws Exception {
    java(21);
    maven();
    start(Map.of(), launcher());
    // The clock of some file systems counts in seconds.
    Thread.sleep(1100);
    Files.writeString(root.resolve("functions/src/main/Coin.java"), "");
    start(Map.of(), launcher());
    assertThat(builds()).isEqualTo(2);
    start(Map.of("FINEWEIGHT_BUILD", "1"), launcher());
    assertThat(builds()).isEqualTo(3);
  }

  @Test
  void followsALinkToIt() throws Exception {
    java(17);
    maven();
    Path link = Files.createSymbolicLink(folder.resolve("fw"), launcher());
    assertThat(start(Map.of(), link, "x").out()).isEqualTo("[x]\n");
  }

  @Test
  void saysWhatIsMissing() throws Exception {
    assertThat(start(Map.of(), launcher()).err()).contains("Java 17").contains("Install");
    java(11);
    maven();
    Ended old = start(Map.of(), launcher());
    assertThat(old.code()).isEqualTo(69);
    assertThat(old.err()).contains("version 11").contains("Java 17");
    java(17);
    Files.delete(programs.resolve("mvn"));
    Ended without = start(Map.of(), launcher());
    assertThat(without.code()).isEqualTo(69);
    assertThat(without.err()).contains("Maven");
  }

  @Test
  void aFailedBuildShowsWhyAndIsTriedAgain() throws Exception {
    java(17);
    program("mvn", "echo 'no space left'; exit 1");
    Ended failed = start(Map.of(), launcher());
    assertThat(failed.code()).isEqualTo(69);
    assertThat(failed.err()).contains("no space left").contains("build failed");
    maven();
    assertThat(start(Map.of(), launcher(), "x").out()).isEqualTo("[x]\n");
  }
}

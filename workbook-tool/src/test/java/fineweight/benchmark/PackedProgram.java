package fineweight.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.spi.ToolProvider;

/**
 * The classes as the launcher starts them: packed into jars, their list made ready to be mapped,
 * the quick compiler and the simple collector alone, little room for what is new.
 */
final class PackedProgram {
  private static final List<String> QUICK =
      List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xmn24m");

  private final String classPath;
  private final Path archive;

  private PackedProgram(String classPath, Path archive) {
    this.classPath = classPath;
    this.archive = archive;
  }

  /** Only an archive of jars is taken by Java. */
  static PackedProgram in(Path folder) throws IOException, InterruptedException {
    String classes =
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    List<String> jars = new ArrayList<>();
    for (String each : classes.split(System.getProperty("path.separator"))) {
      if (Files.isDirectory(Path.of(each))) {
        jars.add(jar(Path.of(each), folder.resolve("classes-" + jars.size() + ".jar")));
      } else if (!each.isEmpty()) {
        jars.add(each);
      }
    }
    PackedProgram program =
        new PackedProgram(
            String.join(System.getProperty("path.separator"), jars), folder.resolve("list.jsa"));
    Path trial = InventoryFile.write(folder.resolve("trial.xlsx"), 200);
    Measurement.of(
        program.command(List.of("-XX:ArchiveClassesAtExit=" + program.archive)),
        "engine",
        trial,
        200,
        1);
    return program;
  }

  private static String jar(Path classes, Path jar) {
    int code =
        ToolProvider.findFirst("jar")
            .orElseThrow()
            .run(
                System.out,
                System.err,
                "--create",
                "--file",
                jar.toString(),
                "-C",
                classes.toString(),
                ".");
    if (code != 0) {
      throw new IllegalStateException("jar ended with " + code);
    }
    return jar.toString();
  }

  private List<String> command(List<String> flags) {
    List<String> command = new ArrayList<>(plain("-Xmx512m"));
    command.addAll(QUICK);
    command.addAll(flags);
    return command;
  }

  /** Java as it starts by itself. */
  List<String> plain(String heap) {
    return List.of(
        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
        "-cp",
        classPath,
        "-Xlog:cds=off",
        "-Xlog:cds+dynamic=off",
        heap);
  }

  /** Java as the launcher starts it. */
  List<String> quick(String heap) {
    List<String> command = new ArrayList<>(plain(heap));
    command.addAll(QUICK);
    command.add("-XX:SharedArchiveFile=" + archive);
    return command;
  }
}

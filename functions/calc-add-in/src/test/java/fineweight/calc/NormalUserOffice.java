package fineweight.calc;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;

/**
 * LibreOffice in a fresh profile of its own, run by a normal user: extensions of a user are refused
 * to the administrator, so that one calls it as {@code nobody}.
 */
final class NormalUserOffice implements AutoCloseable {
  /** Comma, quotes, UTF-8, all texts quoted, numbers with all their digits. */
  private static final String CSV =
      "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,true,false,false,false,false,-1";

  private final Path folder;

  private NormalUserOffice(Path folder) {
    this.folder = folder;
  }

  /** The office of this machine; the calling test is skipped if there is none. */
  static NormalUserOffice fresh() throws IOException {
    boolean present = find("soffice").isPresent() && find("unopkg").isPresent();
    if (!Boolean.getBoolean("fineweight.must.office")) {
      Assumptions.assumeTrue(present, "no LibreOffice on this machine");
    }
    assertThat(present).as("LibreOffice is missing").isTrue();
    Path folder = Files.createTempDirectory("add-in");
    NormalUserOffice office = new NormalUserOffice(folder);
    office.open(folder);
    Path user = folder.resolve("profile").resolve("user");
    Files.createDirectories(user);
    office.open(folder.resolve("profile"));
    office.open(user);
    Path settings = user.resolve("registrymodifications.xcu");
    Files.writeString(settings, settings(), StandardCharsets.UTF_8);
    office.open(settings);
    return office;
  }

  private static Optional<Path> find(String name) {
    return Arrays.stream(System.getenv().getOrDefault("PATH", "").split(":"))
        .map(each -> Path.of(each, name))
        .filter(Files::isExecutable)
        .findFirst();
  }

  /** "Recalculation on load: always", for both families of files. */
  private static String settings() {
    return """
    <?xml version="1.0" encoding="UTF-8"?>
    <oor:items xmlns:oor="http://openoffice.org/2001/registry"\
     xmlns:xs="http://www.w3.org/2001/XMLSchema"\
     xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
    <item oor:path="/org.openoffice.Office.Calc/Formula/Load">\
    <prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
    <item oor:path="/org.openoffice.Office.Calc/Formula/Load">\
    <prop oor:name="ODFRecalcMode" oor:op="fuse"><value>0</value></prop></item>
    </oor:items>
    """;
  }

  /** A file of this folder, readable by the user of the office. */
  Path write(String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.writeString(file, text, StandardCharsets.UTF_8);
    open(file);
    return file;
  }

  void install(Path extension) throws IOException, InterruptedException {
    Path copy = folder.resolve("extension.oxt");
    Files.copy(extension, copy);
    open(copy);
    run("unopkg", "add", "-f", "-s", copy.toString(), profile());
  }

  /** The files converted, with their names kept; a kind such as {@code xlsx}. */
  List<Path> convert(String kind, List<Path> files, String outFolder)
      throws IOException, InterruptedException {
    Path out = Files.createDirectories(folder.resolve(outFolder));
    open(out);
    List<String> command =
        new ArrayList<>(
            List.of(
                "soffice",
                profile(),
                "--headless",
                "--norestore",
                "--convert-to",
                kind.equals("csv") ? CSV : kind,
                "--outdir",
                out.toString()));
    files.forEach(file -> command.add(file.toString()));
    run(command.toArray(String[]::new));
    return files.stream().map(file -> out.resolve(converted(file, kind))).toList();
  }

  /** The office, waiting for another program to tell it what to do. */
  Process listen(int port) throws IOException {
    List<String> words =
        asUser(
            "soffice",
            profile(),
            "--headless",
            "--norestore",
            "--accept=socket,host=127.0.0.1,port=" + port + ";urp;");
    return builder(words, folder.resolve("listening.txt")).start();
  }

  private static String converted(Path file, String kind) {
    String name = file.getFileName().toString();
    String stem = name.substring(0, name.lastIndexOf('.'));
    return kind.equals("csv") ? stem + "-cases.csv" : stem + "." + kind;
  }

  private String profile() {
    return "-env:UserInstallation=" + folder.resolve("profile").toUri();
  }

  private void run(String... command) throws IOException, InterruptedException {
    List<String> words = asUser(command);
    Path log = folder.resolve("log.txt");
    Process process = builder(words, log).start();
    boolean ended = process.waitFor(5, TimeUnit.MINUTES);
    if (!ended) {
      process.destroyForcibly();
    }
    assertThat(ended && process.exitValue() == 0)
        .as(String.join(" ", words) + "\n" + Files.readString(log))
        .isTrue();
  }

  private static List<String> asUser(String... command) {
    List<String> words = new ArrayList<>();
    if (System.getProperty("user.name").equals("root")) {
      words.addAll(List.of("runuser", "-u", "nobody", "--"));
    }
    words.addAll(List.of(command));
    return words;
  }

  private ProcessBuilder builder(List<String> words, Path log) {
    ProcessBuilder builder =
        new ProcessBuilder(words).redirectErrorStream(true).redirectOutput(log.toFile());
    builder.environment().put("HOME", folder.toString());
    builder.directory(folder.toFile());
    return builder;
  }

  private void open(Path path) throws IOException {
    Files.setPosixFilePermissions(path, PosixFilePermissions.fromString("rwxrwxrwx"));
  }

  @Override
  public void close() throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path each : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(each);
      }
    }
  }
}

package fineweight.workbook.office;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;

/** LibreOffice in a fresh profile of its own for every call. */
public final class Office {
  /** Comma, quotes, UTF-8, all texts quoted, numbers with all their digits, every sheet a file. */
  private static final String CSV =
      "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,true,false,false,false,false,-1";

  private final Path program;

  private Office(Path program) {
    this.program = program;
  }

  /** The office of this machine; the calling test is skipped if there is none. */
  public static Office onThisMachine() {
    Optional<Path> program = find("soffice");
    if (!Boolean.getBoolean("fineweight.must.office")) {
      Assumptions.assumeTrue(program.isPresent(), "no LibreOffice on this machine");
    }
    return new Office(program.orElseThrow(() -> new AssertionError("LibreOffice is missing")));
  }

  static Optional<Path> find(String name) {
    return Arrays.stream(System.getenv().getOrDefault("PATH", "").split(":"))
        .map(each -> Path.of(each, name))
        .filter(Files::isExecutable)
        .findFirst();
  }

  /**
   * Every sheet of every file as text, named {@code file-sheet.csv}.
   *
   * @param recalculate whether all formulas are calculated anew; otherwise only those without a
   *     stored result, as the office does by itself
   * @return the files on which the office crashed
   */
  public List<Path> csv(List<Path> files, Path out, boolean recalculate)
      throws IOException, InterruptedException {
    List<Path> crashed = new ArrayList<>();
    List<Path> open = new ArrayList<>(files);
    while (!open.isEmpty()) {
      if (run(CSV, open, out, recalculate).isEmpty()) {
        return crashed;
      }
      // It reads them in order: the first without a result is the one it died on.
      while (!open.isEmpty() && hasResult(open.get(0), out)) {
        open.remove(0);
      }
      if (!open.isEmpty()) {
        crashed.add(open.remove(0));
      }
    }
    return crashed;
  }

  private static boolean hasResult(Path file, Path out) throws IOException {
    String start = file.getFileName().toString().replaceFirst("\\.[^.]*$", "-");
    try (Stream<Path> results = Files.list(out)) {
      return results.anyMatch(each -> each.getFileName().toString().startsWith(start));
    }
  }

  public void pdf(Path file, Path out) throws IOException, InterruptedException {
    convert("pdf:calc_pdf_Export", file, out, false, ".pdf");
  }

  /** Loads, calculates and saves in the same format. */
  public void saveAgain(Path file, Path out) throws IOException, InterruptedException {
    convert("xlsx:Calc MS Excel 2007 XML", file, out, true, ".xlsx");
  }

  private void convert(String filter, Path file, Path out, boolean recalculate, String ending)
      throws IOException, InterruptedException {
    assertThat(run(filter, List.of(file), out, recalculate)).isEmpty();
    String name = file.getFileName().toString().replaceFirst("\\.[^.]*$", ending);
    assertThat(out.resolve(name)).isNotEmptyFile();
  }

  /** What the office said when it failed; empty for a success. */
  private String run(String filter, List<Path> files, Path out, boolean recalculate)
      throws IOException, InterruptedException {
    Path profile = Files.createTempDirectory("office");
    try {
      if (recalculate) {
        writeSettings(profile);
      }
      Path log = profile.resolve("log.txt");
      List<String> command =
          new ArrayList<>(
              List.of(
                  program.toString(),
                  "-env:UserInstallation=" + profile.toUri(),
                  "--headless",
                  "--norestore",
                  "--convert-to",
                  filter,
                  "--outdir",
                  Files.createDirectories(out).toString()));
      files.forEach(each -> command.add(each.toString()));
      Process office =
          new ProcessBuilder(command)
              .redirectErrorStream(true)
              .redirectOutput(log.toFile())
              .start();
      boolean ended = office.waitFor(5, TimeUnit.MINUTES);
      if (!ended) {
        office.destroyForcibly();
      }
      String words = Files.readString(log);
      return ended && office.exitValue() == 0 ? "" : "failed: " + words;
    } finally {
      delete(profile);
    }
  }

  /** The office's own switch "recalculation on load: always". */
  private static void writeSettings(Path profile) throws IOException {
    String settings =
        """
        <?xml version="1.0" encoding="UTF-8"?>
        <oor:items xmlns:oor="http://openoffice.org/2001/registry"\
         xmlns:xs="http://www.w3.org/2001/XMLSchema"\
         xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
        <item oor:path="/org.openoffice.Office.Calc/Formula/Load">\
        <prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
        </oor:items>
        """;
    Path user = Files.createDirectories(profile.resolve("user"));
    Files.writeString(user.resolve("registrymodifications.xcu"), settings, StandardCharsets.UTF_8);
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path each : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(each);
      }
    }
  }
}

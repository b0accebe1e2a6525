package fineweight.workbook.office;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;

/**
 * LibreOffice with our add-in, as a normal user has it: the office lets no administrator install an
 * extension, so that one calls it as {@code nobody}.
 */
public final class AddInOffice {
  private static final String CSV =
      "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,true,false,false,false,false,-1";

  /** Where the module before this one packs it. */
  private static final Path EXTENSION =
      Path.of("..", "functions", "calc-add-in", "target", "fineweight-calc.oxt");

  private final Path folder;

  private AddInOffice(Path folder) {
    this.folder = folder;
  }

  /**
   * The office of this machine; the calling test is skipped if there is none.
   *
   * @param folder empty, for profile and files
   */
  public static AddInOffice in(Path folder) throws IOException, InterruptedException {
    boolean present =
        Office.find("soffice").isPresent()
            && Office.find("unopkg").isPresent()
            && Files.exists(EXTENSION);
    if (!Boolean.getBoolean("fineweight.must.office")) {
      Assumptions.assumeTrue(present, "no LibreOffice, or no packed add-in");
    }
    assertThat(present).as("LibreOffice or " + EXTENSION + " is missing").isTrue();
    AddInOffice office = new AddInOffice(folder);
    for (Path each = folder;
        each.startsWith(tmp()) && !each.equals(tmp());
        each = each.getParent()) {
      office.open(each);
    }
    Path copy = Files.copy(EXTENSION, folder.resolve("extension.oxt"));
    office.open(copy);
    office.recalculating("with");
    office.run("unopkg", "add", "-f", "-s", copy.toString(), office.profile("with"));
    return office;
  }

  private static Path tmp() {
    return Path.of(System.getProperty("java.io.tmpdir"));
  }

  private String profile(String name) {
    return "-env:UserInstallation=" + folder.resolve(name).toUri();
  }

  /** A profile whose office calculates every formula of a file that it opens. */
  private void recalculating(String name) throws IOException {
    Path user = Files.createDirectories(folder.resolve(name).resolve("user"));
    open(folder.resolve(name));
    open(user);
    Path settings = user.resolve("registrymodifications.xcu");
    Files.writeString(
        settings,
        """
        <?xml version="1.0" encoding="UTF-8"?>
        <oor:items xmlns:oor="http://openoffice.org/2001/registry"\
         xmlns:xs="http://www.w3.org/2001/XMLSchema"\
         xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
        <item oor:path="/org.openoffice.Office.Calc/Formula/Load">\
        <prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
        </oor:items>
        """,
        StandardCharsets.UTF_8);
    open(settings);
  }

  /** One sheet as text, all formulas calculated by the office with the add-in. */
  public Path calculated(Path file, String sheet) throws IOException, InterruptedException {
    return csv(file, sheet, "with");
  }

  /** One sheet as text, as an office shows it that has no add-in and no settings. */
  public Path shownWithoutAddIn(Path file, String sheet) throws IOException, InterruptedException {
    return csv(file, sheet, "plain");
  }

  private Path csv(Path file, String sheet, String profile)
      throws IOException, InterruptedException {
    Path out = Files.createDirectories(folder.resolve(profile + "-out"));
    open(out);
    Path copy = folder.resolve(file.getFileName());
    Files.write(copy, Files.readAllBytes(file));
    open(copy);
    run(
        "soffice",
        profile(profile),
        "--headless",
        "--norestore",
        "--convert-to",
        CSV,
        "--outdir",
        out.toString(),
        copy.toString());
    return out.resolve(
        file.getFileName().toString().replaceFirst("\\.[^.]*$", "-" + sheet + ".csv"));
  }

  private void run(String... command) throws IOException, InterruptedException {
    List<String> words = new ArrayList<>();
    if (System.getProperty("user.name").equals("root")) {
      words.addAll(List.of("runuser", "-u", "nobody", "--"));
    }
    words.addAll(List.of(command));
    Path log = folder.resolve("log.txt");
    ProcessBuilder builder =
        new ProcessBuilder(words).redirectErrorStream(true).redirectOutput(log.toFile());
    builder.environment().put("HOME", folder.toString());
    builder.directory(folder.toFile());
    Process process = builder.start();
    boolean ended = process.waitFor(5, TimeUnit.MINUTES);
    if (!ended) {
      process.destroyForcibly();
    }
    assertThat(ended && process.exitValue() == 0)
        .as(String.join(" ", words) + "\n" + Files.readString(log))
        .isTrue();
  }

  private void open(Path path) throws IOException {
    Files.setPosixFilePermissions(path, PosixFilePermissions.fromString("rwxrwxrwx"));
  }
}

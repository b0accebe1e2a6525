package fineweight.tool;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import fineweight.column.CalculatedColumn;
import fineweight.column.InputColumn;
import fineweight.column.RowState;
import fineweight.sheet.SheetFunctions;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;

/** Every name that a user meets, taken from the program itself and from what it writes. */
final class Vocabulary {
  private static final String MONEY = "(?i) (USD|EUR)$";

  private final Map<String, Set<String>> words = new TreeMap<>();

  private Vocabulary() {}

  /**
   * @param folder takes the workbook that is looked into
   */
  static Map<String, Set<String>> of(Path folder) throws IOException {
    Vocabulary vocabulary = new Vocabulary();
    vocabulary.commands();
    vocabulary.columns();
    vocabulary.sheets(folder);
    vocabulary.files();
    return vocabulary.words;
  }

  private void add(String section, String word) {
    words.computeIfAbsent(section, key -> new TreeSet<>()).add(word);
  }

  private void commands() {
    CommandLine line = Main.commandLine(Told.surroundings(new StringWriter(), new StringWriter()));
    command(line.getCommandSpec());
    line.getSubcommands()
        .forEach(
            (name, command) -> {
              add("Commands", name);
              command(command.getCommandSpec());
            });
  }

  private void command(CommandSpec spec) {
    spec.options()
        .forEach(
            option -> {
              for (String name : option.names()) {
                add("Options", name);
              }
              label(option);
            });
    spec.positionalParameters().forEach(this::label);
  }

  private void label(ArgSpec each) {
    if (each.arity().max() > 0) {
      add("What is put for", each.paramLabel());
    }
  }

  private void columns() {
    for (CalculatedColumn column : CalculatedColumn.values()) {
      add("Columns that are added", column.heading("USD").replaceAll(MONEY, ""));
    }
    for (RowState state : RowState.values()) {
      add("States", state.label());
      add("States", state.plainLabel());
    }
    for (InputColumn column : InputColumn.values()) {
      add("What a column is understood as", column.words());
    }
    SheetFunctions.all().forEach(function -> add("Functions", function.name()));
  }

  private void sheets(Path folder) throws IOException {
    Path file = folder.resolve(DemoCommand.WORKBOOK);
    demand(Told.by("demo", folder));
    try (XSSFWorkbook starter = read(file)) {
      names(starter.getSheetAt(0), "Columns of the starter", heading -> heading);
    }
    Path fees = Files.writeString(folder.resolve("fees.json"), "{\"currency\": \"USD\"}");
    demand(
        Told.by(
            "refresh",
            file,
            "--spot=XAG=31",
            "--spot-date=2026-11-26",
            "--set=us",
            "--fees=" + fees,
            "--sale-list=" + folder.resolve("sale.csv"),
            "--place-list=" + folder.resolve("place.csv")));
    try (XSSFWorkbook book = read(file)) {
      for (int i = 0; i < book.getNumberOfSheets(); i++) {
        XSSFSheet sheet = book.getSheetAt(i);
        add("Sheets", sheet.getSheetName());
        if (sheet.getSheetName().startsWith("Fineweight")) {
          names(sheet, "Headings on the sheets that are added", heading -> heading);
        }
        charts(sheet);
      }
      book.getAllNames().stream()
          .map(name -> name.getNameName())
          .filter(name -> name.startsWith("Fineweight"))
          .forEach(
              name ->
                  add(
                      "Defined names",
                      name.replaceAll("(column|sheet)_.*", "$1_")
                          .replaceAll("_X[A-Z]{2}$|_[A-Z][a-z]$", "_XAG")));
    }
  }

  private static XSSFWorkbook read(Path file) throws IOException {
    return new XSSFWorkbook(Files.newInputStream(file));
  }

  private static void demand(Told told) {
    if (told.code() != 0) {
      throw new IllegalStateException(told.err());
    }
  }

  private void charts(XSSFSheet sheet) {
    if (sheet.getDrawingPatriarch() == null) {
      return;
    }
    for (XSSFChart chart : sheet.getDrawingPatriarch().getCharts()) {
      add(
          "Charts",
          chart
              .getTitleText()
              .getString()
              .replaceAll(MONEY, "")
              .replaceAll("^Lot .*:", "Lot NAME:"));
    }
  }

  private void names(XSSFSheet sheet, String section, Function<String, String> form) {
    sheet.forEach(
        row ->
            row.forEach(
                cell -> {
                  XSSFCell each = (XSSFCell) cell;
                  boolean heading =
                      each.getCellType() == CellType.STRING
                          && each.getCellStyle().getFont().getBold()
                          && each.getCellStyle().getFillPattern()
                              == FillPatternType.SOLID_FOREGROUND;
                  boolean ours =
                      section.equals("Columns of the starter")
                          && words
                              .get("Columns that are added")
                              .contains(each.toString().replaceAll(MONEY, ""));
                  if (heading && !ours) {
                    add(section, form.apply(each.getStringCellValue().replaceAll(MONEY, "")));
                  }
                }));
  }

  private void files() throws IOException {
    Path docs = root().resolve("docs");
    keys(new ObjectMapper().readTree(docs.resolve("settings.schema.json").toFile()), "Settings");
    keys(new ObjectMapper().readTree(docs.resolve("result.schema.json").toFile()), "Result");
    Path window = root().resolve("workbook-tool/src/main/java/fineweight/window");
    for (String part : List.of("WindowParts", "ResultTables", "PriceFields")) {
      quoted(window.resolve(part + ".java"), "\"([A-Z][A-Za-z' ]{2,30}(?:\\.\\.\\.)?)\"")
          .forEach(word -> add("Window", word));
    }
    for (String sources : List.of("xlsx/style/DraftStyles", "xlsx/chart/ChartXml")) {
      quoted(
              root()
                  .resolve("workbook-tool/src/main/java/fineweight/workbook/" + sources + ".java"),
              "\"(?:FF)?([0-9A-F]{6})\"")
          .forEach(colour -> add("Colours", colour));
    }
  }

  private void keys(JsonNode node, String section) {
    node.path("properties").fieldNames().forEachRemaining(name -> add(section, name));
    node.forEach(below -> keys(below, section));
  }

  private static List<String> quoted(Path source, String pattern) throws IOException {
    Matcher matcher = Pattern.compile(pattern).matcher(Files.readString(source));
    List<String> found = new ArrayList<>();
    while (matcher.find()) {
      found.add(matcher.group(1));
    }
    return found;
  }

  /** Everything that is written in sources, launchers and the settings of the build. */
  static String sources() throws IOException {
    try (Stream<Path> files =
        Stream.of("functions/src/main", "templates/src/main", "workbook-tool")
            .map(root()::resolve)
            .flatMap(Vocabulary::under)) {
      return files.map(Vocabulary::text).collect(Collectors.joining("\n"));
    }
  }

  private static Stream<Path> under(Path folder) {
    try {
      return Files.walk(folder)
          .filter(
              file ->
                  file.toString().endsWith(".java") && file.toString().contains("src/main")
                      || file.getFileName().toString().matches("fineweight(\\.cmd)?|package"))
          .filter(Files::isRegularFile)
          .filter(file -> !file.toString().contains("/target/"));
    } catch (IOException unreadable) {
      throw new java.io.UncheckedIOException(unreadable);
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException unreadable) {
      throw new java.io.UncheckedIOException(unreadable);
    }
  }

  static Path root() {
    return Path.of(System.getProperty("fineweight.root", ".."));
  }
}

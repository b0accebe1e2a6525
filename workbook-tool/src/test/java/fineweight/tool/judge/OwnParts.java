package fineweight.tool.judge;

import fineweight.workbook.CellPlace;
import fineweight.workbook.oracle.Expected;
import fineweight.workbook.oracle.parts.PackageParts;
import fineweight.workbook.oracle.parts.Places;
import fineweight.workbook.oracle.parts.Places.Area;
import fineweight.workbook.oracle.parts.RawZip;
import fineweight.workbook.oracle.parts.XmlElement;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What in a filled workbook is ours, as its hidden names say.
 *
 * @param columns our columns from their heading down
 * @param sheets our sheets in lower case
 * @param names our names in lower case
 */
public record OwnParts(List<Area> columns, Set<String> sheets, Set<String> names) {
  public static final OwnParts NONE = new OwnParts(List.of(), Set.of(), Set.of());

  private static final Pattern CELL = Pattern.compile("'?(.+?)'?!\\$([A-Z]+)\\$([0-9]+)");

  /** A line of the dry run: the cell, what stands in it and what shall stand there. */
  private static final Pattern CHANGE =
      Pattern.compile("(?m)^(.+)!([A-Z]{1,3}[0-9]{1,7}): (?:\"|\\(empty)");

  public static OwnParts of(Path file) throws IOException {
    List<Area> columns = new ArrayList<>();
    Set<String> sheets = new TreeSet<>();
    Set<String> names = new TreeSet<>();
    for (XmlElement name : new PackageParts(RawZip.of(file)).definedNames()) {
      Matcher cell = CELL.matcher(name.allText().strip());
      if (name.get("name").startsWith("Fineweight_") && cell.matches()) {
        names.add(name.get("name").toLowerCase(Locale.ROOT));
        String sheet = cell.group(1).replace("''", "'");
        if (name.get("name").startsWith("Fineweight_column_")) {
          int column = Places.column(cell.group(2));
          int row = Integer.parseInt(cell.group(3)) - 1;
          columns.add(new Area(sheet, row, column, Area.LAST_ROW, column));
        } else {
          sheets.add(sheet.toLowerCase(Locale.ROOT));
        }
      }
    }
    return new OwnParts(columns, sheets, names);
  }

  /** What the dry run has announced was allowed, and nothing else. */
  public Expected expected(String dryRun) {
    return new Expected(columns, sheets, names, announced(dryRun), true);
  }

  /** Nothing may be left, but results of formulas that the first run took out stay out. */
  public Expected takenOut(String dryRun) {
    Set<CellPlace> results =
        announced(dryRun).stream()
            .filter(place -> columns.stream().noneMatch(area -> area.contains(place)))
            .collect(Collectors.toSet());
    return new Expected(List.of(), Set.of(), names, results, false);
  }

  private static Set<CellPlace> announced(String dryRun) {
    Matcher change = CHANGE.matcher(dryRun);
    return change
        .results()
        .map(each -> Places.place(each.group(1), each.group(2)))
        .collect(Collectors.toSet());
  }
}

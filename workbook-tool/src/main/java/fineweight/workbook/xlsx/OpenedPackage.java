package fineweight.workbook.xlsx;

import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.xlsx.formula.SheetFormulas;
import fineweight.workbook.xlsx.part.ContentTypes;
import fineweight.workbook.xlsx.part.Relationships;
import fineweight.workbook.xlsx.part.SharedStrings;
import fineweight.workbook.xlsx.part.TablePart;
import fineweight.workbook.xlsx.part.WorkbookPart;
import fineweight.workbook.xlsx.sheet.CellMap;
import fineweight.workbook.xlsx.sheet.CellReading;
import fineweight.workbook.xlsx.sheet.SheetFacts;
import fineweight.workbook.xlsx.sheet.SheetScan;
import fineweight.workbook.xlsx.style.Styles;
import fineweight.workbook.xlsx.style.StylesPart;
import fineweight.workbook.xlsx.xml.DamageException;
import fineweight.workbook.xlsx.xml.Markup;
import fineweight.workbook.xlsx.zip.PackageZip;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** A package that was looked over as a whole: every checksum, every sheet. */
final class OpenedPackage implements Closeable {
  private final PackageZip zip;
  private final Set<String> seen = new HashSet<>();
  private final Markup types;
  private final String workbookPart;
  private final Markup relationships;
  private final WorkbookPart workbook;
  private final Markup styles;
  private final String stylesPart;
  private final SharedStrings strings;
  private final List<OpenedSheet> sheets = new ArrayList<>();

  private OpenedPackage(PackageZip zip, Known known) throws IOException, WorkbookRefusal {
    this.zip = zip;
    types = markup(ContentTypes.PART);
    workbookPart = mainPart();
    relationships = markup(Relationships.partOf(workbookPart));
    Relationships targets = workbookRelationships();
    workbook = new WorkbookPart(markup(workbookPart), targets);
    Optional<String> style = partOfKind(targets, "styles");
    stylesPart = style.orElse(null);
    styles = styles();
    strings = strings(partOfKind(targets, "sharedStrings"));
    for (WorkbookPart.Sheet sheet : workbook.sheets()) {
      OpenedSheet before = known.sheet(zip, sheet);
      sheets.add(before != null ? before : sheet(sheet));
    }
    for (String part : zip.parts()) {
      if (!seen.contains(key(part))) {
        zip.verify(part);
      }
    }
  }

  /** Tells of a sheet what is known of it beforehand; null makes it be looked over. */
  @FunctionalInterface
  private interface Known {
    OpenedSheet sheet(PackageZip zip, WorkbookPart.Sheet sheet);
  }

  static OpenedPackage open(Path file) throws IOException, WorkbookRefusal {
    return open(PackageZip.open(file), (zip, sheet) -> null);
  }

  /** One in memory. */
  static OpenedPackage open(byte[] content) throws IOException, WorkbookRefusal {
    return open(PackageZip.open(content), (zip, sheet) -> null);
  }

  /**
   * Opens what an edit has written. A sheet with the same bytes as before needs no second look, nor
   * does one whose cells are compared in another way; every checksum is checked all the same.
   *
   * @param compared names of sheets whose cells are compared in another way
   */
  OpenedPackage reopen(Path written, Set<String> compared) throws IOException, WorkbookRefusal {
    return open(
        PackageZip.open(written),
        (copy, sheet) -> {
          OpenedSheet before = sheet(sheet.name()).orElse(null);
          if (before == null || !before.entry().part().equals(sheet.part())) {
            return null;
          }
          if (compared.contains(before.name())) {
            return new OpenedSheet(
                sheet,
                before.facts().withoutFormulas(),
                CellMap.NONE,
                SheetFormulas.NONE,
                before.tables());
          }
          boolean same =
              copy.has(sheet.part()) && copy.seal(sheet.part()).equals(zip.seal(sheet.part()));
          return same
              ? new OpenedSheet(
                  sheet, before.facts(), before.map(), before.formulas(), before.tables())
              : null;
        });
  }

  private static OpenedPackage open(PackageZip zip, Known known)
      throws IOException, WorkbookRefusal {
    try {
      return new OpenedPackage(zip, known);
    } catch (RuntimeException | Error | IOException | WorkbookRefusal e) {
      zip.close();
      throw e;
    }
  }

  private static String key(String part) {
    return part.toLowerCase(Locale.ROOT);
  }

  private InputStream xml(String part) throws IOException {
    seen.add(key(part));
    return zip.xml(part);
  }

  Markup markup(String part) throws IOException {
    try (InputStream in = xml(part)) {
      return Markup.read(part, in);
    }
  }

  private String mainPart() throws IOException, WorkbookRefusal {
    Relationships root = new Relationships("", markup("_rels/.rels"));
    String part =
        root.byKind("officeDocument")
            .map(Relationships.Target::part)
            .orElseThrow(() -> new DamageException("it does not name its main part"));
    String type = newTypes().of(part);
    if (type.contains("sheet.binary")) {
      throw new WorkbookRefusal(
          WorkbookRefusal.Kind.UNSUPPORTED,
          "This is a binary workbook (.xlsb); save it as .xlsx in your office program first.");
    }
    if (type.contains("word") || type.contains("presentation")) {
      throw new WorkbookRefusal(
          WorkbookRefusal.Kind.UNSUPPORTED,
          "This is not a workbook but a text document or a presentation.");
    }
    return zip.spelling(part);
  }

  /** A list that is named and absent leaves the cells without what they point to. */
  private Optional<String> partOfKind(Relationships targets, String kind) {
    Optional<String> part = targets.byKind(kind).map(Relationships.Target::part);
    if (part.isPresent() && !zip.has(part.get())) {
      throw new DamageException("its part " + part.get() + " is missing");
    }
    return part;
  }

  /** Some programs leave lists out; they are completed when the part is written. */
  private Markup styles() throws IOException {
    return stylesPart == null ? StylesPart.fresh() : StylesPart.completed(markup(stylesPart));
  }

  private SharedStrings strings(Optional<String> part) throws IOException {
    if (part.isEmpty()) {
      return SharedStrings.none();
    }
    try (InputStream in = xml(part.get())) {
      return SharedStrings.read(part.get(), in);
    }
  }

  private OpenedSheet sheet(WorkbookPart.Sheet sheet) throws IOException, WorkbookRefusal {
    if (!zip.has(sheet.part())) {
      throw new DamageException("the part of sheet \"" + sheet.name() + "\" is missing");
    }
    if (!sheet.isTable()) {
      return new OpenedSheet(
          sheet, OpenedSheet.NOTHING, CellMap.NONE, SheetFormulas.NONE, List.of());
    }
    try (InputStream in = xml(sheet.part())) {
      SheetFormulas formulas = new SheetFormulas();
      CellMap map = new CellMap();
      SheetFacts facts =
          SheetScan.scan(
              sheet.name(), sheet.part(), in, newReading(newStyles()), formulas::see, map);
      formulas.finish();
      return new OpenedSheet(sheet, facts, map, formulas, tables(sheet, facts));
    }
  }

  private List<TablePart> tables(WorkbookPart.Sheet sheet, SheetFacts facts) throws IOException {
    List<TablePart> tables = new ArrayList<>();
    String part = Relationships.partOf(sheet.part());
    if (!facts.tableRelations().isEmpty() && zip.has(part)) {
      Relationships targets = new Relationships(sheet.part(), markup(part));
      for (String id : facts.tableRelations()) {
        Optional<Relationships.Target> target = targets.byId(id);
        if (target.isPresent() && zip.has(target.get().part())) {
          tables.add(TablePart.read(markup(target.get().part())));
        }
      }
    }
    return tables;
  }

  PackageZip zip() {
    return zip;
  }

  WorkbookPart workbook() {
    return workbook;
  }

  String workbookPart() {
    return workbookPart;
  }

  /** Null if the workbook has none. */
  String stylesPart() {
    return stylesPart;
  }

  boolean hasMacros() {
    return newTypes().of(workbookPart).contains("macroEnabled");
  }

  boolean isSigned() {
    return zip.parts().stream().anyMatch(p -> key(p).startsWith("_xmlsignatures/"));
  }

  List<OpenedSheet> sheets() {
    return sheets;
  }

  Optional<OpenedSheet> sheet(String name) {
    return sheets.stream().filter(s -> s.name().equalsIgnoreCase(name)).findFirst();
  }

  /** Fresh ones, to be changed by one edit. */
  ContentTypes newTypes() {
    return new ContentTypes(types);
  }

  /** Fresh ones, to be changed by one edit. */
  Relationships workbookRelationships() {
    return new Relationships(workbookPart, relationships);
  }

  /** What a part points to; fresh ones, to be changed by one edit. */
  Relationships relationshipsOf(String part) throws IOException {
    String relations = Relationships.partOf(part);
    return zip.has(relations)
        ? new Relationships(part, markup(relations))
        : Relationships.none(part);
  }

  /** Fresh ones, to be added to by one edit. */
  Styles newStyles() {
    return new Styles(styles);
  }

  CellReading newReading(Styles formats) {
    return new CellReading(formats, strings, workbook.counts1904());
  }

  @Override
  public void close() throws IOException {
    zip.close();
  }
}

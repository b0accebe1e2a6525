package fineweight.giveaway;

import fineweight.workbook.xlsx.part.Relationships;
import fineweight.workbook.xlsx.part.WorkbookPart;
import fineweight.workbook.xlsx.xml.DamageException;
import fineweight.workbook.xlsx.xml.Markup;
import fineweight.workbook.xlsx.xml.PlainUtf8;
import fineweight.workbook.xlsx.zip.PackageZip;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** The owner's workbook, of which some parts are read; it remembers which. */
final class SourcePackage implements Closeable {
  private final PackageZip zip;
  private final Set<String> used = new HashSet<>();
  private final WorkbookPart workbook;
  private final Relationships relationships;

  SourcePackage(Path file) throws IOException {
    zip = PackageZip.open(file);
    String main =
        relationships("")
            .byKind("officeDocument")
            .orElseThrow(() -> new DamageException("it does not say where its workbook part is"))
            .part();
    relationships = relationships(main);
    workbook = new WorkbookPart(markup(main), relationships);
  }

  WorkbookPart workbook() {
    return workbook;
  }

  /** The first part of a kind that the workbook points to, if it is there. */
  Optional<String> ofWorkbook(String kind) {
    return relationships.byKind(kind).map(Relationships.Target::part).filter(zip::has);
  }

  /** A part as UTF-8, whatever it was written in. */
  InputStream xml(String part) throws IOException {
    return PlainUtf8.of(raw(part));
  }

  private InputStream raw(String part) throws IOException {
    used.add(part.toLowerCase(Locale.ROOT));
    return zip.xml(part);
  }

  Markup markup(String part) throws IOException {
    try (InputStream in = raw(part)) {
      return Markup.read(part, in);
    }
  }

  /** What a part points to, perhaps nothing. */
  Relationships relationships(String part) throws IOException {
    String rels = Relationships.partOf(part);
    return new Relationships(
        part,
        zip.has(rels)
            ? markup(rels)
            : Markup.of(
                rels,
                "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\"/>"));
  }

  boolean has(String part) {
    return zip.has(part);
  }

  /** Parts of which nothing was looked at. */
  List<String> unused() {
    return zip.parts().stream()
        .filter(part -> !used.contains(part.toLowerCase(Locale.ROOT)))
        .filter(part -> !part.endsWith("/") && !part.startsWith("[Content_Types]"))
        .toList();
  }

  @Override
  public void close() throws IOException {
    zip.close();
  }
}

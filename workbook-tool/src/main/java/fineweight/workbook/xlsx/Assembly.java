package fineweight.workbook.xlsx;

import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.xlsx.part.ContentTypes;
import fineweight.workbook.xlsx.part.Relationships;
import fineweight.workbook.xlsx.splice.Outcome;
import fineweight.workbook.xlsx.zip.PackageRewrite;
import fineweight.workbook.xlsx.zip.PackageZip;
import fineweight.workbook.xlsx.zip.PartContent;
import java.io.IOException;
import java.io.OutputStream;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;

/** Puts the changed parts of one edit together with those that stay. */
final class Assembly {
  private final OpenedPackage source;
  private final EditRun run;
  private final PackageRewrite rewrite;
  private final ContentTypes types;
  private final Relationships relationships;
  private final Set<String> taken = new HashSet<>();
  private long changedCells;
  private boolean formulasMoved;
  private boolean hasFormulas;

  /** Makes the new parts, the owner's sheets first: only then is known what else follows. */
  Assembly(OpenedPackage source, EditRun run) throws IOException, WorkbookRefusal {
    this.source = source;
    this.run = run;
    rewrite = new PackageRewrite(source.zip());
    types = source.newTypes();
    relationships = source.workbookRelationships();
    source.zip().parts().forEach(p -> taken.add(p.toLowerCase(Locale.ROOT)));
    hasFormulas = source.sheets().stream().anyMatch(s -> s.facts().formulas() > 0);
    ownersSheets();
    drafts();
    run.goneSheets().forEach(this::takeOut);
    styles();
    if (formulasMoved) {
      dropCalculationChain();
    }
    boolean recalculate = hasFormulas && run.changesAnything();
    if (run.workbook().changesAnything() || recalculate) {
      put(source.workbookPart(), run.workbook().changed(recalculate));
    }
    putChanged(relationships.part(), relationships.changed());
    putChanged(ContentTypes.PART, types.changed());
  }

  private void put(String part, byte[] content) throws IOException, WorkbookRefusal {
    rewrite.put(part, PartContent.of(content));
  }

  private void putChanged(String part, byte[] content) throws IOException, WorkbookRefusal {
    if (content != null) {
      put(part, content);
    }
  }

  private void ownersSheets() throws IOException, WorkbookRefusal {
    for (SheetRun each : run.sheets()) {
      if (each.changes() && !run.goneSheets().contains(each.sheet())) {
        rewrite.put(
            source.zip().spelling(each.sheet().entry().part()), out -> take(each.write(out, null)));
      }
    }
  }

  private void take(Outcome written) {
    changedCells += written.changes();
    formulasMoved |= written.formulasMoved();
    hasFormulas |= written.writesFormulas();
  }

  private void drafts() throws IOException, WorkbookRefusal {
    for (DraftRun each : run.drafts()) {
      changedCells += each.changes().size();
      if (each.old() == null) {
        addSheet(each);
      } else {
        if (each.differs()) {
          formulasMoved = true;
          put(source.zip().spelling(each.old().entry().part()), each.bytes());
        }
        if (each.hidesOtherwise()) {
          run.workbook().setHidden(each.old().entry(), each.draft().hidden());
        }
      }
    }
  }

  private void addSheet(DraftRun draft) throws IOException, WorkbookRefusal {
    String part = free("worksheets/sheet", 1);
    put(part, draft.bytes());
    types.add(part, ContentTypes.WORKSHEET);
    String relation = relationships.add("worksheet", part);
    run.workbook().addSheet(draft.draft().name(), draft.draft().hidden(), relation);
    formulasMoved = true;
  }

  /**
   * A name beside the workbook's part that no part has yet, whether the workbook knows it or not.
   *
   * @param number the first to try; 0 is not written
   */
  private String free(String name, int number) {
    String folder = source.workbookPart().substring(0, source.workbookPart().lastIndexOf('/') + 1);
    String part = folder + name + (number == 0 ? "" : number) + ".xml";
    return taken.add(part.toLowerCase(Locale.ROOT)) ? part : free(name, number + 1);
  }

  private void takeOut(OpenedSheet sheet) {
    String part = sheet.entry().part();
    rewrite.remove(part);
    if (source.zip().has(Relationships.partOf(part))) {
      rewrite.remove(Relationships.partOf(part));
    }
    types.remove(part);
    relationships.allOfKind("worksheet").stream()
        .filter(t -> t.part().equalsIgnoreCase(part))
        .forEach(relationships::remove);
    run.workbook().removeSheet(sheet.entry());
    formulasMoved |= sheet.facts().formulas() > 0;
  }

  private void styles() throws IOException, WorkbookRefusal {
    byte[] changed = run.styles().changed();
    if (changed != null && source.stylesPart() == null) {
      String part = free("styles", 0);
      types.add(part, ContentTypes.STYLES);
      relationships.add("styles", part);
      put(part, changed);
    } else {
      putChanged(source.stylesPart(), changed);
    }
  }

  /** The order of calculation is a cache, and a wrong one would be called damage. */
  private void dropCalculationChain() {
    relationships
        .byKind("calcChain")
        .ifPresent(
            chain -> {
              relationships.remove(chain);
              if (source.zip().has(chain.part())) {
                rewrite.remove(chain.part());
                types.remove(chain.part());
              }
            });
  }

  void writeTo(OutputStream out) throws IOException {
    rewrite.writeTo(out);
  }

  long changedCells() {
    return changedCells;
  }

  /** Whether every part that stays is there with the same content. */
  boolean isWholeIn(PackageZip copy) {
    for (String part : source.zip().parts()) {
      if (rewrite.keeps(part)
          && !(copy.has(part) && copy.seal(part).equals(source.zip().seal(part)))) {
        return false;
      }
    }
    return true;
  }
}

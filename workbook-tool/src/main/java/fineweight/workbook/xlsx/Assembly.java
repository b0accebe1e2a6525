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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Puts the changed parts of one edit together with those that stay. */
final class Assembly {
  private final OpenedPackage source;
  private final EditRun run;
  private final PackageRewrite rewrite;
  private final ContentTypes types;
  private final Relationships relationships;
  private final Set<String> taken = new HashSet<>();
  private final boolean readsBack;
  private final Map<String, ReadBack> readBack = new LinkedHashMap<>();
  private long changedCells;
  private boolean formulasMoved;
  private boolean hasFormulas;

  /**
   * Makes the new parts, the owner's sheets first: only then is known what else follows.
   *
   * @param readsBack whether the owner's sheets are read while they are written
   */
  Assembly(OpenedPackage source, EditRun run, boolean readsBack)
      throws IOException, WorkbookRefusal {
    this.source = source;
    this.run = run;
    this.readsBack = readsBack;
    rewrite = new PackageRewrite(source.zip());
    types = source.newTypes();
    relationships = source.workbookRelationships();
    source.zip().parts().forEach(p -> taken.add(p.toLowerCase(Locale.ROOT)));
    // A list of relations may lead to a part that is not there; its name is not free all the same.
    relationships.all().forEach(each -> taken.add(each.part().toLowerCase(Locale.ROOT)));
    hasFormulas = source.sheets().stream().anyMatch(s -> s.facts().formulas() > 0);
    ownersSheets();
    drafts();
    run.goneSheets().forEach(this::takeOut);
    dropLost();
    for (Map.Entry<String, byte[]> table : run.longerTables().entrySet()) {
      put(table.getKey(), table.getValue());
    }
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

  void put(String part, byte[] content) throws IOException, WorkbookRefusal {
    rewrite.put(part, PartContent.of(content));
  }

  /** Relationships are no part where there are none. Some packages name the type of each. */
  void putChanged(Relationships changed) throws IOException, WorkbookRefusal {
    String part = changed.part();
    byte[] content = changed.changed();
    if (content != null && !source.zip().has(part) && types.of(part).isEmpty()) {
      types.add(part, ContentTypes.RELATIONSHIPS);
    }
    putChanged(part, content);
  }

  ContentTypes types() {
    return types;
  }

  private void putChanged(String part, byte[] content) throws IOException, WorkbookRefusal {
    if (content != null) {
      put(part, content);
    }
  }

  private void ownersSheets() throws IOException, WorkbookRefusal {
    for (SheetRun each : run.sheets()) {
      if (each.changes() && !run.goneSheets().contains(each.sheet())) {
        ownersSheet(each);
      }
    }
  }

  private void ownersSheet(SheetRun sheet) throws IOException, WorkbookRefusal {
    String part = source.zip().spelling(sheet.sheet().entry().part());
    if (!readsBack || run.addsRows(sheet.sheet())) {
      rewrite.put(part, out -> take(sheet.write(out, null)));
      return;
    }
    ReadBack reader = new ReadBack(source, sheet);
    readBack.put(sheet.sheet().name(), reader);
    rewrite.put(part, out -> take(sheet.write(out, reader.wishes())), List.of(reader));
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
          formulasMoved |= each.cellsDiffer();
          String part = source.zip().spelling(each.old().entry().part());
          if (each.cellsDiffer() || each.charts().newDrawing() != null) {
            put(part, each.bytes());
          }
          each.charts().write(part, this);
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
    draft.charts().write(part, this);
    types.add(part, ContentTypes.WORKSHEET);
    String relation = relationships.add("worksheet", part);
    run.workbook().addSheet(draft.draft(), relation);
    formulasMoved = true;
  }

  /**
   * A name beside the workbook's part that no part has yet, whether the workbook knows it or not.
   *
   * @param number the first to try; 0 is not written
   */
  String free(String name, int number) {
    String folder = source.workbookPart().substring(0, source.workbookPart().lastIndexOf('/') + 1);
    String part = folder + name + (number == 0 ? "" : number) + ".xml";
    return taken.add(part.toLowerCase(Locale.ROOT)) ? part : free(name, number + 1);
  }

  private void takeOut(OpenedSheet sheet) {
    String part = sheet.entry().part();
    relationships.allOfKind("worksheet").stream()
        .filter(t -> t.part().equalsIgnoreCase(part))
        .forEach(relationships::remove);
    run.workbook().removeSheet(sheet.entry());
    formulasMoved |= sheet.facts().formulas() > 0;
  }

  /** Parts that only what was taken out pointed to. */
  private void dropLost() throws IOException {
    Reach reach = new Reach(source);
    run.goneSheets().forEach(sheet -> reach.cut(source.workbookPart(), sheet.entry().part()));
    run.drafts().forEach(draft -> draft.charts().cut(reach));
    for (String part : reach.lost()) {
      String itsRelations = Relationships.partOf(part);
      rewrite.remove(part);
      types.remove(part);
      if (source.zip().has(itsRelations)) {
        rewrite.remove(itsRelations);
        types.remove(itsRelations);
      }
    }
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

  /** Whether every part that stays or was made is there with that content. */
  boolean isWholeIn(PackageZip copy) {
    return rewrite.isIn(copy);
  }

  /**
   * Whether each sheet that was read while it was written held what was meant.
   *
   * @throws IOException if one could not be read, like everything else that is thrown here
   */
  boolean wasReadAsMeant() throws IOException, WorkbookRefusal {
    for (ReadBack each : readBack.values()) {
      if (!each.wasAsMeant()) {
        return false;
      }
    }
    return true;
  }

  /** The names of these sheets. */
  Set<String> readSheets() {
    return readBack.keySet();
  }
}

package fineweight.workbook.xlsx;

import fineweight.workbook.Cell;
import fineweight.workbook.CellChange;
import fineweight.workbook.FileFormat;
import fineweight.workbook.NamedCell;
import fineweight.workbook.Passwords;
import fineweight.workbook.SheetLayout;
import fineweight.workbook.SheetSummary;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookEdit;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.WorkbookRefusal.Kind;
import fineweight.workbook.open.Opener;
import fineweight.workbook.save.FileFingerprint;
import fineweight.workbook.save.FileReplacement;
import fineweight.workbook.save.FingerprintTaking;
import fineweight.workbook.xlsx.sheet.CellStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntPredicate;

/**
 * An Excel workbook (.xlsx or .xlsm). Filling columns rewrites the one sheet by cutting at cell
 * borders; every other part is copied as it is.
 */
public final class XlsxWorkbook implements Workbook {
  private final Path path;
  private final FileReplacement replacement;
  private final FileFingerprint fingerprint;
  private final OpenedPackage opened;
  private final Boundary boundary;
  private final boolean encrypted;

  private XlsxWorkbook(
      Path path,
      FileReplacement replacement,
      FileFingerprint fingerprint,
      OpenedPackage opened,
      boolean encrypted) {
    this.path = path;
    this.replacement = replacement;
    this.fingerprint = fingerprint;
    this.opened = opened;
    this.encrypted = encrypted;
    boundary = new Boundary(path);
  }

  /** Opens plain files, and decrypted ones for reading. */
  public static Opener opener(FileReplacement replacement) {
    return new Opener() {
      @Override
      public Workbook open(Path file) throws WorkbookRefusal {
        return XlsxWorkbook.open(file, replacement);
      }

      @Override
      public Workbook openDecrypted(Path file, byte[] content) throws WorkbookRefusal {
        return new Boundary(file)
            .run(
                () ->
                    new XlsxWorkbook(
                        file,
                        replacement,
                        FileFingerprint.of(file),
                        OpenedPackage.open(content),
                        true));
      }
    };
  }

  /**
   * Opens a file and looks it over as a whole.
   *
   * @throws WorkbookRefusal if the file is absent, damaged or made to do harm
   */
  public static XlsxWorkbook open(Path file, FileReplacement replacement) throws WorkbookRefusal {
    if (!Files.isRegularFile(file)) {
      throw new WorkbookRefusal(Kind.FILE, "There is no file " + file + ".");
    }
    return new Boundary(file)
        .run(
            () -> {
              FingerprintTaking fingerprint = FileFingerprint.taking(file);
              OpenedPackage opened = OpenedPackage.open(file);
              try {
                return new XlsxWorkbook(file, replacement, fingerprint.get(), opened, false);
              } catch (IOException | WorkbookRefusal e) {
                opened.close();
                throw e;
              }
            });
  }

  @Override
  public Path path() {
    return path;
  }

  @Override
  public FileFormat format() {
    return opened.hasMacros() ? FileFormat.XLSM : FileFormat.XLSX;
  }

  @Override
  public List<SheetSummary> sheets() {
    return opened.sheets().stream().map(OpenedSheet::summary).toList();
  }

  @Override
  public List<NamedCell> names() {
    return opened.workbook().names();
  }

  private OpenedSheet sheet(String name) throws WorkbookRefusal {
    return opened
        .sheet(name)
        .orElseThrow(
            () ->
                new WorkbookRefusal(
                    Kind.NO_ROOM,
                    "The file %s has no sheet named \"%s\".".formatted(path.getFileName(), name)));
  }

  @Override
  public void read(String sheet, IntPredicate columns, int lastRow, Consumer<List<Cell>> rows)
      throws WorkbookRefusal {
    OpenedSheet wanted = sheet(sheet);
    if (!wanted.entry().isTable()) {
      return;
    }
    boundary.run(
        () -> {
          try (InputStream in = opened.zip().xml(wanted.entry().part())) {
            CellStream.read(
                wanted.name(),
                wanted.entry().part(),
                in,
                opened.newReading(opened.newStyles()),
                columns,
                lastRow,
                Boundary.guarded(rows),
                wanted.map());
          }
          return null;
        });
  }

  @Override
  public UsedArea usedArea(String sheet) throws WorkbookRefusal {
    OpenedSheet wanted = sheet(sheet);
    return new UsedArea(wanted.facts().lastRow(), wanted.facts().lastColumn());
  }

  @Override
  public SheetLayout layout(String sheet) throws WorkbookRefusal {
    return sheet(sheet).layout();
  }

  @Override
  public void preview(WorkbookEdit edit, Consumer<CellChange> changes) throws WorkbookRefusal {
    EditRules.check(edit);
    boundary.run(
        () -> {
          new EditRun(opened, edit).preview(Boundary.guarded(changes));
          return null;
        });
  }

  @Override
  public SaveResult save(WorkbookEdit edit) throws WorkbookRefusal {
    EditRules.check(edit);
    refuseUnwritable();
    EditRun run = boundary.run(() -> new EditRun(opened, edit));
    if (!run.changesAnything()) {
      return new SaveResult(false, 0, null);
    }
    long[] changed = new long[1];
    Path backup =
        replacement.replace(
            path,
            fingerprint,
            out -> changed[0] = boundary.runWriting(() -> run.write(out, replacement.checks())),
            written -> check(run, written));
    return new SaveResult(true, changed[0], backup);
  }

  /** Reads the new file back: it must be sound, and the same edit must find nothing to do. */
  private void check(EditRun run, Path written) throws WorkbookRefusal {
    boolean complete = boundary.run(() -> run.isIn(written));
    if (!complete) {
      throw new WorkbookRefusal(
          Kind.UNSUPPORTED,
          "The new content of %s could not be read back as it was meant, so nothing was changed."
              .formatted(path.getFileName()));
    }
    closeBeforeRenaming();
  }

  /** Some systems rename nothing over an open file. */
  private void closeBeforeRenaming() throws WorkbookRefusal {
    boundary.run(
        () -> {
          opened.close();
          return null;
        });
  }

  private void refuseUnwritable() throws WorkbookRefusal {
    Optional<String> why = onlyReadBecause();
    if (why.isPresent()) {
      throw new WorkbookRefusal(
          opened.workbook().isStrict() ? Kind.UNSUPPORTED : Kind.PROTECTED, why.get());
    }
  }

  @Override
  public Optional<String> onlyReadBecause() {
    String name = path.getFileName().toString();
    if (encrypted) {
      return Optional.of(Passwords.missing(path));
    }
    if (opened.workbook().isStrict()) {
      return Optional.of(
          "The file %s is a Strict Open XML workbook, which can be read but not written; save it as an ordinary Excel workbook (.xlsx) first."
              .formatted(name));
    }
    if (opened.isSigned()) {
      return Optional.of(
          "The file %s carries a digital signature that any change would break; save an unsigned copy first."
              .formatted(name));
    }
    return Optional.empty();
  }

  @Override
  public void close() throws IOException {
    opened.close();
  }
}

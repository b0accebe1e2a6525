package fineweight.workbook.open;

import fineweight.workbook.Passwords;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.WorkbookRefusal.Kind;
import fineweight.workbook.Workbooks;
import fineweight.workbook.csv.CsvWorkbook;
import fineweight.workbook.save.FileReplacement;
import fineweight.workbook.xls.XlsWorkbook;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/**
 * Opens a file of any kind that we know. The content decides, not the name: a name is wrong only
 * where a save would make an office refuse the file.
 *
 * <p>Whatever a library throws at a damaged or harmful file, here and in all that is called on the
 * workbook later, comes out as one {@link WorkbookRefusal}.
 */
public final class AnyWorkbook implements Workbooks {
  private final Opener packages;
  private final Opener xls;
  private final Opener csv;

  private final FileReplacement replacement;
  private final Passwords passwords;

  private AnyWorkbook(Opener packages, FileReplacement replacement, Passwords passwords) {
    this.packages = packages;
    this.replacement = replacement;
    this.passwords = passwords;
    xls = file -> XlsWorkbook.open(file, replacement, passwords);
    csv = file -> CsvWorkbook.open(file, replacement);
  }

  /**
   * @param packages opens .xlsx and .xlsm
   * @param replacement puts saved files in place
   */
  public static AnyWorkbook of(Opener packages, FileReplacement replacement) {
    return new AnyWorkbook(packages, replacement, Passwords.NONE);
  }

  @Override
  public Workbooks with(Passwords known) {
    return new AnyWorkbook(packages, replacement, known);
  }

  @Override
  public Workbook open(Path file) throws WorkbookRefusal {
    if (Files.isDirectory(file)) {
      throw refusal(Kind.FILE, file, "is a folder: name the workbook in it");
    }
    if (!Files.exists(file)) {
      throw refusal(Kind.FILE, file, "is not there: check the name and the folder");
    }
    Boundary boundary = new Boundary(file);
    return boundary.guard(() -> new GuardedWorkbook(opener(file).open(file), boundary));
  }

  private Opener opener(Path file) throws WorkbookRefusal {
    Content content = probe(file);
    if (content.refusal() != null) {
      throw refusal(content.refusal(), file, content.predicate());
    }
    String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
    boolean namedPackage = name.endsWith(".xlsx") || name.endsWith(".xlsm");
    if (content == Content.XLS && namedPackage) {
      throw refusal(
          Kind.UNSUPPORTED,
          file,
          "is a workbook of Excel 97-2003 under a wrong name: rename it so that it ends in .xls and"
              + " run again");
    }
    if (content == Content.TEXT && namedPackage) {
      throw refusal(
          Kind.UNSUPPORTED,
          file,
          "is plain text under a wrong name: if it is a table, rename it so that it ends in .csv"
              + " and run again");
    }
    return switch (content) {
      case PACKAGE -> packages;
      case ENCRYPTED -> this::encrypted;
      case XLS -> xls;
      default -> csv;
    };
  }

  private Workbook encrypted(Path file) throws WorkbookRefusal {
    String password =
        passwords
            .of(file)
            .orElseThrow(() -> new WorkbookRefusal(Kind.PROTECTED, Passwords.missing(file)));
    try {
      return packages.openDecrypted(file, EncryptedFile.content(file, password));
    } catch (IOException e) {
      throw refusal(Content.CUT_OFF.refusal(), file, Content.CUT_OFF.predicate());
    }
  }

  private static Content probe(Path file) throws WorkbookRefusal {
    try {
      return Probe.of(file);
    } catch (AccessDeniedException e) {
      throw new WorkbookRefusal(
          Kind.FILE,
          "%s may not be read by you: ask its owner for the right to read and write it."
              .formatted(file.getFileName()),
          e);
    } catch (IOException e) {
      throw new WorkbookRefusal(
          Kind.FILE,
          "%s cannot be read: check the disk or the network and run again."
              .formatted(file.getFileName()),
          e);
    }
  }

  private static WorkbookRefusal refusal(Kind kind, Path file, String predicate) {
    return new WorkbookRefusal(kind, "%s %s.".formatted(file.getFileName(), predicate));
  }
}

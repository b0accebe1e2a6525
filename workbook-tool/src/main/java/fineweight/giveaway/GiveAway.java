package fineweight.giveaway;

import de.siegmar.fastcsv.writer.CsvWriter;
import fineweight.refresh.Refresh;
import fineweight.refresh.inventory.Inventory;
import fineweight.refresh.inventory.InventoryFinder;
import fineweight.refresh.inventory.OurMarks;
import fineweight.refresh.inventory.RefreshRefusal;
import fineweight.workbook.FileFormat;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.WorkbookRefusal.Kind;
import fineweight.workbook.Workbooks;
import fineweight.workbook.xlsx.xml.DamageException;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.apache.xmlbeans.XmlRuntimeException;
import org.apache.xmlbeans.impl.values.XmlValueOutOfRangeException;

/**
 * Makes an empty workbook with the collector's headings, formulas, formats, checks and charts, and
 * nothing of what he wrote. His own file is only read.
 */
public final class GiveAway {
  private final Workbooks workbooks;
  private final Wishes wishes;
  private final Findings findings = new Findings();

  private GiveAway(Workbooks workbooks, Wishes wishes) {
    this.workbooks = workbooks;
    this.wishes = wishes;
  }

  /**
   * @param file the owner's workbook, .xlsx, .xlsm or .csv
   * @param sheet the sheet with the inventory, if it is not found by itself
   * @param target a file that is not there yet
   * @throws WorkbookRefusal if the one cannot be read or the other cannot be written
   * @throws RefreshRefusal if no inventory is found
   */
  public static Findings copy(
      Workbooks workbooks, Path file, Optional<String> sheet, Path target, Wishes wishes)
      throws WorkbookRefusal, RefreshRefusal, IOException {
    return new GiveAway(workbooks, wishes).copy(file, sheet, target);
  }

  private Findings copy(Path file, Optional<String> sheet, Path target)
      throws WorkbookRefusal, RefreshRefusal, IOException {
    FileFormat format = requireKind(file, target);
    Path folder = Files.createTempDirectory("fineweight");
    try {
      Path copy = Files.copy(file, folder.resolve(file.getFileName()));
      takeOurs(copy);
      Path made = folder.resolve("made-" + target.getFileName());
      try (OutputStream out = Files.newOutputStream(made)) {
        if (format == FileFormat.CSV) {
          headings(copy, out);
        } else {
          empty(copy, sheet, out);
        }
      }
      readBack(made, target);
      place(made, target);
      return findings;
    } finally {
      delete(folder);
    }
  }

  private FileFormat requireKind(Path file, Path target) throws WorkbookRefusal, IOException {
    FileFormat format;
    try (Workbook workbook = workbooks.open(file)) {
      format = workbook.format();
    }
    if (format == FileFormat.XLS) {
      throw new WorkbookRefusal(
          Kind.UNSUPPORTED,
          file
              + " is a workbook of Excel 97-2003, whose hidden remains cannot be told for certain;"
              + " save it as .xlsx in your spreadsheet program and give that one away.");
    }
    String ending = format == FileFormat.CSV ? ".csv" : ".xlsx";
    if (!target.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(ending)) {
      throw new WorkbookRefusal(
          Kind.FILE, target + ": the new file needs a name that ends in " + ending + ".");
    }
    if (Files.exists(target)) {
      throw taken(target);
    }
    return format;
  }

  private static WorkbookRefusal taken(Path target) {
    return new WorkbookRefusal(
        Kind.FILE, target + " exists already and was left alone; choose another name.");
  }

  /** Our columns and sheets are calculated anew by whoever gets the workbook. */
  private void takeOurs(Path copy) throws WorkbookRefusal, IOException {
    try (Workbook workbook = workbooks.open(copy)) {
      boolean ours =
          workbook.format() == FileFormat.CSV || !OurMarks.allNames(workbook.names()).isEmpty();
      if (ours && Refresh.takeOut(workbook).written()) {
        findings.removed("columns and sheets that a refresh had put in");
      }
    }
  }

  private void empty(Path copy, Optional<String> sheet, OutputStream out)
      throws WorkbookRefusal, RefreshRefusal, IOException {
    try (Workbook workbook = workbooks.open(copy);
        SourcePackage source = new SourcePackage(copy)) {
      if (source.workbook().isStrict()) {
        throw new WorkbookRefusal(
            Kind.UNSUPPORTED,
            copy.getFileName()
                + " is in the Strict form; save it as a plain .xlsx and give that one away.");
      }
      requireSheets(workbook);
      Inventory inventory =
          new InventoryFinder(workbook, OurMarks.read(workbook.names())).find(sheet);
      new EmptyWorkbook(source, workbook, inventory, wishes, findings).build().writeTo(out);
    } catch (DamageException damaged) {
      throw new WorkbookRefusal(
          Kind.DAMAGED, copy.getFileName() + ": " + damaged.getMessage() + ".", damaged);
    } catch (XmlRuntimeException | XmlValueOutOfRangeException e) {
      throw new WorkbookRefusal(
          Kind.DAMAGED,
          copy.getFileName()
              + " holds something that the format does not allow; open it in your spreadsheet"
              + " program, save it, and run again.",
          e);
    }
  }

  private void requireSheets(Workbook workbook) throws WorkbookRefusal {
    for (String wanted : wishes.sheets()) {
      if (workbook.sheets().stream().noneMatch(each -> each.name().equalsIgnoreCase(wanted))) {
        throw new WorkbookRefusal(
            Kind.FILE, workbook.path().getFileName() + " has no sheet \"" + wanted + "\" to keep.");
      }
    }
  }

  /** A text table keeps its line of headings. */
  private void headings(Path copy, OutputStream out)
      throws WorkbookRefusal, RefreshRefusal, IOException {
    KeptWords words = new KeptWords(wishes.words());
    try (Workbook workbook = workbooks.open(copy)) {
      Inventory inventory =
          new InventoryFinder(workbook, OurMarks.read(List.of())).find(Optional.empty());
      Map<Integer, String> headings = new TreeMap<>(inventory.table().headings());
      int last = headings.keySet().stream().mapToInt(Integer::intValue).max().orElse(0);
      String[] fields = new String[last + 1];
      for (int i = 0; i <= last; i++) {
        fields[i] = headings.getOrDefault(i, "");
        if (!words.knows(fields[i])) {
          findings.left("heading that is not of the trade", fields[i]);
        }
      }
      try (CsvWriter writer = CsvWriter.builder().build(out, StandardCharsets.UTF_8)) {
        writer.writeRecord(fields);
      }
      findings.removed("rows, and lines above the headings");
    }
  }

  private void readBack(Path made, Path target) throws WorkbookRefusal, IOException {
    try (Workbook workbook = workbooks.open(made)) {
      workbook.sheets();
    } catch (WorkbookRefusal refused) {
      throw new IllegalStateException(
          "the new workbook " + target + " cannot be read back: " + refused.getMessage(), refused);
    }
  }

  private static void place(Path made, Path target) throws WorkbookRefusal {
    try {
      Path folder = target.toAbsolutePath().getParent();
      if (folder != null) {
        Files.createDirectories(folder);
      }
      Files.copy(made, target);
    } catch (FileAlreadyExistsException there) {
      throw taken(target);
    } catch (IOException failed) {
      throw new WorkbookRefusal(
          Kind.FILE, target + " cannot be written; choose a folder that you may write to.", failed);
    }
  }

  private static void delete(Path folder) throws IOException {
    try (var files = Files.list(folder)) {
      for (Path each : Set.copyOf(files.toList())) {
        Files.delete(each);
      }
    }
    Files.delete(folder);
  }
}

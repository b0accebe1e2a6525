package fineweight.workbook.corpus;

import fineweight.workbook.CellChange;
import fineweight.workbook.CellPlace;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookEdit;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.Workbooks;
import fineweight.workbook.oracle.Expected;
import fineweight.workbook.oracle.Oracle;
import fineweight.workbook.validity.WorkbookValidator;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Fills a file, fills it again, takes everything out again, and looks after each step with the
 * oracle, the validator and Apache POI. The file is used up.
 */
public final class RoundTrip {
  private final Workbooks workbooks;
  private final Path file;
  private final Filling filling;
  private final boolean withSheet;
  private final Path original;
  private final List<String> problems = new ArrayList<>();
  private List<String> faultsBefore;
  private boolean oracleOnly;

  /**
   * @param refusal the sentence, if the edit was refused
   * @param problems what went wrong; empty for a pass or a clean refusal
   */
  public record Outcome(Optional<WorkbookRefusal> refusal, List<String> problems) {
    public boolean passed() {
      return refusal.isEmpty() && problems.isEmpty();
    }
  }

  public RoundTrip(Workbooks workbooks, Path file, Filling filling, boolean withSheet)
      throws IOException {
    this.workbooks = workbooks;
    this.file = file;
    this.filling = filling;
    this.withSheet = withSheet;
    Path kept = Files.createDirectories(file.resolveSibling("kept"));
    this.original = Files.copy(file, kept.resolve(file.getFileName()));
  }

  /** The same with the oracle alone, for many files in little time. */
  public RoundTrip withOracleOnly() {
    oracleOnly = true;
    return this;
  }

  public Outcome run() throws IOException {
    List<String> before = neighbours();
    try {
      WorkbookEdit edit = withSheet ? filling.columnsAndSheet() : filling.columns();
      List<CellChange> changes = fill(edit);
      fillAgain(edit);
      takeOut(changes);
      return new Outcome(Optional.empty(), problems);
    } catch (WorkbookRefusal refusal) {
      check(Arrays.equals(bytes(original), bytes(file)), "refused, but the file has changed");
      check(before.equals(neighbours()), "refused, but left a file behind: " + neighbours());
      return new Outcome(Optional.of(refusal), problems);
    }
  }

  private List<CellChange> fill(WorkbookEdit edit) throws IOException, WorkbookRefusal {
    List<CellChange> changes = new ArrayList<>();
    try (Workbook workbook = workbooks.open(file)) {
      workbook.preview(edit, changes::add);
      check(Arrays.equals(bytes(original), bytes(file)), "the dry run has changed the file");
      Workbook.SaveResult result = workbook.save(edit);
      check(result.written(), "nothing was written");
      check(
          result.changedCells() == changes.size(),
          result.changedCells() + " cells changed, " + changes.size() + " were announced");
      check(
          result.backup() != null && Arrays.equals(bytes(original), bytes(result.backup())),
          "the backup is not the former file");
    }
    problems.addAll(Oracle.findings(original, file, Expected.of(edit, changes)));
    problems.addAll(addedFaults());
    if (!oracleOnly) {
      compareWithPoi(changes);
    }
    return changes;
  }

  private void fillAgain(WorkbookEdit edit) throws IOException, WorkbookRefusal {
    byte[] filled = bytes(file);
    try (Workbook workbook = workbooks.open(file)) {
      List<CellChange> changes = new ArrayList<>();
      workbook.preview(edit, changes::add);
      check(changes.isEmpty(), "a second dry run announces " + first(changes));
      check(!workbook.save(edit).written(), "a second run wrote the file");
    }
    check(Arrays.equals(filled, bytes(file)), "a second run changed bytes");
  }

  private void takeOut(List<CellChange> changes) throws IOException, WorkbookRefusal {
    WorkbookEdit removal = filling.removal(withSheet);
    try (Workbook workbook = workbooks.open(file)) {
      workbook.preview(removal, each -> {});
      check(workbook.save(removal).written(), "taking out wrote nothing");
    }
    Set<CellPlace> stale = changes.stream().map(CellChange::place).collect(Collectors.toSet());
    Oracle.findings(original, file, Expected.backAgain(removal, stale)).stream()
        .map(each -> "after taking out: " + each)
        .forEach(problems::add);
    addedFaults().stream().map(each -> "after taking out: " + each).forEach(problems::add);
  }

  /** Faults in the build that the original does not have: an edit must not add any. */
  private List<String> addedFaults() throws IOException {
    if (oracleOnly) {
      return List.of();
    }
    if (faultsBefore == null) {
      faultsBefore = WorkbookValidator.findings(original);
    }
    List<String> added = new ArrayList<>(WorkbookValidator.findings(file));
    added.removeAll(faultsBefore);
    return added;
  }

  private void compareWithPoi(List<CellChange> changes) throws IOException {
    Set<CellPlace> ours = Set.copyOf(filling.ours());
    Set<String> ownSheets = Set.of(Filling.OWN_SHEET);
    Optional<Map<CellPlace, String>> old = OwnerCells.read(original, ours::contains);
    if (old.isEmpty()) {
      return;
    }
    Optional<Map<CellPlace, String>> now =
        OwnerCells.read(file, place -> ours.contains(place) || ownSheets.contains(place.sheet()));
    check(now.isPresent(), "POI reads the file before but not after");
    check(now.isEmpty() || now.get().equals(old.get()), "POI reads other cells of the owner's");
    now.ifPresent(
        cells ->
            old.get()
                .forEach(
                    (place, words) ->
                        check(
                            words.equals(cells.get(place)),
                            "POI: " + place + " " + words + " -> " + cells.get(place))));
    if (now.isPresent()) {
      compareOurs();
    }
    check(!changes.isEmpty(), "no change was announced");
  }

  private void compareOurs() throws IOException {
    OPCPackage opened = null;
    try {
      opened = OPCPackage.open(file.toFile(), PackageAccess.READ);
      XSSFWorkbook book = new XSSFWorkbook(opened);
      for (CellPlace place : filling.ours()) {
        Object wanted = filling.expected(place);
        Object read = OwnerCells.value(book, place);
        check(same(wanted, read), "POI: " + place + " is " + read + ", not " + wanted);
      }
    } catch (org.apache.poi.openxml4j.exceptions.InvalidFormatException e) {
      problems.add("POI: " + e.getMessage());
    } finally {
      if (opened != null) {
        opened.revert();
      }
    }
  }

  private static boolean same(Object wanted, Object read) {
    if (wanted instanceof java.math.BigDecimal number && read instanceof java.math.BigDecimal got) {
      return number.compareTo(got) == 0;
    }
    return java.util.Objects.equals(wanted, read);
  }

  private List<String> neighbours() throws IOException {
    try (Stream<Path> files = Files.list(file.toAbsolutePath().getParent())) {
      return files.map(each -> each.getFileName().toString()).sorted().toList();
    }
  }

  private void check(boolean good, String otherwise) {
    if (!good) {
      problems.add(otherwise);
    }
  }

  private static byte[] bytes(Path file) throws IOException {
    return Files.readAllBytes(file);
  }

  private static String first(List<CellChange> changes) {
    return changes.isEmpty() ? "nothing" : changes.get(0).toString();
  }
}

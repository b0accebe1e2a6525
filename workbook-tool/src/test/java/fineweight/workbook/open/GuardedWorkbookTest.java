package fineweight.workbook.open;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import fineweight.workbook.Cell;
import fineweight.workbook.CellChange;
import fineweight.workbook.CellLook;
import fineweight.workbook.ColumnEdit;
import fineweight.workbook.FileFormat;
import fineweight.workbook.NamedCell;
import fineweight.workbook.SheetEdit;
import fineweight.workbook.SheetLayout;
import fineweight.workbook.SheetSummary;
import fineweight.workbook.SheetSummary.Visibility;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookEdit;
import fineweight.workbook.WorkbookEdit.Removal;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.WorkbookRefusal.Kind;
import fineweight.workbook.save.SafeSave;
import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.IntPredicate;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GuardedWorkbookTest {
  private static final List<Cell> A_ROW = List.of();

  @TempDir Path folder;

  /** A library that fails as it is told. */
  private record Failing(Runnable failure) implements Workbook {
    @Override
    public Path path() {
      return Path.of("coins.xlsx");
    }

    @Override
    public FileFormat format() {
      return FileFormat.XLSX;
    }

    @Override
    public List<SheetSummary> sheets() {
      return List.of(new SheetSummary("Coins", Visibility.VISIBLE, false, true));
    }

    @Override
    public List<NamedCell> names() {
      failure.run();
      return List.of();
    }

    @Override
    public void read(String sheet, IntPredicate columns, int lastRow, Consumer<List<Cell>> rows) {
      if (columns.test(0)) {
        rows.accept(A_ROW);
      }
      failure.run();
    }

    @Override
    public UsedArea usedArea(String sheet) {
      failure.run();
      return new UsedArea(-1, -1);
    }

    @Override
    public SheetLayout layout(String sheet) {
      failure.run();
      return new SheetLayout(List.of(), List.of());
    }

    @Override
    public void preview(WorkbookEdit edit, Consumer<CellChange> changes) {
      for (SheetEdit sheet : edit.sheets()) {
        for (ColumnEdit column : sheet.columns()) {
          assertThat(column.cells().apply(1)).isNull();
        }
      }
      failure.run();
    }

    @Override
    public SaveResult save(WorkbookEdit edit) {
      preview(edit, change -> {});
      return new SaveResult(false, 0, null);
    }

    @Override
    public void close() {
      // Nothing is open.
    }
  }

  private Workbook failing(Runnable failure) throws Exception {
    Path file = Files.write(folder.resolve("coins.xlsx"), emptyPackage());
    return AnyWorkbook.of(path -> new Failing(failure), SafeSave.onDisk()).open(file);
  }

  private static byte[] emptyPackage() throws Exception {
    var bytes = new ByteArrayOutputStream();
    try (var zip = new ZipOutputStream(bytes)) {
      zip.putNextEntry(new ZipEntry("[Content_Types].xml"));
    }
    return bytes.toByteArray();
  }

  private static WorkbookEdit edit(String sheet, RuntimeException callersFailure) {
    ColumnEdit column =
        new ColumnEdit(
            0,
            "Ours",
            CellLook.GENERAL,
            0,
            row -> {
              if (callersFailure != null) {
                throw callersFailure;
              }
              return null;
            });
    return new WorkbookEdit(
        List.of(new SheetEdit(sheet, 0, 1, 1, List.of(column))),
        List.of(),
        List.of(),
        Removal.NOTHING);
  }

  private interface Call {
    void run(Workbook workbook) throws WorkbookRefusal;
  }

  private static final List<Call> CALLS =
      List.of(
          Workbook::names,
          workbook -> workbook.read("Coins", column -> true, 1, row -> {}),
          workbook -> workbook.usedArea("Coins"),
          workbook -> workbook.layout("Coins"),
          workbook -> workbook.preview(edit("Coins", null), change -> {}),
          workbook -> workbook.save(edit("Coins", null)));

  @Test
  void everyFailureOfALibraryBecomesOneSentence() throws Exception {
    List<Runnable> failures =
        List.of(
            () -> {
              throw new IllegalArgumentException("record 0x5D is odd");
            },
            GuardedWorkbookTest::overflow,
            () -> {
              throw new OutOfMemoryError("planned");
            });
    List<WorkbookRefusal> refusals = new ArrayList<>();
    for (Runnable failure : failures) {
      for (Call call : CALLS) {
        Workbook workbook = failing(failure);
        refusals.add(catchThrowableOfType(WorkbookRefusal.class, () -> call.run(workbook)));
      }
    }

    assertThat(refusals)
        .hasSize(18)
        .allMatch(refusal -> refusal.kind() == Kind.DAMAGED)
        .allMatch(refusal -> refusal.getMessage().startsWith("coins.xlsx "))
        .noneMatch(refusal -> refusal.getMessage().contains("0x5D"));
  }

  @SuppressWarnings("InfiniteRecursion")
  private static void overflow() {
    overflow();
  }

  @Test
  void aRefusalPassesAsItIs() throws Exception {
    Path file = Files.write(folder.resolve("coins.xlsx"), emptyPackage());
    WorkbookRefusal refusal = new WorkbookRefusal(Kind.PROTECTED, "signed");
    AnyWorkbook workbooks =
        AnyWorkbook.of(
            path -> {
              throw refusal;
            },
            SafeSave.onDisk());

    assertThatThrownBy(() -> workbooks.open(file)).isSameAs(refusal);
  }

  @Test
  void aFailureOfTheCallersOwnPassesAsItIs() throws Exception {
    IllegalStateException mistake = new IllegalStateException("the caller's");
    Workbook workbook = failing(() -> {});

    assertThatThrownBy(
            () ->
                workbook.read(
                    "Coins",
                    column -> true,
                    1,
                    row -> {
                      throw mistake;
                    }))
        .isSameAs(mistake);
    assertThatThrownBy(() -> workbook.save(edit("Coins", mistake))).isSameAs(mistake);
  }

  @Test
  void aSheetThatIsNotThereIsTheCallersMistake() throws Exception {
    Workbook workbook = failing(() -> {});

    assertThatThrownBy(() -> workbook.usedArea("Kitchen"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("Kitchen");
    assertThatThrownBy(() -> workbook.save(edit("Kitchen", null)))
        .isInstanceOf(IllegalArgumentException.class);
  }
}

package fineweight.tool;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.tool.judge.FilledRow;
import fineweight.tool.judge.FilledTable;
import fineweight.tool.judge.KeyRow;
import fineweight.tool.judge.Verdict;
import fineweight.workbook.corpus.SharedFiles;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.Charset;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The three inventories of another hand through the real command, row by row against their keys. A
 * wrong figure is worse than none: there may be no wrong row beside the rulings named here.
 */
class InventoriesJudgedTest {
  /**
   * A row in which the key is not followed.
   *
   * @param code the metal in question by ISO 4217
   * @param ounces what we say instead
   */
  private record Ruling(int row, String code, String ounces, String reason) {
    boolean covers(FilledRow filled) {
      BigDecimal given = filled.ounces(code).setScale(6, RoundingMode.HALF_UP);
      return new BigDecimal(ounces).compareTo(given) == 0;
    }
  }

  private static final Map<String, List<Ruling>> RULINGS =
      Map.of(
          "tracker-table",
          List.of(
              new Ruling(
                  44,
                  "XAG",
                  "5",
                  "the edge of the five ounce America the Beautiful piece states five ounces fine,"
                      + " which are counted as 5 ozt")),
          "world-shoebox",
          List.of(
              new Ruling(
                  71,
                  "XAG",
                  "0.208125",
                  "three pieces of 36 grains, 925 fine; the key takes the 2.33 g that tables print,"
                      + " rounded from 2.3328 g"),
              new Ruling(
                  97,
                  "XAG",
                  "0.768491",
                  "the dollar is counted by 890 of 26.857 g and not by the first law's 23.978 g of"
                      + " silver")),
          "verzameling-export",
          List.of(
              new Ruling(
                  49, "XAG", "0", "the source does not split the silver in the ducat's alloy")));

  @TempDir Path folder;

  @Test
  void theTableWithATotalsRow() throws IOException {
    Path file = refreshed("tracker-table.xlsx");
    judge("tracker-table", FilledTable.ofWorkbook(file, "Tracker", 1));
  }

  @Test
  void theProtectedSheetOfTheWorld() throws IOException {
    Path file = refreshed("world-shoebox.xlsx");
    judge("world-shoebox", FilledTable.ofWorkbook(file, "Shoebox", 1));
  }

  @Test
  void theTextTableWithDecimalCommas() throws IOException {
    Path file = refreshed("verzameling-export.csv");
    judge("verzameling-export", FilledTable.ofText(file, ';', Charset.forName("windows-1252"), 1));
  }

  private Path refreshed(String name) throws IOException {
    Path file = CommandRun.copy(SharedFiles.folder("inventories").resolve(name), folder);
    CommandRun run = CommandRun.refresh(file, "--fill-protected");
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    return file;
  }

  private static void judge(String name, FilledTable table) throws IOException {
    Map<Verdict, Integer> counts = new EnumMap<>(Verdict.class);
    List<String> remarks = new ArrayList<>();
    List<Integer> wrong = new ArrayList<>();
    List<KeyRow> keys = KeyRow.read(SharedFiles.folder("inventories").resolve(name + ".key.csv"));
    List<Ruling> open = new ArrayList<>(RULINGS.get(name));
    for (KeyRow key : keys) {
      FilledRow filled = table.row(key.row());
      Verdict verdict = Verdict.of(key, filled);
      Optional<Ruling> ruling =
          open.stream()
              .filter(each -> verdict == Verdict.WRONG && each.row() == key.row())
              .filter(each -> each.covers(filled))
              .findFirst();
      ruling.ifPresent(open::remove);
      boolean ruled = ruling.isPresent();
      counts.merge(ruled ? Verdict.RIGHT : verdict, 1, Integer::sum);
      if (verdict != Verdict.RIGHT) {
        String why = ruling.map(each -> "ruling: " + each.reason()).orElse(verdict.words());
        remarks.add(
            "  row %d %s%n    key %s %s %s: %s%n    got %s"
                .formatted(
                    key.row(), why, key.answer(), key.ounces(), key.melt(), key.text(), filled));
      }
      if (verdict == Verdict.WRONG && !ruled) {
        wrong.add(key.row());
      }
    }
    System.out.printf("%s: %d rows", name, keys.size());
    for (Verdict verdict : Verdict.values()) {
      System.out.printf(", %d %s", counts.getOrDefault(verdict, 0), verdict.words());
    }
    System.out.printf(" (%d by ruling)%n", RULINGS.get(name).size() - open.size());
    remarks.forEach(System.out::println);
    assertThat(wrong).as("wrong rows of " + name).isEmpty();
    assertThat(open).as("rulings that are no longer needed").isEmpty();
    assertThat(keys).hasSizeGreaterThan(50);
  }
}

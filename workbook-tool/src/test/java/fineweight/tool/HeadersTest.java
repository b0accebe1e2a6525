package fineweight.tool;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.tool.judge.FilledRow;
import fineweight.tool.judge.FilledTable;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Thirty ways to lay out an inventory: the headings are found, the coins are read, and a total is
 * never valued as a coin.
 */
class HeadersTest {
  private static final BigDecimal TOLERANCE = new BigDecimal("0.0005");

  @TempDir Path folder;

  static Stream<Layout> layouts() {
    return Layout.all().stream();
  }

  @Test
  void thereAreThirtyLayouts() {
    assertThat(Layout.all()).hasSizeGreaterThanOrEqualTo(30);
    assertThat(Layout.all()).allMatch(layout -> layout.expected().size() > 0);
  }

  @ParameterizedTest
  @MethodSource("layouts")
  void isReadAsItsOwnerMeansIt(Layout layout) throws IOException {
    Path file = layout.save(folder.resolve("list.xlsx"));
    CommandRun run = CommandRun.refresh(file, "--home", "US");
    assertThat(run.err()).isEmpty();
    FilledTable table = FilledTable.ofWorkbook(file, layout.sheet(), layout.headerRow());
    assertThat(table.headings()).contains("Gross g each", "Melt USD");
    List<String> problems = new ArrayList<>();
    for (Map.Entry<Integer, String> row : layout.expected().entrySet()) {
      FilledRow filled = table.row(row.getKey());
      if (!fits(row.getValue(), filled)) {
        problems.add("row " + row.getKey() + " should be " + row.getValue() + ", is " + filled);
      }
    }
    assertThat(problems).as(run.out()).isEmpty();
    byte[] once = Files.readAllBytes(file);
    assertThat(CommandRun.refresh(file).done()).isTrue();
    assertThat(Files.readAllBytes(file)).as("a second run changes nothing").isEqualTo(once);
  }

  /** A text table has no hidden marks: the owner's columns are still told from ours. */
  @Test
  void columnsCalledLikeOursStayTheirOwnersInATextTable() throws IOException {
    String text = "Year,Denomination,Count,Metal,State,Note\n1964,dime,2,silver,nice,from a jar\n";
    Path file = Files.writeString(folder.resolve("list.csv"), text);
    assertThat(CommandRun.refresh(file).err()).isEmpty();
    byte[] once = Files.readAllBytes(file);
    assertThat(Files.readAllLines(file).get(1)).startsWith("1964,dime,2,silver,nice,from a jar,");
    assertThat(CommandRun.refresh(file).done()).isTrue();
    assertThat(Files.readAllBytes(file)).isEqualTo(once);
    assertThat(CommandRun.of("take-out", file).done()).isTrue();
    assertThat(Files.readString(file)).isEqualTo(text);
  }

  private static boolean fits(String expected, FilledRow filled) {
    FilledRow.State state = filled.state();
    return switch (expected) {
      case "blank" -> state == FilledRow.State.BLANK && !filled.hasFigure();
      case "base" -> state == FilledRow.State.NOTHING && !filled.hasFigure();
      case "several" -> state == FilledRow.State.SEVERAL;
      case "unknown" -> state == FilledRow.State.NOT_KNOWN && !filled.hasFigure();
      default -> {
        String[] words = expected.split(" ");
        BigDecimal wanted = new BigDecimal(words[1]);
        BigDecimal off = filled.ounces(words[0]).subtract(wanted).abs();
        yield state == FilledRow.State.VALUED
            && off.compareTo(wanted.multiply(TOLERANCE)) <= 0
            && filled.melt().isPresent();
      }
    };
  }
}

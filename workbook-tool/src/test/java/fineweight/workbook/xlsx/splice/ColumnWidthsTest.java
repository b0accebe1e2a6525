package fineweight.workbook.xlsx.splice;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.workbook.xlsx.splice.ColumnWidths.Width;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class ColumnWidthsTest {
  private static final Pattern COL =
      Pattern.compile("<(?:x:)?col .*?min=\"(\\d+)\" max=\"(\\d+)\".*?>");

  private static ColumnWidths widths(String list, long start) {
    List<Width> widths = new ArrayList<>();
    for (Matcher m = COL.matcher(list); m.find(); ) {
      int before = list.substring(0, m.start()).getBytes(StandardCharsets.UTF_8).length;
      widths.add(
          new Width(
              Integer.parseInt(m.group(1)) - 1,
              Integer.parseInt(m.group(2)) - 1,
              0,
              start + before,
              m.group()));
    }
    return new ColumnWidths(widths);
  }

  private static String add(String list, Map<Integer, Double> widths, String prefix) {
    return widths(list, 70)
        .changed(list, 70, new Frame(null, widths, Set.of(), LongerRanges.NONE), prefix);
  }

  private static String remove(String list, Set<Integer> columns, String prefix) {
    return widths(list, 70)
        .changed(list, 70, new Frame(null, Map.of(), columns, LongerRanges.NONE), prefix);
  }

  @Test
  void leavesTheOwnersWidthAlone() {
    String list =
        "<cols ><!-- für 1 --><col min=\"2\" max=\"2\" width=\"5\" customWidth=\"1\" />"
            + "<col min=\"5\" max=\"16384\" width=\"5\"></col>\n</cols >";
    assertThat(add(list, Map.of(1, 9.0, 4, 9.0, 99, 9.0), "")).isEqualTo(list);
    assertThat(remove(list, Set.of(1, 4, 99), "")).isEqualTo(list);
  }

  @Test
  void putsOursBetweenAndTakesThemOutAgain() {
    String list =
        "<x:cols><x:col min=\"2\" max=\"2\" width=\"5\"/><!-- ü -->"
            + "<x:col min=\"9\" max=\"9\" width=\"5\"></x:col> </x:cols>";
    String more = add(list, Map.of(0, 7.5, 4, 7.0, 5, 7.0, 20, 7.0), "x:");
    assertThat(more.replaceAll(" (customWidth|hidden|max|width)=\"[^\"]*\"", ""))
        .isEqualTo(
            "<x:cols><x:col min=\"1\"/><x:col min=\"2\"/><!-- ü --><x:col min=\"5\"/>"
                + "<x:col min=\"6\"/><x:col min=\"9\"></x:col> <x:col min=\"21\"/></x:cols>");
    assertThat(more).contains("min=\"1\" max=\"1\" customWidth=\"1\" hidden=\"0\" width=\"7.5\"");
    assertThat(remove(more, Set.of(0, 1, 4, 5, 8, 20), "x:")).isEqualTo(list);
  }

  @Test
  void makesAListAndLeavesNoneBehind() {
    String fresh = add("", Map.of(3, 7.0), "");
    assertThat(fresh)
        .isEqualTo(
            "<cols><col min=\"4\" max=\"4\" customWidth=\"1\" hidden=\"0\" width=\"7.0\"/></cols>");
    assertThat(add("<cols/>", Map.of(3, 7.0), "")).isEqualTo(fresh);
    assertThat(remove(fresh, Set.of(3), "")).isEmpty();
  }
}

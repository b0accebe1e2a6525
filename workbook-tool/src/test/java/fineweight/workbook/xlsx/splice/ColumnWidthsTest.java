package fineweight.workbook.xlsx.splice;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.workbook.xlsx.splice.ColumnWidths.Width;
import java.util.List;
import org.junit.jupiter.api.Test;

class ColumnWidthsTest {
  private static Width width(int first, int last) {
    return new Width(
        first, last, 0, "<col min=\"%d\" max=\"%d\" width=\"5\"/>".formatted(first + 1, last + 1));
  }

  @Test
  void cutsARangeAndGrowsItTogetherAgain() {
    ColumnWidths widths = new ColumnWidths(List.of(width(0, 2), width(3, 9)));
    String before = widths.xml("");
    widths.set(5, 12, "");
    assertThat(widths.xml(""))
        .contains(
            "<col min=\"4\" max=\"5\" width=\"5\"/>"
                + "<col min=\"6\" max=\"6\" width=\"12.0\" customWidth=\"1\"/>"
                + "<col min=\"7\" max=\"10\" width=\"5\"/>");
    widths.remove(5);
    assertThat(widths.xml("")).isEqualTo(before);
  }

  @Test
  void keepsTheOrder() {
    ColumnWidths widths = new ColumnWidths(List.of(width(0, 0), width(8, 8)));
    widths.set(4, 7, "x:");
    widths.set(20, 7, "x:");
    assertThat(widths.xml("x:"))
        .isEqualTo(
            "<x:cols><col min=\"1\" max=\"1\" width=\"5\"/>"
                + "<x:col min=\"5\" max=\"5\" width=\"7.0\" customWidth=\"1\"/>"
                + "<col min=\"9\" max=\"9\" width=\"5\"/>"
                + "<x:col min=\"21\" max=\"21\" width=\"7.0\" customWidth=\"1\"/></x:cols>");
    widths.remove(4);
    widths.remove(20);
    widths.remove(0);
    widths.remove(8);
    assertThat(widths.xml("x:")).isEmpty();
  }
}

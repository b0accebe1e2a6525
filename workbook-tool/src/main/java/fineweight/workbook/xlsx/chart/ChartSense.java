package fineweight.workbook.xlsx.chart;

import fineweight.workbook.xlsx.xml.Element;
import fineweight.workbook.xlsx.xml.Markup;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * What a chart says, whoever wrote it: title, the cells that it refers to, the values stored beside
 * them. Offices write a chart anew in their own way without changing that.
 */
public final class ChartSense {
  private ChartSense() {}

  public static boolean same(Markup one, Markup other) {
    return sense(one).equals(sense(other));
  }

  private static List<String> sense(Markup chart) {
    List<String> sense = new ArrayList<>();
    collect(chart.root(), sense);
    return sense;
  }

  private static void collect(Element element, List<String> sense) {
    switch (element.name()) {
      case "t" -> sense.add("t " + element.text());
      // Blanks and quotes around a sheet's name are a matter of taste.
      case "f" -> sense.add("f " + element.text().replace("'", "").strip());
      case "pt" -> sense.add("pt " + element.get("idx") + " " + value(element));
      default -> element.children().forEach(child -> collect(child, sense));
    }
  }

  private static String value(Element point) {
    String text = point.child("v").map(Element::text).orElse("");
    try {
      return new BigDecimal(text.strip()).stripTrailingZeros().toPlainString();
    } catch (NumberFormatException notANumber) {
      return text;
    }
  }
}

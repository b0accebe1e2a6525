package fineweight.giveaway;

import java.util.Optional;
import java.util.Set;
import org.openxmlformats.schemas.drawingml.x2006.chart.ChartSpaceDocument;

/** A chart with its shape, colours and the areas it draws, without any text or stored figure. */
final class EmptyChart {
  private static final Set<String> GONE =
      Set.of(
          "strCache",
          "numCache",
          "multiLvlStrCache",
          "strLit",
          "numLit",
          "rich",
          "v",
          "name",
          "lang",
          "pivotSource",
          "pivotFmts",
          "protection",
          "externalData",
          "userShapes",
          "printSettings",
          "pictureOptions",
          "blipFill",
          "hlinkClick",
          "hlinkMouseOver",
          "extLst");

  private static final Set<String> HOLLOW =
      Set.of(
          "tx",
          "cat",
          "val",
          "xVal",
          "yVal",
          "bubbleSize",
          "plus",
          "minus",
          "strRef",
          "numRef",
          "multiLvlStrRef",
          "latin",
          "ea",
          "cs",
          "sym",
          "separator",
          "f");

  private final FormulaRules formulas;
  private final LookRules looks;
  private final KeptWords words;
  private final Findings findings;

  EmptyChart(FormulaRules formulas, LookRules looks, KeptWords words, Findings findings) {
    this.formulas = formulas;
    this.looks = looks;
    this.words = words;
    this.findings = findings;
  }

  void sieve(ChartSpaceDocument chart) {
    int texts =
        chart.selectPath(
                "declare namespace a='http://schemas.openxmlformats.org/drawingml/2006/main'; .//a:t")
            .length;
    for (int i = 0; i < texts; i++) {
      findings.removed("text in a chart");
    }
    new SchemaSieve(GONE, HOLLOW, this::free).sieve(chart);
  }

  private String free(String element, String attribute, String value) {
    switch (element + " " + attribute) {
      case "f " -> {
        Optional<String> objection = formulas.objection(value);
        objection.ifPresent(why -> findings.removed("row of a chart whose source " + why));
        return objection.isPresent() ? null : value;
      }
      case "formatCode ", "numFmt formatCode" -> {
        return looks.formatCode(value);
      }
      case "latin typeface", "ea typeface", "cs typeface", "sym typeface" -> {
        return looks.font(value);
      }
      case "separator " -> {
        return words.knows(value) ? value : null;
      }
      default -> {
        return null;
      }
    }
  }
}

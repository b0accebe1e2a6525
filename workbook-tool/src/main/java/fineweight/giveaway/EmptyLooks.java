package fineweight.giveaway;

import java.util.Set;
import org.openxmlformats.schemas.drawingml.x2006.main.ThemeDocument;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.StyleSheetDocument;

/** Formats of cells and the colours of the theme, without names of the owner's. */
final class EmptyLooks {
  private final LookRules looks;

  EmptyLooks(LookRules looks) {
    this.looks = looks;
  }

  void sieve(StyleSheetDocument document) {
    new SchemaSieve(Set.of("extLst", "tableStyles"), Set.of(), this::style).sieve(document);
  }

  private String style(String element, String attribute, String value) {
    return switch (element + " " + attribute) {
      case "numFmt formatCode" -> looks.formatCode(value);
      case "name val" -> looks.font(value) == null ? "Calibri" : value;
      case "cellStyle name" -> looks.cellStyle(value);
      default -> null;
    };
  }

  void sieve(ThemeDocument document) {
    new SchemaSieve(
            Set.of(
                "objectDefaults", "extraClrSchemeLst", "custClrLst", "extLst", "font", "blipFill"),
            Set.of(),
            this::theme)
        .sieve(document);
  }

  private String theme(String element, String attribute, String value) {
    return switch (element + " " + attribute) {
      case "clrScheme name" -> "Colours";
      case "fontScheme name" -> "Fonts";
      case "latin typeface" -> looks.font(value) == null ? "Calibri" : value;
      case "ea typeface", "cs typeface" -> "";
      default -> null;
    };
  }
}

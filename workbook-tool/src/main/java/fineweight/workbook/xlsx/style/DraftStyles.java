package fineweight.workbook.xlsx.style;

import fineweight.workbook.CellLook;
import fineweight.workbook.SheetDraft.Kind;

/** The looks of our own sheets, built on the workbook's first font. */
public final class DraftStyles {
  private static final String LINE =
      "<border><left/><right/><top/><bottom style=\"thin\"><color auto=\"1\"/></bottom>"
          + "<diagonal/></border>";
  private static final String LINE_ABOVE =
      "<border><left/><right/><top style=\"thin\"><color auto=\"1\"/></top><bottom/>"
          + "<diagonal/></border>";
  private static final String BOX =
      "<border><left style=\"thin\"><color auto=\"1\"/></left>"
          + "<right style=\"thin\"><color auto=\"1\"/></right>"
          + "<top style=\"thin\"><color auto=\"1\"/></top>"
          + "<bottom style=\"thin\"><color auto=\"1\"/></bottom><diagonal/></border>";

  private final Styles styles;

  public DraftStyles(Styles styles) {
    this.styles = styles;
  }

  public int of(Kind kind, CellLook look, boolean linked) {
    String font = font(kind, linked);
    return switch (kind) {
      case PLAIN -> styles.own(font, "", "", look, "");
      case TITLE, REMARK -> styles.own(font, "", "", look, "");
      case HEADER -> styles.own(font, fill("FFD9E1E7"), LINE, look, "");
      case INPUT -> styles.own(font, fill("FFFFF8DC"), BOX, look, "<protection locked=\"0\"/>");
      case TOTAL -> styles.own(font, "", LINE_ABOVE, look, "");
    };
  }

  private String font(Kind kind, boolean linked) {
    String size = kind == Kind.TITLE ? "14" : styles.fontSize();
    String marks =
        switch (kind) {
          case TITLE, HEADER, TOTAL -> "<b/>";
          case REMARK -> "<i/>";
          default -> "";
        };
    if (marks.isEmpty() && !linked) {
      return "";
    }
    String link = linked ? "<u/>" : "";
    String colour = linked ? "<color rgb=\"FF1F4E9E\"/>" : "";
    return "<font>%s%s<sz val=\"%s\"/>%s<name val=\"%s\"/></font>"
        .formatted(marks, link, size, colour, styles.fontName());
  }

  private static String fill(String colour) {
    return "<fill><patternFill patternType=\"solid\"><fgColor rgb=\"%s\"/>".formatted(colour)
        + "<bgColor indexed=\"64\"/></patternFill></fill>";
  }
}

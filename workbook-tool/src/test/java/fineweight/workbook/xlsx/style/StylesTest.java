package fineweight.workbook.xlsx.style;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fineweight.workbook.CellLook;
import fineweight.workbook.xlsx.xml.DamageException;
import fineweight.workbook.xlsx.xml.Markup;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class StylesTest {
  private static final CellLook OUNCES = CellLook.number("0.0000");

  private static Styles minimal() {
    return new Styles(StylesPart.fresh());
  }

  private static Styles again(Styles styles) {
    return new Styles(Markup.of("styles", styles.changed()));
  }

  @Test
  void appendsOnceAndUsesEqualFormatsAgain() {
    Styles first = minimal();
    assertThat(first.derive(0, OUNCES, false)).isEqualTo(1);
    assertThat(first.derive(0, OUNCES, false)).isEqualTo(1);
    assertThat(first.derive(0, CellLook.GENERAL, false)).isZero();
    Styles second = again(first);
    assertThat(second.derive(0, OUNCES, false)).isEqualTo(1);
    assertThat(second.changed()).isNull();
  }

  @Test
  void drawsOurOwnLooksOnce() {
    Styles first = minimal();
    DraftStyles looks = new DraftStyles(first);
    for (var kind : fineweight.workbook.SheetDraft.Kind.values()) {
      looks.of(kind, OUNCES, false);
      looks.of(kind, new CellLook("", true), true);
    }
    Styles second = again(first);
    DraftStyles same = new DraftStyles(second);
    for (var kind : fineweight.workbook.SheetDraft.Kind.values()) {
      same.of(kind, OUNCES, false);
      same.of(kind, new CellLook("", true), true);
    }
    assertThat(second.changed()).isNull();
  }

  @Test
  void keepsAnOwnNumberFormatAndGoesRoundTakenNumbers() {
    Styles styles =
        new Styles(
            Markup.of(
                "styles",
                new String(StylesPart.fresh().bytes(), StandardCharsets.UTF_8)
                    .replace(
                        "<fonts",
                        "<numFmts count=\"1\"><numFmt numFmtId=\"164\" formatCode=\"0.0\"/></numFmts><fonts")
                    .replace(
                        "</cellXfs>",
                        "<xf numFmtId=\"164\" fontId=\"0\" fillId=\"0\"/></cellXfs>")));
    assertThat(styles.derive(1, OUNCES, true)).isEqualTo(1);
    assertThat(styles.derive(1, OUNCES, false)).isEqualTo(2);
    assertThat(new String(styles.changed(), StandardCharsets.UTF_8))
        .contains(
            "<numFmts count=\"2\">",
            "<numFmt numFmtId=\"165\" formatCode=\"0.0000\"/></numFmts>",
            "<cellXfs count=\"3\">");
  }

  @Test
  void refusesAFormatThatIsNotThere() {
    assertThatThrownBy(() -> minimal().check(1)).isInstanceOf(DamageException.class);
  }
}

package fineweight.workbook.xlsx.style;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fineweight.workbook.CellLook;
import fineweight.workbook.xlsx.xml.DamageException;
import fineweight.workbook.xlsx.xml.Markup;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class StylesPartTest {
  private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

  private static String completed(String xml) {
    Markup markup = StylesPart.completed(Markup.of("styles", xml));
    return new String(markup.bytes(), StandardCharsets.UTF_8);
  }

  @Test
  void keepsTheRootWithItsAttributes() {
    String root = "<styleSheet xml:space=\"preserve\" xmlns=\"" + MAIN + "\"";
    assertThat(completed(root + "/>"))
        .startsWith(root + "><fonts count=\"1\">")
        .endsWith("</cellXfs></styleSheet>");
  }

  @Test
  void putsMissingListsAtTheirPlace() {
    String xml =
        "<x:styleSheet xmlns:x=\"%s\"><x:numFmts/><!-- a --><x:fills/><x:dxfs/></x:styleSheet>"
            .formatted(MAIN);
    assertThat(completed(xml).replaceAll("<(x:[a-zA-Z]+) count=\"\\d\">.*?</\\1>", "<$1+/>"))
        .isEqualTo(
            "<x:styleSheet xmlns:x=\"%s\"><x:numFmts/><!-- a --><x:fonts+/><x:fills/>"
                    .formatted(MAIN)
                + "<x:borders+/><x:cellStyleXfs+/><x:cellXfs+/><x:dxfs/></x:styleSheet>");
    Styles styles = new Styles(StylesPart.completed(Markup.of("styles", xml)));
    assertThat(styles.changed()).isNull();
    styles.derive(0, CellLook.number("0.0000"), false);
    assertThat(new String(styles.changed(), StandardCharsets.UTF_8))
        .contains("<x:cellXfs count=\"2\">");
  }

  @Test
  void refusesAForeignRoot() {
    assertThatThrownBy(() -> completed("<styleSheet xmlns=\"urn:x\"/>"))
        .isInstanceOf(DamageException.class);
    assertThatThrownBy(() -> completed("<styles xmlns=\"" + MAIN + "\"/>"))
        .isInstanceOf(DamageException.class);
  }
}

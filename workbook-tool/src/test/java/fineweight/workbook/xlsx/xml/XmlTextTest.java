package fineweight.workbook.xlsx.xml;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class XmlTextTest {
  @Test
  void escapesWhatXmlForbids() {
    assertThat(XmlText.escapeCell("a\u0007b\ttab\nline\r"))
        .isEqualTo("a_x0007_b\ttab\nline_x000D_");
    assertThat(XmlText.escapeCell("_x0041_ _x41_")).isEqualTo("_x005F_x0041_ _x41_");
    assertThat(XmlText.escapeCell("\uD83D\uDE00\uD83D")).isEqualTo("\uD83D\uDE00_xD83D_");
    assertThat(XmlText.unescapeCell("a_x000a_b_x005F_x0041_")).isEqualTo("a\nb_x0041_");
  }

  @Property(tries = 2000)
  void everyTextComesBackThroughXml(@ForAll String text) {
    String xml = "<t>" + XmlText.content(XmlText.escapeCell(text)) + "</t>";
    try (XmlCursor cursor =
        new XmlCursor(new ByteArrayInputStream(xml.getBytes(StandardCharsets.UTF_8)), "part")) {
      cursor.nextChild();
      assertThat(XmlText.unescapeCell(cursor.text())).isEqualTo(text);
    }
  }

  @Test
  void keepsLineEndsInAttributes() {
    assertThat(XmlText.attribute("a\"b\n\tc&<")).isEqualTo("a&quot;b&#10;&#9;c&amp;&lt;");
  }
}

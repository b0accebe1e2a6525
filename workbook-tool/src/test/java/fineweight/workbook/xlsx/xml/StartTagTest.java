package fineweight.workbook.xlsx.xml;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class StartTagTest {
  @Test
  void changesOneAttributeAndNothingElse() {
    assertThat(StartTag.with("<c r = 'A1'  t=\"s\">", "t", "n")).isEqualTo("<c r = 'A1'  t=\"n\">");
    assertThat(StartTag.with("<c r='A1'/>", "s", "3")).isEqualTo("<c r='A1' s=\"3\"/>");
    assertThat(StartTag.without("<c r = 'A1'  t=\"s\" >", "t")).isEqualTo("<c r = 'A1' >");
    assertThat(StartTag.without("<c r='A1'>", "t")).isEqualTo("<c r='A1'>");
  }

  @Test
  void isNotMisledByValuesAndPrefixes() {
    assertThat(StartTag.get("<row x:r=\"9\" a=\" r='7' > \" r=\"2\">", "r")).isEqualTo("2");
    assertThat(StartTag.get("<row x:r=\"9\">", "r")).isNull();
  }

  @Test
  void opensAndCloses() {
    assertThat(StartTag.opened("<row r=\"1\" />")).isEqualTo("<row r=\"1\">");
    assertThat(StartTag.opened("<row r=\"1\">")).isEqualTo("<row r=\"1\">");
    assertThat(StartTag.closed("<col min=\"1\">")).isEqualTo("<col min=\"1\"/>");
  }
}

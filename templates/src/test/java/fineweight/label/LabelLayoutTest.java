package fineweight.label;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LabelLayoutTest {
  private static LabelLayout layout(String paper, String label, String margins, String gaps) {
    return new LabelLayout(
        Paper.read(paper).orElseThrow(),
        Extent.read(label).orElseThrow(),
        Margins.read(margins).orElseThrow(),
        Extent.read(gaps).orElseThrow(),
        false);
  }

  /** Counted by hand: how often label and gap go into the paper without its margins. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "A4; 70x37; 0; 0x0; 3; 8",
        "A4; 52.5x29.7; 0; 0x0; 4; 10",
        "A4; 38.1x21.2; 10.7,4.7,10.7,4.7; 2.5x0; 5; 13",
        "letter; 66.675x25.4; 12.7,4.7625,12.7,4.7625; 3.175x0; 3; 10",
        "62x29; 60x27; 1; 0x0; 1; 1",
        "A5; 50x50; 10; 5x5; 2; 3",
        "A4; 190x277; 10; 3x3; 1; 1",
      })
  void asManyAsFit(String paper, String label, String margins, String gaps, int across, int down) {
    LabelLayout layout = layout(paper, label, margins, gaps);
    assertThat(layout.across()).isEqualTo(across);
    assertThat(layout.down()).isEqualTo(down);
    assertThat(layout.perPage()).isEqualTo(across * down);
  }

  @Test
  void aPaperMayBeTurned() {
    Paper turned = Paper.A4.turned();
    assertThat(turned.size().words()).isEqualTo("297 x 210 mm");
    assertThat(turned.landscape()).isTrue();
    assertThat(turned.turned()).isEqualTo(Paper.A4);
    assertThat(Paper.read("62x100").orElseThrow().turned().landscape()).isFalse();
  }

  @Test
  void refusesWhatFitsNowhere() {
    assertThatThrownBy(() -> layout("A5", "150x20", "0", "0x0"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("does not fit on paper of 148 x 210 mm");
    assertThatThrownBy(() -> layout("A5", "20x20", "80", "0x0"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("smaller margins");
    assertThatThrownBy(() -> layout("A4", "38x4", "0", "0x0"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("too small");
  }

  @ParameterizedTest
  @ValueSource(strings = {"38x21", "38 x 21 mm", "38X21", "38mm x 21mm", "38×21", "38.0x21.00"})
  void readsSizesAsPeopleWriteThem(String words) {
    assertThat(Extent.read(words).orElseThrow().words()).isEqualTo("38 x 21 mm");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "38", "38x", "axb", "-38x21", "38x21x5", "1e3x5"})
  void readsNothingIntoOtherSizes(String words) {
    assertThat(Extent.read(words)).isEmpty();
  }

  @Test
  void readsMarginsOneByOne() {
    Margins margins = Margins.read("13, 8.5,12,7").orElseThrow();
    assertThat(margins.top()).isEqualTo(new BigDecimal("13"));
    assertThat(margins.right()).isEqualTo(new BigDecimal("8.5"));
    assertThat(margins.bottom()).isEqualTo(new BigDecimal("12"));
    assertThat(margins.left()).isEqualTo(new BigDecimal("7"));
    assertThat(Margins.read("1,2")).isEmpty();
    assertThat(Margins.read("-1")).isEmpty();
    assertThat(Margins.read("1,2,3,4,5")).isEmpty();
    assertThat(Paper.read("0x100")).isEmpty();
    assertThat(Paper.read("tabloid")).isEmpty();
  }
}

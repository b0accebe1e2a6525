package fineweight.identification;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.clue.Field;
import fineweight.clue.FieldRole;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** What scale, magnet and water add to the words. */
class ScaleAndWaterTest {
  @Test
  void densityThatDoesNotFitIsSaidWithTheFigure() {
    // 23.7 g in water of 26.73 g: 8.8, as copper alloys have; 900 silver has 10.3.
    Answered got = weighed("1921 Morgan dollar", "26.73", "23.7");
    assertThat(got.said()).contains("density 8.8 does not fit 900 silver, 10.3");
    assertThat(got.isFlagged()).isTrue();
  }

  @Test
  void densityThatFitsSaysNothing() {
    // 26.73 g and 24.14 g: 10.3.
    Answered got = weighed("1921 Morgan dollar", "26.73", "24.14");
    assertThat(got.isFlagged()).isFalse();
  }

  @Test
  void densitySettlesTwoMetals() {
    // A clad half dollar of 11.34 g has 8.9: 10.07 g in water.
    Answered got = weighed("1976-S half dollar proof", "11.4", "10.12");
    assertThat(got.kind()).as(got.said()).isEqualTo("base");
  }

  @Test
  void wearBeyondTheMintsAllowanceIsSaidWithTheFigure() {
    // Coinage Act of 1873, sec. 37: 1.5 grains, 0.10 g.
    Answered got = weighed("1892 Barber half", "11.9", "");
    assertThat(got.said())
        .contains("0.60 g (4.8 %) less than as struck, 12.50 g")
        .contains("0.10 g");
    assertThat(weighed("1892 Barber half", "12.45", "").isFlagged()).isFalse();
  }

  @Test
  void theScaleSettlesTheCentOf1982() {
    assertThat(weighed("1982 cent", "3.08", "").standards().get(0).id())
        .isEqualTo("us-cent-1962-1982-brass");
    assertThat(weighed("1982 cent", "2.52", "").standards().get(0).id())
        .isEqualTo("us-cent-1982-2008-zinc");
  }

  @Test
  void aMassThatCannotBeIsNoAnswer() {
    assertThat(weighed("1964 quarter", "5.0", "").kind()).isEqualTo("none");
  }

  @Test
  void aMagnetThatHoldsSilverIsNoAnswer() {
    Answered got =
        Answered.to(
            List.of(
                new Field(FieldRole.DESCRIPTION, "1921 Morgan dollar"),
                new Field(FieldRole.MAGNET, "yes")));
    assertThat(got.kind()).isEqualTo("none");
    assertThat(got.said()).contains("magnet");
  }

  @Test
  void aDiameterThatDoesNotFitIsSaidWithTheFigure() {
    // A quarter has 24.3 mm by law, a half dollar 30.6 mm.
    Answered got = measured("1964 half dollar", "24.3");
    assertThat(got.kind().equals("one") && !got.isFlagged()).as(got.said()).isFalse();
    assertThat(got.said()).contains("24.3").contains("30.6");
    assertThat(measured("1964 half dollar", "30.6").isFlagged()).isFalse();
  }

  @Test
  void whatIsMeasuredIsNeverAVerdictOfAuthenticity() {
    for (Answered got :
        List.of(
            weighed("1921 Morgan dollar", "26.73", "23.7"),
            weighed("1892 Barber half", "11.9", ""),
            measured("1964 half dollar", "24.3"))) {
      assertThat(got.said().toLowerCase(Locale.ROOT))
          .doesNotContain("genuine", "authentic", "fake", "counterfeit", "forgery");
    }
  }

  private static Answered measured(String text, String millimetres) {
    return Answered.to(
        List.of(
            new Field(FieldRole.DESCRIPTION, text), new Field(FieldRole.DIAMETER, millimetres)));
  }

  private static Answered weighed(String text, String air, String water) {
    List<Field> fields = new ArrayList<>();
    fields.add(new Field(FieldRole.DESCRIPTION, text));
    fields.add(new Field(FieldRole.MASS, air));
    if (!water.isEmpty()) {
      fields.add(new Field(FieldRole.MASS_IN_WATER, water));
    }
    return Answered.to(fields);
  }
}

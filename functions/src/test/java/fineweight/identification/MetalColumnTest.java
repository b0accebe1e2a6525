package fineweight.identification;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.clue.Field;
import fineweight.clue.FieldRole;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A column of metals agrees with the coin, contradicts it, or is not understood. */
class MetalColumnTest {
  @Test
  void theRestOfTheAlloyContradictsNothing() {
    Answered got = answer("1964 quarter", "90% silver, 10% copper");
    assertThat(got.kind()).as(got.said()).isEqualTo("one");
    assertThat(got.isFlagged()).isFalse();
  }

  @Test
  void anotherMetalIsNoPlainAnswer() {
    assertThat(answer("1964 quarter", "copper-nickel").kind()).isIn("none", "ask");
    assertThat(answer("1965 quarter", "silver").kind()).isIn("none", "ask");
    assertThat(answer("1964 quarter", ".400").kind()).isIn("none", "ask");
  }

  @Test
  void aPlatedPieceGetsNoFigure() {
    assertThat(answer("1964 half dollar", "silver plated").kind()).isEqualTo("none");
  }

  @Test
  void wordsNotUnderstoodAreNamed() {
    Answered got = answer("1964 quarter", "unobtainium");
    assertThat(got.isFlagged()).isTrue();
    assertThat(got.said()).contains("unobtainium");
  }

  @Test
  void theFinenessPicksAmongStandards() {
    Answered got = answer("1967 Canada 25 cents", "silver .500");
    assertThat(got.standards().get(0).id()).isEqualTo("ca-25c-1967-500");
  }

  private static Answered answer(String text, String metal) {
    return Answered.to(
        List.of(new Field(FieldRole.DESCRIPTION, text), new Field(FieldRole.METAL, metal)));
  }
}

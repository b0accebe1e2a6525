package fineweight.column;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class EachCoinTest {
  @Test
  void datesWithTheirMintMarksGoWithTheRestOfTheWords() {
    assertThat(EachCoin.words("3 merc dimes 40 42 45-D", List.of(1940, 1942, 1945)))
        .containsExactly("1940 merc dimes", "1942 merc dimes", "1945-D merc dimes");
    assertThat(EachCoin.words("1943P/1944D nickels, worn", List.of(1943, 1944)))
        .containsExactly("1943P nickels, worn", "1944D nickels, worn");
    assertThat(EachCoin.words("2 x halves '64 & '65", List.of(64, 65)))
        .containsExactly("64 halves", "65 halves");
    assertThat(EachCoin.words("1940, 1942", List.of(1940, 1942))).containsExactly("1940", "1942");
  }

  @Test
  void datesThatDoNotStandTogetherAreLeft() {
    assertThat(EachCoin.words("1940 dime and 1942 quarter", List.of(1940, 1942))).isEmpty();
    assertThat(EachCoin.words("1940-1942 dimes", List.of(1940, 1941, 1942))).isEmpty();
    assertThat(EachCoin.words("dimes 1940 1943", List.of(1940, 1942))).isEmpty();
    assertThat(EachCoin.words("", List.of(1940, 1942))).isEmpty();
    assertThat(EachCoin.words("$19.40 for 1,942", List.of(1940, 1942))).isEmpty();
  }
}

package fineweight.identification;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.clue.Field;
import fineweight.clue.FieldRole;
import fineweight.clue.lexicon.Lexicon;
import fineweight.clue.reading.ClueReader;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A mint letter written behind the coin's name; common practice, no source. */
class MintBehindNameTest {
  private static final ClueReader READER = new ClueReader(Lexicon.standard());

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1976 half dollar S | S",
        "1942 nickel S | S",
        "1943 nickel, P | P",
        "Franklin half D 1953 | D",
        "1885 Morgan CC VF | CC",
        "1921 peace dollar | ",
        "1964 quarter d | ",
        "dime D. Roosevelt 1964 | ",
        "1964 quarter S Smith collection | ",
      })
  void isRead(String words, String mint) {
    String read =
        READER
            .read(List.of(new Field(FieldRole.DESCRIPTION, words)))
            .mint()
            .map(clue -> clue.value())
            .orElse(null);
    assertThat(read).isEqualTo(mint);
  }
}

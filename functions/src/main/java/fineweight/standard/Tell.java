package fineweight.standard;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A word or phrase by which a description points at one standard, perhaps only in some years:
 * {@code arrows}, {@code 1873: no arrows}, {@code mint S}. Immutable.
 *
 * @param years the years in which the phrase tells; empty for all
 * @param phrase in lower case
 */
public record Tell(Optional<Years> years, String phrase) {
  /**
   * @throws IllegalArgumentException if the phrase is blank
   */
  public Tell {
    phrase = phrase.strip().toLowerCase(Locale.ROOT);
    if (phrase.isEmpty()) {
      throw new IllegalArgumentException("a tell needs a word");
    }
  }

  /**
   * Reads a list such as {@code 1853: arrows; 1853: rays; 1873: no arrows}; an empty text is an
   * empty list.
   *
   * @throws IllegalArgumentException if the text is not of this form
   */
  static List<Tell> parseAll(String text) {
    List<Tell> tells = new ArrayList<>();
    if (text.isBlank()) {
      return tells;
    }
    for (String piece : text.split(";", -1)) {
      int colon = piece.indexOf(':');
      if (colon < 0) {
        tells.add(new Tell(Optional.empty(), piece));
      } else {
        tells.add(
            new Tell(
                Optional.of(Years.parse(piece.substring(0, colon).strip().replace(',', ';'))),
                piece.substring(colon + 1)));
      }
    }
    return List.copyOf(tells);
  }

  public boolean holdsIn(int year) {
    return years.isEmpty() || years.get().contains(year);
  }
}

package fineweight.giveaway;

import fineweight.clue.lexicon.Lexicon;
import fineweight.clue.word.Phrases;
import fineweight.clue.word.Word;
import fineweight.clue.word.Words;
import fineweight.column.Headings;
import fineweight.sale.SaleState;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Currency;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Words that may be given away: those of the trade, headings in use, currencies, a short list of
 * labels, and what the owner has named. Every other word is taken for private.
 */
final class KeptWords {
  /** Scale of 1 to 70 with the usual letters; common practice, no source. */
  private static final String GRADE =
      "(?i)(ms|pr|pf|sp|au|xf|ef|vf|f|vg|g|ag|fr|po|bu|unc)[- ]?[0-9]{0,2}\\+?";

  /** A number that can be a grade, a count of a roll or a month, and no price or certificate. */
  private static final String SMALL_NUMBER = "[0-9]{1,2}|100";

  private final Set<String> owners;
  private final Set<String> listed = new HashSet<>();
  private final Lexicon lexicon = Lexicon.standard();

  KeptWords(Set<String> owners) {
    this.owners = owners.stream().map(KeptWords::key).collect(Collectors.toSet());
    Arrays.stream(SaleState.values()).map(SaleState::word).forEach(listed::add);
    Currency.getAvailableCurrencies().forEach(each -> listed.add(key(each.getCurrencyCode())));
    listed.addAll(lines("words.txt"));
  }

  /** The lines of a list beside this class, remarks left out, in small letters. */
  static Set<String> lines(String resource) {
    InputStream bytes = KeptWords.class.getResourceAsStream(resource);
    if (bytes == null) {
      throw new IllegalStateException("the list " + resource + " is missing from the program");
    }
    try (BufferedReader reader =
        new BufferedReader(new InputStreamReader(bytes, StandardCharsets.UTF_8))) {
      return reader
          .lines()
          .map(KeptWords::key)
          .filter(line -> !line.isEmpty() && !line.startsWith("#"))
          .collect(Collectors.toSet());
    } catch (IOException failed) {
      throw new UncheckedIOException("cannot read the list " + resource, failed);
    }
  }

  private static String key(String text) {
    return text.strip().toLowerCase(Locale.ROOT);
  }

  /** Whether the whole text may be given away. */
  boolean knows(String text) {
    String key = key(text);
    return owners.contains(key) || hasNoWord(key) || listed.contains(key) || isOfTheTrade(key);
  }

  /** Signs such as a dash or a slash say nothing. */
  private static boolean hasNoWord(String text) {
    return text.codePoints().noneMatch(Character::isLetterOrDigit);
  }

  private boolean isOfTheTrade(String text) {
    if (text.matches(GRADE) || text.matches(SMALL_NUMBER)) {
      return true;
    }
    List<Word> words = Words.of(text);
    return spans(lexicon.phrases(), words)
        || spans(lexicon.metals(), words)
        || Headings.standard().match(text).filter(Headings.Match::exact).isPresent();
  }

  private static boolean spans(Phrases<?> phrases, List<Word> words) {
    Phrases.Found<?> found = words.isEmpty() ? null : phrases.longestAt(words, 0);
    return found != null && found.length() == words.size();
  }
}

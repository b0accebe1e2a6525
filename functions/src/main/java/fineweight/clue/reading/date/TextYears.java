package fineweight.clue.reading.date;

import fineweight.clue.Dating;
import fineweight.clue.Dating.Kind;
import fineweight.clue.lexicon.Meaning;
import fineweight.clue.passage.Hit;
import fineweight.clue.passage.Passage;
import fineweight.clue.word.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads years of four digits, or in Roman figures, among other words. */
final class TextYears {
  private static final Pattern SMALL_NUMBER = Pattern.compile("\\d{1,2}");
  private static final Pattern ROMAN = Pattern.compile("m[cdlxvi]{3,}");

  private static final int FIRST = 1000;
  private static final int LAST = 2100;

  private final Passage passage;
  private final List<Integer> years = new ArrayList<>();
  private final List<String> words = new ArrayList<>();
  private boolean span;
  private boolean doubted;

  private TextYears(Passage passage) {
    this.passage = passage;
  }

  static Dating read(Passage passage) {
    TextYears reading = new TextYears(passage);
    reading.readAll();
    return reading.dating();
  }

  private void readAll() {
    int at = 0;
    while (at < passage.size()) {
      Optional<Integer> year = yearAt(at);
      if (year.isEmpty()) {
        at++;
      } else if (passage.isNegated(at)) {
        passage.take(at, at + 1);
        at++;
      } else {
        span |=
            !years.isEmpty()
                && passage.isSign(at - 1, "-")
                && passage.at(at - 2).filter(Word::isNumber).isPresent();
        doubted |= isDoubted(at);
        add(at, year.get());
        at = shortOnes(overdate(at), year.get());
      }
    }
  }

  private void add(int at, int year) {
    years.add(year);
    words.add(passage.word(at).raw());
    passage.take(at, at + 1);
  }

  /** "circa 1900", "maybe 1921". */
  private boolean isDoubted(int at) {
    int before = passage.matches(at - 1, "[.,~]") ? at - 2 : at - 1;
    return passage.isSign(at + 1, "?")
        || (passage.matches(before, "c") && (before == 0 || before < at - 1))
        || passage.matches(before, "ca|circa|maybe|perhaps|possibly|probably|prob|about|approx|um");
  }

  private Dating dating() {
    if (years.isEmpty()) {
      return Dating.UNSAID;
    }
    String joined = String.join(" ", words);
    if (years.equals(List.of(1776, 1976))) {
      return new Dating(Kind.YEARS, List.of(1976), joined);
    }
    boolean anyDoubt = doubted || passage.words().stream().anyMatch(word -> word.is("?"));
    if (anyDoubt && years.size() == 1) {
      int decade = years.get(0) - years.get(0) % 10;
      return new Dating(Kind.SPAN, List.of(decade, decade + 9), joined + "?");
    }
    if (span && years.size() == 2 && years.get(0) < years.get(1)) {
      return new Dating(Kind.SPAN, years, joined);
    }
    return new Dating(Kind.YEARS, years.stream().distinct().toList(), joined);
  }

  /** In 1942/1 and 1889/4 the second figure is the date beneath. */
  private int overdate(int at) {
    Optional<Word> beneath =
        passage
            .at(at + 2)
            .filter(word -> passage.isSign(at + 1, "/"))
            .filter(word -> word.touches(passage.word(at + 1)))
            .filter(word -> passage.word(at + 1).touches(passage.word(at)))
            .filter(word -> word.isNumber() && SMALL_NUMBER.matcher(word.text()).matches());
    int year = years.get(years.size() - 1);
    boolean earlier =
        beneath
            .filter(word -> word.text().length() == 1 || Integer.parseInt(word.text()) < year % 100)
            .isPresent();
    if (!earlier) {
      return at + 1;
    }
    passage.take(at + 1, at + 3);
    return at + 3;
  }

  /** In "1941 42P 43", "1946-64" and "1964/65" two digits go on in the same century. */
  private int shortOnes(int from, int year) {
    int at = from;
    int last = year % 100;
    int century = year - last;
    while (true) {
      int next = skipSeparators(at);
      if (!ShortYears.isTwoDigits(passage, next) || passage.isInsidePhrase(next)) {
        return at;
      }
      int two = Integer.parseInt(passage.word(next).text());
      if (two <= last || !endsHere(next)) {
        return at;
      }
      span |= passage.isSign(next - 1, "-") && years.size() == 1;
      add(next, century + two);
      last = two;
      at = next + 1;
    }
  }

  private int skipSeparators(int from) {
    int at = from;
    while (passage.matches(at, "[,&/-]|and|und|et|y|e") || ShortYears.isMintLetter(passage, at)) {
      at++;
    }
    return at;
  }

  /** A further year stands at an end, before a separator, a mint letter or the next year. */
  private boolean endsHere(int at) {
    return passage.at(at + 1).isEmpty()
        || passage.matches(at + 1, "[,&/;)-]|and|und|et|y|\\d{2}")
        || ShortYears.isMintLetter(passage, at + 1)
        || passage.isSign(at - 1, "-")
        || passage.isSign(at - 1, "/");
  }

  private Optional<Integer> yearAt(int at) {
    Word word = passage.word(at);
    if (passage.isTaken(at)) {
      return Optional.empty();
    }
    if (word.isLetters()) {
      return roman(word);
    }
    if (!word.isNumber() || !passage.matches(at, "[12]\\d{3}")) {
      return Optional.empty();
    }
    int year = Integer.parseInt(word.text());
    boolean money = passage.matches(at - 1, "[$£€#]");
    boolean plausible = year >= FIRST && year <= LAST;
    return plausible && !money && !isAmount(at, year) ? Optional.of(year) : Optional.empty();
  }

  /** 1000 lire and 2000 reis are amounts; 1943 cent is a year and a cent. */
  private boolean isAmount(int at, int number) {
    Optional<Hit> unit = passage.hit(at + 1).filter(hit -> hit.has(Meaning.Unit.class));
    boolean round = number % 100 == 0 && (number <= 1000 || number == 2000 || number == 1500);
    return unit.isPresent() && round;
  }

  private static Optional<Integer> roman(Word word) {
    if (word.text().length() > 15 || !ROMAN.matcher(word.text()).matches() || !word.isCapitals()) {
      return Optional.empty();
    }
    int sum = 0;
    int last = 0;
    for (int i = word.text().length() - 1; i >= 0; i--) {
      int value =
          switch (word.text().charAt(i)) {
            case 'm' -> 1000;
            case 'd' -> 500;
            case 'c' -> 100;
            case 'l' -> 50;
            case 'x' -> 10;
            case 'v' -> 5;
            default -> 1;
          };
      sum += value < last ? -value : value;
      last = Math.max(last, value);
    }
    return sum >= 1400 && sum <= LAST ? Optional.of(sum) : Optional.empty();
  }
}

package fineweight.clue.reading;

import fineweight.clue.Dating;
import fineweight.clue.Dating.Kind;
import fineweight.clue.FieldRole;
import fineweight.clue.lexicon.Meaning;
import fineweight.clue.word.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads dates: from the year column strictly, from descriptions where a number can be nothing else.
 */
final class DatingReader {
  private static final int FIRST_PLAIN_YEAR = 1000;
  private static final int LAST_PLAIN_YEAR = 2100;

  private DatingReader() {}

  static Dating read(List<Passage> passages) {
    for (Passage passage : passages) {
      if (passage.role() == FieldRole.YEAR) {
        return yearColumn(passage);
      }
    }
    for (FieldRole role :
        List.of(FieldRole.DENOMINATION, FieldRole.TYPE, FieldRole.VARIETY, FieldRole.DESCRIPTION)) {
      for (Passage passage : passages) {
        if (passage.role() == role) {
          Dating dating = inText(passage);
          if (dating.kind() != Kind.UNSAID) {
            return dating;
          }
        }
      }
    }
    return Dating.UNSAID;
  }

  private static Dating yearColumn(Passage passage) {
    String text = passage.text().strip();
    Optional<Dating> special = special(text);
    if (special.isPresent()) {
      passage.take(0, passage.size());
      return special.get();
    }
    Dating dating = inText(passage);
    if (dating.kind() != Kind.UNSAID) {
      return dating;
    }
    Dating column = alone(passage, text);
    passage.take(0, passage.size());
    return column;
  }

  /** A year column may hold a bare number that a description may not. */
  private static Dating alone(Passage passage, String text) {
    if (text.matches(
        "(?i)(n\\.?d\\.?|nd|undated|none|no date|dateless|[-–—/]+|blank|worn|illegible|o\\.?j\\.?|z\\.?j\\.?|s\\.?d\\.?)")) {
      return Dating.UNSAID;
    }
    List<Word> numbers = passage.words().stream().filter(Word::isNumber).toList();
    if (numbers.size() == 1 && numbers.get(0).text().matches("\\d+")) {
      String digits = numbers.get(0).text();
      if (digits.length() == 2) {
        return new Dating(Kind.SHORT_YEARS, List.of(Integer.parseInt(digits)), text);
      }
      if (digits.length() >= 5
          || (digits.length() == 4 && Integer.parseInt(digits) > LAST_PLAIN_YEAR)) {
        return new Dating(Kind.IMPOSSIBLE, List.of(), text);
      }
      if (digits.length() == 3) {
        return new Dating(Kind.ANCIENT, List.of(Integer.parseInt(digits)), text);
      }
    }
    return new Dating(Kind.UNREADABLE, List.of(), text);
  }

  /** Forms that the words do not show: 16xx, 260s, 1964?, 440 BC, AD 103-111. */
  private static Optional<Dating> special(String text) {
    String plain = text.toLowerCase(java.util.Locale.ROOT).strip();
    if (plain.matches(
            ".*\\b(b\\.?\\s?c\\.?(\\s?e\\.?)?|v\\.?\\s?chr\\.?|av\\.?\\s?j\\.?-?c\\.?)(\\W.*|$)")
        || plain.matches(
            "(ca\\.?|c\\.?|circa)?\\s*(a\\.?d\\.?|n\\.?\\s?chr\\.?)\\s*\\d{1,3}(\\D.*)?")
        || plain.matches("\\d{1,3}\\s*s")
        || plain.matches("\\d{1,3}\\s*[-–]\\s*\\d{1,3}\\s*(a\\.?d\\.?)?")) {
      if (!plain.matches("\\d{2}\\s*[-–]\\s*\\d{2}")) {
        return Optional.of(new Dating(Kind.ANCIENT, List.of(), text));
      }
    }
    if (plain.matches("-\\d+")) {
      return Optional.of(new Dating(Kind.IMPOSSIBLE, List.of(), text));
    }
    if (plain.matches("\\D{0,8}\\d{2}([x?_*-]){2}\\D{0,3}")) {
      int century = Integer.parseInt(plain.replaceAll("\\D", "")) * 100;
      return Optional.of(new Dating(Kind.SPAN, List.of(century, century + 99), text));
    }
    if (plain.matches("\\D{0,8}\\d{3}([x?_*]|0s|-$).{0,3}")) {
      int decade = Integer.parseInt(plain.replaceAll("\\D", "").substring(0, 3)) * 10;
      return Optional.of(new Dating(Kind.SPAN, List.of(decade, decade + 9), text));
    }
    if (plain.matches("(ca\\.?|c\\.?|circa|um|about|~|prob\\.?|maybe)\\s*\\d{4}.*")
        || plain.matches("\\(?\\d{4}\\)?\\s*\\?+.*")) {
      int year = Integer.parseInt(plain.replaceAll("\\D", "").substring(0, 4));
      int decade = year - year % 10;
      return Optional.of(new Dating(Kind.SPAN, List.of(decade, decade + 9), text));
    }
    return Optional.empty();
  }

  /** Years among other words. */
  private static Dating inText(Passage passage) {
    List<Integer> years = new ArrayList<>();
    List<String> words = new ArrayList<>();
    boolean span = false;
    boolean doubted = false;
    for (int i = 0; i < passage.size(); i++) {
      Optional<Integer> year = yearAt(passage, i);
      if (year.isPresent()) {
        span |=
            !years.isEmpty()
                && passage.isSign(i - 1, "-")
                && passage.at(i - 2).filter(Word::isNumber).isPresent();
        doubted |= passage.isSign(i + 1, "?");
        years.add(year.get());
        words.add(passage.word(i).raw());
        passage.take(i, i + 1);
        i = skipOverdate(passage, i);
      }
    }
    if (years.isEmpty()) {
      return shortYears(passage);
    }
    String joined = String.join(" ", words);
    if (years.equals(List.of(1776, 1976))) {
      return new Dating(Kind.YEARS, List.of(1976), joined);
    }
    if (doubted && years.size() == 1) {
      int decade = years.get(0) - years.get(0) % 10;
      return new Dating(Kind.SPAN, List.of(decade, decade + 9), joined + "?");
    }
    if (span && years.size() == 2 && years.get(0) < years.get(1)) {
      return new Dating(Kind.SPAN, years, joined);
    }
    return new Dating(Kind.YEARS, years.stream().distinct().toList(), joined);
  }

  /** In 1942/1 and 1889/4 the second figure is the date beneath. */
  private static int skipOverdate(Passage passage, int at) {
    boolean overdate =
        passage.isSign(at + 1, "/")
            && passage
                .at(at + 2)
                .filter(word -> word.isNumber() && word.text().length() <= 2)
                .isPresent();
    if (overdate) {
      passage.take(at + 1, at + 3);
      return at + 2;
    }
    return at;
  }

  private static Optional<Integer> yearAt(Passage passage, int at) {
    Word word = passage.word(at);
    if (passage.isTaken(at)) {
      return Optional.empty();
    }
    if (word.isLetters()) {
      return roman(word);
    }
    if (!word.isNumber() || !word.text().matches("[12]\\d{3}")) {
      return Optional.empty();
    }
    int year = Integer.parseInt(word.text());
    boolean money =
        passage.at(at - 1).filter(before -> before.text().matches("[$£€#]")).isPresent();
    boolean plausible = year >= FIRST_PLAIN_YEAR && year <= LAST_PLAIN_YEAR;
    return plausible && !money && !isAmount(passage, at, year)
        ? Optional.of(year)
        : Optional.empty();
  }

  /** 1000 lire and 2000 reis are amounts; 1943 cent is a year and a cent. */
  private static boolean isAmount(Passage passage, int at, int number) {
    boolean unitFollows =
        passage.hit(at + 1).filter(hit -> hit.meaning(Meaning.Unit.class).isPresent()).isPresent();
    boolean round = number % 100 == 0 && (number <= 1000 || number == 2000 || number == 1500);
    return unitFollows && round;
  }

  private static Optional<Integer> roman(Word word) {
    if (!word.text().matches("m[cdlxvi]{3,}") || !word.isCapitals()) {
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
    return sum >= 1400 && sum <= LAST_PLAIN_YEAR ? Optional.of(sum) : Optional.empty();
  }

  /**
   * Two digits after an apostrophe, or touching a mint letter, or in a list of such: '64, 64-D,
   * 43P, 40 42 45-D.
   */
  private static Dating shortYears(Passage passage) {
    List<Integer> places = new ArrayList<>();
    for (int i = 0; i < passage.size(); i++) {
      if (isTwoDigits(passage, i)
          && (afterApostrophe(passage, i) || beforeMintLetter(passage, i))) {
        places.add(i);
      }
    }
    if (places.isEmpty()) {
      loneTwoDigits(passage).ifPresent(places::add);
    }
    if (places.isEmpty()) {
      return Dating.UNSAID;
    }
    places = withNeighbours(passage, places);
    List<Integer> years = new ArrayList<>();
    List<String> words = new ArrayList<>();
    for (int place : places) {
      years.add(Integer.parseInt(passage.word(place).text()));
      words.add(passage.word(place).raw());
      passage.take(place, place + 1);
    }
    return new Dating(
        Kind.SHORT_YEARS, years.stream().distinct().toList(), String.join(" ", words));
  }

  private static boolean isTwoDigits(Passage passage, int at) {
    Word word = passage.word(at);
    boolean digits = word.isNumber() && word.text().matches("\\d{2}");
    boolean money =
        passage.at(at - 1).filter(before -> before.text().matches("[$£€#./]")).isPresent();
    boolean measured =
        passage.at(at + 1).filter(after -> after.text().matches("[%/]")).isPresent()
            || passage
                .hit(at + 1)
                .filter(
                    hit ->
                        hit.meaning(Meaning.Unit.class).isPresent()
                            && !isMintLetter(passage, at + 1))
                .isPresent();
    return digits && !passage.isTaken(at) && !money && !measured;
  }

  private static boolean afterApostrophe(Passage passage, int at) {
    return passage.isSign(at - 1, "'");
  }

  private static boolean beforeMintLetter(Passage passage, int at) {
    int next = passage.isSign(at + 1, "-") ? at + 2 : at + 1;
    boolean touching =
        passage.at(next).filter(word -> word.touches(passage.word(next - 1))).isPresent();
    return touching && isMintLetter(passage, next);
  }

  static boolean isMintLetter(Passage passage, int at) {
    return passage.at(at).filter(word -> word.text().matches("p|d|s|o|cc|w|c")).isPresent();
  }

  /**
   * A two-digit number beside a coin's or type's name that cannot be a count: "merc 43", "64
   * kennedy".
   */
  private static Optional<Integer> loneTwoDigits(Passage passage) {
    for (int i = 0; i < passage.size(); i++) {
      if (!isTwoDigits(passage, i)) {
        continue;
      }
      boolean nameBefore = endsName(passage, i);
      boolean nameAfter =
          passage.hit(i + 1).filter(hit -> names(hit) && !isPlural(passage, hit)).isPresent();
      boolean sensible = i > 0 || Integer.parseInt(passage.word(0).text()) >= 30;
      if (nameBefore || (nameAfter && sensible)) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }

  /** "50 dimes" is a number of dimes, "50 dime" one of 1950. */
  private static boolean isPlural(Passage passage, Passage.Hit hit) {
    for (int i = hit.at(); i < passage.size() && i < hit.end() + 2; i++) {
      if (passage.word(i).text().matches("\\w{2,}(s|ies|lves)")) {
        return true;
      }
    }
    return false;
  }

  private static boolean endsName(Passage passage, int at) {
    return passage.hits().stream().anyMatch(hit -> hit.end() == at && names(hit));
  }

  private static boolean names(Passage.Hit hit) {
    return hit.meaning(Meaning.Coin.class).isPresent()
        || hit.meaning(Meaning.Type.class).isPresent();
  }

  private static List<Integer> withNeighbours(Passage passage, List<Integer> places) {
    List<Integer> all = new ArrayList<>();
    int first = places.get(0);
    while (first > 0 && isListed(passage, first - 1)) {
      first--;
    }
    for (int i = first; i < passage.size(); i++) {
      if (isTwoDigits(passage, i)
          && (places.contains(i)
              || i < places.get(places.size() - 1)
              || isListedAfter(passage, i))) {
        all.add(i);
      }
    }
    return all;
  }

  private static boolean isListed(Passage passage, int at) {
    Word word = passage.word(at);
    boolean separator = word.text().matches("[,&'-]|and|u|et|p|d|s|o|cc|w");
    return separator || isTwoDigits(passage, at);
  }

  private static boolean isListedAfter(Passage passage, int at) {
    for (int i = at - 1; i >= 0; i--) {
      if (isTwoDigits(passage, i)) {
        return true;
      }
      if (!isListed(passage, i)) {
        return false;
      }
    }
    return false;
  }
}

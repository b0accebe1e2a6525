package fineweight.clue.reading.date;

import fineweight.clue.Dating;
import fineweight.clue.Dating.Kind;
import fineweight.clue.lexicon.Meaning;
import fineweight.clue.passage.Hit;
import fineweight.clue.passage.Passage;
import fineweight.clue.word.Word;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Reads years of two digits: after an apostrophe, touching a mint letter, in a list of such, or
 * beside a coin's name where they can be no count: '64, 64-D, 43P, 40 42 45-D, merc 43.
 */
final class ShortYears {
  private static final Pattern TWO_DIGITS = Pattern.compile("\\d{2}");

  private final Passage passage;
  private final boolean counted;

  private ShortYears(Passage passage, boolean counted) {
    this.passage = passage;
    this.counted = counted;
  }

  static Dating read(Passage passage, boolean counted) {
    return new ShortYears(passage, counted).dating();
  }

  private Dating dating() {
    List<Integer> places = new ArrayList<>();
    for (int i = 0; i < passage.size(); i++) {
      if (isTwoDigits(passage, i)
          && !isInFirmPhrase(i)
          && (passage.isSign(i - 1, "'") || beforeMintLetter(i))) {
        places.add(i);
      }
    }
    if (places.isEmpty()) {
      alone().ifPresent(places::add);
    }
    if (places.isEmpty()) {
      return Dating.UNSAID;
    }
    List<Integer> years = new ArrayList<>();
    List<String> words = new ArrayList<>();
    for (int place : withNeighbours(places)) {
      years.add(Integer.parseInt(passage.word(place).text()));
      words.add(passage.word(place).raw());
      passage.take(place, place + 1);
    }
    return new Dating(
        Kind.SHORT_YEARS, years.stream().distinct().toList(), String.join(" ", words));
  }

  private boolean isInFirmPhrase(int at) {
    return passage.isInsidePhrase(at) && passage.hit(at).isEmpty();
  }

  static boolean isTwoDigits(Passage passage, int at) {
    Optional<Word> word = passage.at(at);
    boolean digits =
        word.isPresent()
            && word.get().isNumber()
            && TWO_DIGITS.matcher(word.get().text()).matches();
    if (!digits || passage.isTaken(at)) {
      return false;
    }
    boolean money = passage.matches(at - 1, "[$£€#./]");
    boolean measured =
        passage.matches(at + 1, "[%/]")
            || (passage.hit(at + 1).filter(hit -> hit.has(Meaning.Unit.class)).isPresent()
                && !isMintLetter(passage, at + 1));
    boolean cents = passage.matches(at + 1, "c") && passage.word(at + 1).touches(word.get());
    return !money && !measured && !cents;
  }

  private boolean beforeMintLetter(int at) {
    int next = passage.isSign(at + 1, "-") ? at + 2 : at + 1;
    return next < passage.size()
        && passage.word(next).touches(passage.word(next - 1))
        && isMintLetter(passage, next);
  }

  static boolean isMintLetter(Passage passage, int at) {
    return passage.matches(at, "p|d|s|o|cc|w|c");
  }

  /** A number beside a coin's or type's name that cannot be a count: "merc 43", "64 kennedy". */
  private Optional<Integer> alone() {
    for (int i = 0; i < passage.size(); i++) {
      if (!isTwoDigits(passage, i) || passage.isInsidePhrase(i)) {
        continue;
      }
      boolean nameBefore = endsName(i);
      boolean nameAfter =
          passage
              .hit(i + 1)
              .filter(hit -> hit.namesCoin() && (counted || !isPlural(hit)))
              .isPresent();
      boolean sensible = i > 0 || Integer.parseInt(passage.word(0).text()) >= 30;
      if (nameBefore || (nameAfter && (sensible || counted))) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }

  /** "50 dimes" is a number of dimes, "50 dime" one of 1950. */
  private boolean isPlural(Hit hit) {
    for (int i = hit.at(); i < passage.size() && i < hit.end() + 2; i++) {
      if (passage.matches(i, "\\w{2,}(s|ies|lves)")) {
        return true;
      }
    }
    return false;
  }

  private boolean endsName(int at) {
    return passage.hitBefore(at).filter(Hit::namesCoin).isPresent();
  }

  private List<Integer> withNeighbours(List<Integer> places) {
    List<Integer> all = new ArrayList<>();
    int first = places.get(0);
    int last = places.get(places.size() - 1);
    Set<Integer> sure = new HashSet<>(places);
    while (first > 0 && isListed(first - 1)) {
      first--;
    }
    boolean listed = false;
    for (int i = first; i < passage.size(); i++) {
      if (isTwoDigits(passage, i) && (sure.contains(i) || i < last || listed)) {
        all.add(i);
        listed = true;
      } else if (i > last && !isListed(i)) {
        break;
      }
    }
    return all;
  }

  private boolean isListed(int at) {
    return passage.matches(at, "[,&'-]|and|u|et|p|d|s|o|cc|w") || isTwoDigits(passage, at);
  }
}

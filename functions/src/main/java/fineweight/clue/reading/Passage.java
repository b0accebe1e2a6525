package fineweight.clue.reading;

import fineweight.clue.Field;
import fineweight.clue.FieldRole;
import fineweight.clue.lexicon.Lexicon;
import fineweight.clue.lexicon.Meaning;
import fineweight.clue.word.Phrases;
import fineweight.clue.word.Word;
import fineweight.clue.word.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One field cut into words, with the phrases of the lexicon found in it and a note of what has been
 * taken.
 */
final class Passage {
  private final Field field;
  private final List<Word> words;
  private final List<Hit> hits = new ArrayList<>();
  private final List<Hit> metalHits = new ArrayList<>();
  private final Hit[] hitAt;
  private final boolean[] taken;

  /**
   * A phrase of the lexicon in the text.
   *
   * @param at the first word
   * @param length how many words
   */
  record Hit(int at, int length, List<Meaning> meanings) {
    int end() {
      return at + length;
    }

    <M extends Meaning> Optional<M> meaning(Class<M> kind) {
      for (Meaning meaning : meanings) {
        if (kind.isInstance(meaning)) {
          return Optional.of(kind.cast(meaning));
        }
      }
      return Optional.empty();
    }

    <M extends Meaning> List<M> all(Class<M> kind) {
      return meanings.stream().filter(kind::isInstance).map(kind::cast).toList();
    }
  }

  Passage(Field field, Lexicon lexicon) {
    this.field = field;
    this.words = Words.of(field.text());
    this.hitAt = new Hit[words.size()];
    this.taken = new boolean[words.size()];
    find(lexicon.phrases(), hits);
    find(lexicon.metals(), metalHits);
    hits.forEach(hit -> hitAt[hit.at()] = hit);
  }

  private void find(Phrases<Meaning> phrases, List<Hit> into) {
    int at = 0;
    while (at < words.size()) {
      Phrases.Found<Meaning> found = phrases.longestAt(words, at);
      if (found == null || splitsNumber(at, found.length())) {
        at++;
      } else {
        into.add(new Hit(at, found.length(), found.meanings()));
        at += found.length();
      }
    }
  }

  /** In "2 1/2 gulden" no phrase may begin at the 1. */
  private boolean splitsNumber(int at, int length) {
    boolean afterNumber = at > 0 && words.get(at).isNumber() && words.get(at - 1).isNumber();
    return afterNumber && length > 1 && words.get(at + 1).is("/");
  }

  FieldRole role() {
    return field.role();
  }

  String text() {
    return field.text();
  }

  List<Word> words() {
    return words;
  }

  int size() {
    return words.size();
  }

  Word word(int at) {
    return words.get(at);
  }

  /** The word at a place; empty outside the passage. */
  Optional<Word> at(int place) {
    return place >= 0 && place < words.size() ? Optional.of(words.get(place)) : Optional.empty();
  }

  boolean isSign(int place, String sign) {
    return at(place).filter(word -> word.is(sign)).isPresent();
  }

  List<Hit> hits() {
    return hits;
  }

  /** Names of metals and fineness, also those inside other phrases. */
  List<Hit> metalHits() {
    return metalHits;
  }

  /** Whether a name of a metal begins at a word. */
  boolean isMetal(int place) {
    return metalHits.stream()
        .anyMatch(hit -> hit.at() == place && hit.meaning(Meaning.MetalName.class).isPresent());
  }

  /** The phrase that begins at a word. */
  Optional<Hit> hit(int place) {
    return place >= 0 && place < hitAt.length
        ? Optional.ofNullable(hitAt[place])
        : Optional.empty();
  }

  void take(int from, int to) {
    for (int i = from; i < to; i++) {
      taken[i] = true;
    }
  }

  /** Whether a rule has taken the word; nothing outside the passage is free. */
  boolean isTaken(int place) {
    return place < 0 || place >= taken.length || taken[place];
  }

  boolean isFree(int from, int to) {
    for (int i = from; i < to; i++) {
      if (taken[i]) {
        return false;
      }
    }
    return true;
  }

  /** The words from one to before another, as written. */
  String raw(int from, int to) {
    return field.text().substring(words.get(from).start(), words.get(to - 1).end());
  }
}

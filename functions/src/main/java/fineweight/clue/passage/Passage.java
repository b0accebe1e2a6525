package fineweight.clue.passage;

import fineweight.clue.Field;
import fineweight.clue.FieldRole;
import fineweight.clue.Wording;
import fineweight.clue.lexicon.Lexicon;
import fineweight.clue.lexicon.Meaning;
import fineweight.clue.word.Phrases;
import fineweight.clue.word.Word;
import fineweight.clue.word.Words;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;

/**
 * One field cut into words, with the phrases of the word lists found in it and a note of what has
 * been taken by a rule.
 */
public final class Passage {
  /** May stand between a word that denies and what it denies. */
  private static final Set<String> BETWEEN =
      Set.of("a", "an", "the", "any", "real", "really", "from", "made", "of", "en", "d");

  /** The few expressions that the rules use, compiled once. */
  private static final Map<String, Pattern> PATTERNS = new ConcurrentHashMap<>();

  private final Field field;
  private final Lexicon lexicon;
  private final List<Word> words = new ArrayList<>();
  private final List<Wording.Slip> slips = new ArrayList<>();
  private final List<Hit> hits;
  private final List<Hit> metalHits;
  private final Hit[] hitAt;
  private final Hit[] hitEnding;
  private final boolean[] insidePhrase;
  private final boolean[] metalAt;
  private final boolean[] taken;

  public Passage(Field field, Lexicon lexicon) {
    this.field = field;
    this.lexicon = lexicon;
    Words.of(field.text()).forEach(word -> words.add(mended(word)));
    Phrasing phrasing = new Phrasing(words, lexicon);
    this.hits = phrasing.phrases();
    this.metalHits = phrasing.metals(hits);
    this.hitAt = new Hit[words.size()];
    this.hitEnding = new Hit[words.size() + 1];
    this.insidePhrase = new boolean[words.size()];
    this.metalAt = new boolean[words.size()];
    this.taken = new boolean[words.size()];
    for (Hit hit : hits) {
      if (hitAt[hit.at()] == null) {
        hitAt[hit.at()] = hit;
      }
      if (hitEnding[hit.end()] == null) {
        hitEnding[hit.end()] = hit;
      }
      for (int i = hit.at(); i < hit.end() && hit.length() > 1; i++) {
        insidePhrase[i] = true;
      }
    }
    metalHits.stream()
        .filter(hit -> hit.has(Meaning.MetalName.class))
        .forEach(hit -> metalAt[hit.at()] = true);
  }

  private Word mended(Word word) {
    Optional<String> meant =
        word.isLetters() && field.role().isText()
            ? lexicon.slips().mend(word.text())
            : Optional.empty();
    if (meant.isEmpty()) {
      return word;
    }
    slips.add(new Wording.Slip(word.raw(), meant.get()));
    return new Word(meant.get(), word.raw(), word.start(), word.end(), word.kind());
  }

  public FieldRole role() {
    return field.role();
  }

  public String text() {
    return field.text();
  }

  public List<Word> words() {
    return List.copyOf(words);
  }

  /** Words read as others, a slip of the pen away. */
  public List<Wording.Slip> slips() {
    return List.copyOf(slips);
  }

  public int size() {
    return words.size();
  }

  public Word word(int at) {
    return words.get(at);
  }

  /** The word at a place; empty outside the passage. */
  public Optional<Word> at(int place) {
    return place >= 0 && place < words.size() ? Optional.of(words.get(place)) : Optional.empty();
  }

  public boolean isSign(int place, String sign) {
    return place >= 0 && place < words.size() && words.get(place).is(sign);
  }

  /** Whether the word at a place matches a regular expression; no word does outside. */
  public boolean matches(int place, String regex) {
    return place >= 0
        && place < words.size()
        && PATTERNS
            .computeIfAbsent(regex, Pattern::compile)
            .matcher(words.get(place).text())
            .matches();
  }

  /** The number that a word in letters names, such as half or five. */
  public Optional<BigDecimal> numberWord(int place) {
    return at(place).filter(Word::isLetters).flatMap(word -> lexicon.number(word.text()));
  }

  /** The phrases from left to right; a coin inside a longer phrase follows that phrase. */
  public List<Hit> hits() {
    return hits;
  }

  /** Names of metals and fineness, also those inside other phrases. */
  public List<Hit> metalHits() {
    return metalHits;
  }

  /** Whether a name of a metal begins at a word. */
  public boolean isMetal(int place) {
    return place >= 0 && place < metalAt.length && metalAt[place];
  }

  /** The phrase that begins at a word. */
  public Optional<Hit> hit(int place) {
    return place >= 0 && place < hitAt.length
        ? Optional.ofNullable(hitAt[place])
        : Optional.empty();
  }

  /** The phrase that ends just before a word. */
  public Optional<Hit> hitBefore(int place) {
    return place >= 0 && place < hitEnding.length
        ? Optional.ofNullable(hitEnding[place])
        : Optional.empty();
  }

  /** Whether a word belongs to a phrase of several words. */
  public boolean isInsidePhrase(int place) {
    return place >= 0 && place < insidePhrase.length && insidePhrase[place];
  }

  /** Notes that a rule has used the words from one to before another. */
  public void take(int from, int to) {
    for (int i = from; i < to; i++) {
      taken[i] = true;
    }
  }

  /** Whether a rule has taken the word; nothing outside the passage is free. */
  public boolean isTaken(int place) {
    return place < 0 || place >= taken.length || taken[place];
  }

  public boolean isFree(int from, int to) {
    for (int i = from; i < to; i++) {
      if (taken[i]) {
        return false;
      }
    }
    return true;
  }

  /** The words from one to before another, as written. */
  public String raw(int from, int to) {
    return field.text().substring(words.get(from).start(), words.get(to - 1).end());
  }

  /** Whether a name stands in the plural: its singular means the same. */
  public boolean isPlural(Hit hit) {
    String last = words.get(hit.end() - 1).text();
    for (String singular : singulars(last)) {
      List<Word> one = new ArrayList<>(words.subList(hit.at(), hit.end() - 1));
      one.add(new Word(singular, singular, 0, 0, Word.Kind.LETTERS));
      Phrases.Found<Meaning> found = lexicon.phrases().longestAt(one, 0);
      if (found != null
          && found.length() == one.size()
          && !Collections.disjoint(found.meanings(), hit.meanings())) {
        return true;
      }
    }
    return false;
  }

  private static List<String> singulars(String word) {
    if (word.length() < 4 || !word.endsWith("s")) {
      return List.of();
    }
    String stem = word.substring(0, word.length() - 1);
    List<String> singulars = new ArrayList<>(List.of(stem));
    if (word.endsWith("ies")) {
      singulars.add(word.substring(0, word.length() - 3) + "y");
    } else if (word.endsWith("ves")) {
      singulars.add(word.substring(0, word.length() - 3) + "f");
    }
    return singulars;
  }

  /** Whether a word turns what stands at a place into its opposite. */
  public boolean isNegated(int place) {
    return place > 0
        && (Wording.isNegation(words.get(place - 1))
            || (place > 1
                && BETWEEN.contains(words.get(place - 1).text())
                && Wording.isNegation(words.get(place - 2))));
  }
}

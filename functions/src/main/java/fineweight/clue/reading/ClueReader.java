package fineweight.clue.reading;

import fineweight.clue.Clue;
import fineweight.clue.Clues;
import fineweight.clue.Condition;
import fineweight.clue.Dating;
import fineweight.clue.Denomination;
import fineweight.clue.Field;
import fineweight.clue.FieldRole;
import fineweight.clue.Issuers;
import fineweight.clue.Measures;
import fineweight.clue.MetalWords;
import fineweight.clue.Quantity;
import fineweight.clue.TypeName;
import fineweight.clue.Wording;
import fineweight.clue.lexicon.Lexicon;
import fineweight.clue.passage.Passage;
import fineweight.clue.passage.SideNumbers;
import fineweight.clue.reading.date.DatingReader;
import fineweight.clue.word.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reads a row's fields into clues. Never fails, whatever the text; takes time in proportion to its
 * length.
 */
public final class ClueReader {
  /** Words that carry nothing. */
  private static final Set<String> EMPTY_WORDS =
      Set.of(
          "the", "a", "an", "of", "and", "in", "with", "from", "for", "to", "at", "on", "coin",
          "coins", "is", "my", "der", "die", "das", "und", "van", "de", "het", "en", "le", "la",
          "les", "et", "un", "une", "il", "di", "du", "des", "date", "year", "dated", "pcs", "pc",
          "each", "ea", "x");

  private final Lexicon lexicon;

  public ClueReader(Lexicon lexicon) {
    this.lexicon = lexicon;
  }

  /**
   * @param fields the fields that hold something; at most one for each role but for descriptions
   *     and notes
   */
  public Clues read(List<Field> fields) {
    List<Passage> passages = fields.stream().map(field -> new Passage(field, lexicon)).toList();
    passages.forEach(SideNumbers::setAside);
    Optional<Clue<Issuers>> country = PlaceReader.country(passages);
    Optional<Clue<Quantity>> lump = RollsAndFace.read(passages);
    boolean counted = lump.isPresent() || hasColumn(fields, FieldRole.COUNT);
    Dating dating = DatingReader.read(passages, counted);
    Optional<Clue<String>> mint = MintReader.read(passages);
    Measures measures = MeasureReader.read(passages);
    List<Clue<Denomination>> denominations = DenominationReader.read(passages);
    Clue<Quantity> pieces = QuantityReader.read(passages, dating);
    List<Clue<TypeName>> types = TypeReader.read(passages);
    MetalWords metal = MetalReader.read(passages);
    Condition condition = ConditionReader.read(passages);
    return new Clues(
        country,
        denominations,
        types,
        dating,
        mint,
        new Clues.Physical(metal, measures),
        condition,
        better(lump, pieces),
        wording(passages));
  }

  private static boolean hasColumn(List<Field> fields, FieldRole role) {
    return fields.stream().anyMatch(field -> field.role() == role);
  }

  /** A number that stands beside "half roll" or "tube" says what the roll or tube does not. */
  private static Clue<Quantity> better(Optional<Clue<Quantity>> lump, Clue<Quantity> pieces) {
    boolean exact =
        pieces.value() instanceof Quantity.Pieces && !pieces.value().equals(Quantity.ONE);
    return lump.filter(clue -> !exact || !(clue.value() instanceof Quantity.Unusable))
        .orElse(pieces);
  }

  private static Wording wording(List<Passage> passages) {
    List<List<Word>> words = new ArrayList<>();
    List<String> leftOver = new ArrayList<>();
    for (Passage passage : passages) {
      List<Word> kept = new ArrayList<>();
      for (int i = 0; i < passage.size(); i++) {
        Word word = passage.word(i);
        if (word.kind() != Word.Kind.SIGN || word.is("?") || word.is("%")) {
          kept.add(word);
        }
        if (!passage.isTaken(i)
            && word.isLetters()
            && !EMPTY_WORDS.contains(word.text())
            && isAboutTheCoin(passage.role())) {
          leftOver.add(word.raw());
        }
      }
      words.add(kept);
    }
    List<Wording.Slip> slips =
        passages.stream().flatMap(passage -> passage.slips().stream()).distinct().toList();
    return new Wording(words, leftOver, slips);
  }

  /** A word in the notes may be about anything. */
  private static boolean isAboutTheCoin(FieldRole role) {
    return (role.isText() && role != FieldRole.NOTES) || role == FieldRole.METAL;
  }
}

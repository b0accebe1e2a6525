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
import fineweight.clue.lexicon.Meaning;
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
    Optional<Clue<Issuers>> country = PlaceReader.country(passages);
    Dating dating = DatingReader.read(passages);
    Optional<Clue<String>> mint = PlaceReader.mint(passages);
    Measures measures = MeasureReader.read(passages);
    List<Clue<Denomination>> denominations = DenominationReader.read(passages);
    Clue<Quantity> quantity = QuantityReader.read(passages);
    List<Clue<TypeName>> types = types(passages);
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
        quantity,
        wording(passages));
  }

  private static List<Clue<TypeName>> types(List<Passage> passages) {
    List<Clue<TypeName>> types = new ArrayList<>();
    for (Passage passage : passages) {
      if (!passage.role().isText()) {
        continue;
      }
      for (Passage.Hit hit : passage.hits()) {
        boolean negated = passage.at(hit.at() - 1).filter(Wording::isNegation).isPresent();
        boolean doubted = passage.isSign(hit.end(), "?");
        for (Meaning.Type type : hit.all(Meaning.Type.class)) {
          if (!negated && !doubted) {
            types.add(
                new Clue<>(
                    new TypeName(type.typePhrase(), type.countries(), type.implied()),
                    passage.raw(hit.at(), hit.end()),
                    passage.role()));
            passage.take(hit.at(), hit.end());
          }
        }
      }
    }
    return types;
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
            && passage.role().isText()
            && passage.role() != FieldRole.NOTES) {
          leftOver.add(word.raw());
        }
      }
      words.add(kept);
    }
    return new Wording(words, leftOver);
  }
}

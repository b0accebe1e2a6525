package fineweight.clue.lexicon;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import fineweight.clue.word.Phrases;
import fineweight.clue.word.Words;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;

/** All phrases of the word lists. Immutable once built; loaded on first use. */
public final class Lexicon {
  private final Phrases<Meaning> phrases = new Phrases<>();
  private final Phrases<Meaning> metals = new Phrases<>();
  private final Map<String, Map<String, BigDecimal>> unitsByCurrency = new HashMap<>();
  private final Map<String, BigDecimal> numbers = new HashMap<>();
  private final Set<String> commonWords = new HashSet<>();
  private final Set<String> singleWords = new HashSet<>();

  /** Those that name something about the coin; a remark is never read into a slip. */
  private final Set<String> coinWords = new HashSet<>();

  private Slips slips;

  private Lexicon() {}

  /** The word lists that come with the product. */
  public static Lexicon standard() {
    return Loaded.LEXICON;
  }

  /** Read on first use, once. */
  private static final class Loaded {
    static final Lexicon LEXICON = load();
  }

  private static Lexicon load() {
    Lexicon lexicon = new Lexicon();
    for (NamedCsvRecord row : LexiconRows.of("countries.csv")) {
      lexicon.addCountry(row);
    }
    lexicon.each(
        "units.csv", (row, phrase) -> lexicon.add(phrase, new Meaning.Unit(row.getField("unit"))));
    lexicon.each("coins.csv", lexicon::addCoin);
    lexicon.each("types.csv", lexicon::addType);
    lexicon.each("metals.csv", lexicon::addMetal);
    lexicon.each(
        "marks.csv", (row, phrase) -> lexicon.add(phrase, new Meaning.Mark(row.getField("kind"))));
    lexicon.each(
        "grades.csv",
        (row, phrase) ->
            lexicon.add(
                phrase,
                new Meaning.GradeName(
                    Integer.parseInt(row.getField("grade")), !row.getField("only_in").isBlank())));
    lexicon.each(
        "mints.csv",
        (row, phrase) -> lexicon.add(phrase, new Meaning.MintName(row.getField("letters"))));
    lexicon.each("quantities.csv", lexicon::addQuantity);
    lexicon.loadSingleWords();
    return lexicon;
  }

  private void loadSingleWords() {
    for (NamedCsvRecord row : LexiconRows.of("numbers.csv")) {
      BigDecimal value = new BigDecimal(row.getField("number"));
      LexiconRows.list(row.getField("words"), ";").forEach(word -> numbers.put(word, value));
    }
    for (NamedCsvRecord row : LexiconRows.of("common-words.csv")) {
      commonWords.addAll(LexiconRows.list(row.getField("words"), ";"));
    }
    for (NamedCsvRecord row : LexiconRows.of("currencies.csv")) {
      addCurrency(row);
    }
    singleWords.addAll(numbers.keySet());
    slips = new Slips(singleWords, coinWords);
  }

  private void each(String file, BiConsumer<NamedCsvRecord, String> adding) {
    for (NamedCsvRecord row : LexiconRows.of(file)) {
      for (String phrase : LexiconRows.list(row.getField("phrases"), ";")) {
        adding.accept(row, phrase);
      }
    }
  }

  private void add(String phrase, Meaning meaning) {
    String normal = Words.normal(phrase);
    if (normal.isEmpty() || normal.endsWith("/")) {
      // Signs alone name nothing; 1/- is read as shillings.
      return;
    }
    phrases.add(phrase, meaning);
    for (String word : Words.normal(phrase).split(" ")) {
      singleWords.add(word);
      if (!(meaning instanceof Meaning.Mark)) {
        coinWords.add(word);
      }
    }
  }

  private void addCountry(NamedCsvRecord row) {
    for (String phrase : LexiconRows.list(row.getField("phrases"), ";")) {
      add(phrase, country(row, false));
    }
    for (String columnOnly : LexiconRows.list(row.getField("column_only"), ";")) {
      phrases.add(columnOnly, country(row, true));
    }
  }

  private static Meaning.Country country(NamedCsvRecord row, boolean columnOnly) {
    String issuers = row.getField("issuers");
    boolean none = issuers.equals("-") || issuers.equals("?");
    return new Meaning.Country(
        none ? List.of() : LexiconRows.list(issuers, "|"),
        row.getField("class").strip(),
        columnOnly);
  }

  private void addCoin(NamedCsvRecord row, String phrase) {
    add(
        phrase,
        new Meaning.Coin(
            faces(row.getField("means")),
            new LinkedHashSet<>(LexiconRows.list(row.getField("countries"), "|"))));
  }

  private void addType(NamedCsvRecord row, String phrase) {
    add(
        phrase,
        new Meaning.Type(
            LexiconRows.list(row.getField("means"), "|").stream().map(Words::normal).toList(),
            new LinkedHashSet<>(LexiconRows.list(row.getField("countries"), "|")),
            faces(row.getField("implies"))));
  }

  private void addMetal(NamedCsvRecord row, String phrase) {
    String metal = row.getField("metal").strip();
    String fineness = row.getField("fineness").strip();
    if (!fineness.isEmpty()) {
      addMetalPhrase(phrase, new Meaning.FinenessName(new BigDecimal(fineness)));
    }
    if (!metal.isEmpty()) {
      boolean risky = !row.getField("only_after_number_or_in").isBlank();
      addMetalPhrase(phrase, new Meaning.MetalName(metal, risky));
    }
  }

  private void addMetalPhrase(String phrase, Meaning meaning) {
    metals.add(phrase, meaning);
    for (String word : Words.normal(phrase).split(" ")) {
      singleWords.add(word);
      coinWords.add(word);
    }
  }

  private void addQuantity(NamedCsvRecord row, String phrase) {
    switch (row.getField("kind")) {
      case "word" -> add(phrase, new Meaning.Count(Long.parseLong(row.getField("pieces"))));
      case "open" -> add(phrase, new Meaning.OpenCount());
      default -> {
        // Sizes of rolls are known by the coin's face value.
      }
    }
  }

  private static List<Face> faces(String text) {
    List<Face> faces = new ArrayList<>();
    for (String piece : LexiconRows.list(text, "|")) {
      if (piece.equals("-")) {
        // A coin that people write and of which the catalogue has no standard.
        faces.add(new Face.Name("-"));
      } else if (piece.startsWith("=")) {
        // The catalogue keeps second names apart by semicolons.
        LexiconRows.list(piece.substring(1), ";")
            .forEach(name -> faces.add(new Face.Name(Words.normal(name))));
      } else {
        int blank = piece.indexOf(' ');
        faces.add(
            new Face.Amount(
                new BigDecimal(piece.substring(0, blank)), piece.substring(blank + 1).strip()));
      }
    }
    return List.copyOf(faces);
  }

  private void addCurrency(NamedCsvRecord row) {
    Map<String, BigDecimal> units = new HashMap<>();
    for (String piece : LexiconRows.list(row.getField("units"), ";")) {
      int blank = piece.lastIndexOf(' ');
      units.put(piece.substring(0, blank).strip(), new BigDecimal(piece.substring(blank + 1)));
    }
    unitsByCurrency.put(
        row.getField("currency").strip().toLowerCase(Locale.ROOT), Map.copyOf(units));
  }

  /** Every phrase but those of metals and fineness. */
  public Phrases<Meaning> phrases() {
    return phrases;
  }

  /** The phrases of metals and fineness: they count inside other phrases too ("silver dollar"). */
  public Phrases<Meaning> metals() {
    return metals;
  }

  /**
   * How many of each unit make one of the currency: {@code dollar 1, cent 100}. Empty for an
   * unknown currency.
   */
  public Map<String, BigDecimal> units(String currency) {
    return unitsByCurrency.getOrDefault(currency.toLowerCase(Locale.ROOT), Map.of());
  }

  /** The number that a single word names, such as half or five, if it does. */
  public Optional<BigDecimal> number(String word) {
    return Optional.ofNullable(numbers.get(word));
  }

  /** Whether the word stands in many names of types and points at none of them. */
  public boolean isCommon(String word) {
    return commonWords.contains(word);
  }

  /** Whether the word stands in some phrase. */
  public boolean knows(String word) {
    return singleWords.contains(word);
  }

  /** The known words that a miswritten one may be. */
  public Slips slips() {
    return slips;
  }
}

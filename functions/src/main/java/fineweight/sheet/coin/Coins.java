package fineweight.sheet.coin;

import fineweight.clue.Field;
import fineweight.clue.FieldRole;
import fineweight.clue.lexicon.Lexicon;
import fineweight.clue.reading.ClueReader;
import fineweight.column.Appraisal;
import fineweight.column.Appraisal.Figures;
import fineweight.column.Appraiser;
import fineweight.column.RowState;
import fineweight.identification.Candidate;
import fineweight.identification.CoinIdentifier;
import fineweight.identification.Identification.OneStandard;
import fineweight.identification.Identification.SeveralStandards;
import fineweight.identification.PieceCount;
import fineweight.sheet.function.Argument;
import fineweight.sheet.function.Given;
import fineweight.sheet.function.Parameter;
import fineweight.spot.SpotPrices;
import fineweight.standard.CoinStandard;
import fineweight.standard.Standards;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/**
 * Reads the coin that the arguments of a call name. Keeps the last few thousand answers, because a
 * sheet asks several functions about each of its rows. Safe for several threads.
 */
public final class Coins {
  /** The country that is meant where the words name none. */
  private static final String HOME = "US";

  private static final int KEPT = 8192;

  /** The parameters that name a coin beside its words, in the order of every function. */
  public static final List<Parameter> PARTS =
      List.of(
          Parameter.optional("year", "", "The date on the coin, where it stands in its own cell"),
          Parameter.optional("mint", "", "Its mint mark, where it stands in its own cell"),
          Parameter.optional("country", "", "Its country; the United States where none is named"),
          Parameter.optional("type name", "", "The name of its type, such as Morgan"));

  /** The first parameter of every function about one coin. */
  public static final Parameter COIN =
      Parameter.needed(
          "coin",
          "",
          "The coin in your words, such as 1964 half dollar; or several cells of its row; or the id"
              + " of its standard");

  private final ClueReader reader;
  private final Appraiser appraiser;
  private final Map<List<Field>, Coin> known =
      new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<List<Field>, Coin> eldest) {
          return size() > KEPT;
        }
      };

  /** Functions know no clock: the last year that is read as a date at all. */
  private static final int LATEST_YEAR = 2100;

  private Coins() {
    Lexicon lexicon = Lexicon.standard();
    reader = new ClueReader(lexicon);
    // Without prices the lowest of several is found by each function for what it counts.
    SpotPrices none = SpotPrices.of(CurrencyUnit.USD, LocalDate.EPOCH, List.of());
    appraiser =
        new Appraiser(
            reader,
            new CoinIdentifier(Standards.catalogue(), lexicon, HOME, LATEST_YEAR),
            none,
            Standards.catalogue());
  }

  /** Made on first use: a sheet that calls no function reads no catalogue. */
  private static final class Loaded {
    static final Coins COINS = new Coins();
  }

  public static Coins standard() {
    return Loaded.COINS;
  }

  /** The coin of a call; empty if nothing names one. */
  public Optional<Coin> of(Given given) {
    List<Field> fields = words(given.at("coin"));
    add(fields, FieldRole.YEAR, given, "year");
    add(fields, FieldRole.MINT, given, "mint");
    add(fields, FieldRole.COUNTRY, given, "country");
    add(fields, FieldRole.TYPE, given, "type name");
    if (fields.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(find(fields, given.has("pieces") ? pieces(given.at("pieces")) : List.of()));
  }

  /** The coin of one row of an area; empty if the row is blank. */
  public Optional<Coin> of(List<Argument> row, Optional<Argument> count) {
    List<Field> fields = words(new Argument.Area(List.of(row)));
    return fields.isEmpty()
        ? Optional.empty()
        : Optional.of(find(fields, count.map(Coins::pieces).orElse(List.of())));
  }

  private static List<Field> words(Argument coin) {
    List<Field> fields = new ArrayList<>();
    if (!coin.saysNothing()) {
      boolean number = coin instanceof Argument.Number;
      fields.add(new Field(number ? FieldRole.DENOMINATION : FieldRole.DESCRIPTION, coin.words()));
    }
    return fields;
  }

  private static void add(List<Field> fields, FieldRole role, Given given, String name) {
    String words = given.has(name) ? given.words(name) : "";
    if (!words.isEmpty()) {
      fields.add(new Field(role, words));
    }
  }

  /** A count of zero or a blank cell is passed on as it is: no pieces are no worth. */
  private static List<Field> pieces(Argument count) {
    String words = count.words();
    return words.isEmpty() ? List.of() : List.of(new Field(FieldRole.COUNT, words));
  }

  private Coin find(List<Field> coin, List<Field> count) {
    List<Field> fields = new ArrayList<>(coin);
    fields.addAll(count);
    synchronized (known) {
      Coin before = known.get(fields);
      if (before != null) {
        return before;
      }
    }
    Optional<CoinStandard> named =
        coin.size() == 1 ? Standards.catalogue().byId(coin.get(0).text()) : Optional.empty();
    Coin found =
        named.isPresent() ? ofStandard(named.get(), count) : of(appraiser.appraise(fields));
    synchronized (known) {
      known.put(List.copyOf(fields), found);
    }
    return found;
  }

  private Coin ofStandard(CoinStandard standard, List<Field> count) {
    PieceCount.Counted counted =
        PieceCount.of(reader.read(count).quantity().value(), Optional.of(standard));
    boolean unknownMass =
        standard.specification().isPrecious() && !standard.fineContent().hasPrecious();
    RowState state =
        !standard.specification().isPrecious()
            ? RowState.NOTHING
            : counted.pieces().isEmpty() || unknownMass ? RowState.NOT_KNOWN : RowState.VALUED;
    return new Coin(
        state,
        counted.pieces(),
        List.of(Appraiser.figures(standard)),
        List.of(standard),
        Optional.empty(),
        unknownMass ? "The catalogue knows no mass for this coin: weigh it." : counted.reason());
  }

  private static Coin of(Appraisal appraisal) {
    List<CoinStandard> standards = standards(appraisal);
    List<Figures> possible =
        standards.isEmpty()
            ? appraisal.figures().metal().isEmpty() ? List.of() : List.of(appraisal.figures())
            : standards.stream().map(Appraiser::figures).toList();
    boolean open = appraisal.state() == RowState.SEVERAL || appraisal.state() == RowState.NOT_KNOWN;
    return new Coin(
        appraisal.state(),
        appraisal.pieces(),
        possible,
        standards,
        Optional.of(appraisal.clues()),
        open && !appraisal.notes().isEmpty() ? appraisal.notes().get(0) : "");
  }

  private static List<CoinStandard> standards(Appraisal appraisal) {
    if (appraisal.identification() instanceof OneStandard one) {
      return List.of(one.standard());
    }
    return appraisal.identification() instanceof SeveralStandards several
        ? several.candidates().stream().map(Candidate::standard).toList()
        : List.of();
  }
}

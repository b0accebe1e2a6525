package fineweight.tool;

import fineweight.label.Label;
import fineweight.label.LabelField;
import fineweight.label.LabelWording;
import fineweight.refresh.collection.LabelPiece;
import fineweight.settings.SettingException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import picocli.CommandLine.Option;

/** The options about which pieces get labels and what these say. */
final class LabelChoiceOptions {
  /** A bag of coins is not put into holders. */
  private static final long MOST_OF_A_ROW = 100;

  @Option(names = "--for-sale", description = "Only what is for sale.")
  private boolean forSale;

  @Option(names = "--kept", description = "Only what is not for sale.")
  private boolean kept;

  @Option(
      names = "--place",
      paramLabel = "NAME",
      description = "Only what is kept there, as your column says; may be given again.")
  private Set<String> places = Set.of();

  @Option(
      names = "--of-lot",
      paramLabel = "NAME",
      description = "Only pieces of this lot; may be given again.")
  private Set<String> lots = Set.of();

  @Option(
      names = "--number",
      paramLabel = "NO",
      split = ",",
      description = "Only pieces of these numbers, such as 3,7,12.")
  private Set<String> numbers = Set.of();

  @Option(
      names = "--by-row",
      description = "One label for each row with its count, instead of one for each piece.")
  private boolean byRow;

  @Option(
      names = "--text",
      paramLabel = "WORDING",
      description = {
        "What a label says, lines parted by |, fields in braces; the first line is bold. Fields: number, country,",
        "denomination, type, year, mint, date, metal, fine, ounces, grade, holder, faults, lot, place, count, price.",
        "Example: \"{number}|{date} {type}|{metal}, {ounces}\""
      })
  private String text = LabelWording.USUAL;

  /** Whether what is for sale has to be known apart from what is kept. */
  boolean isApart() {
    return forSale || kept;
  }

  /** A label to be, with what it is of. */
  record Chosen(LabelPiece piece, Map<LabelField, String> fields, Label label) {}

  /**
   * The pieces that are wanted.
   *
   * @throws SettingException if a word of the choice fits no piece at all
   */
  List<LabelPiece> of(List<LabelPiece> all) throws SettingException {
    if (forSale && kept) {
      throw new SettingException(
          "give --for-sale or --kept, not both; without them all get labels");
    }
    known("--place", places, all, LabelPiece::place);
    known("--of-lot", lots, all, LabelPiece::lot);
    known("--number", numbers, all, LabelPiece::number);
    return all.stream()
        .filter(piece -> !forSale || piece.forSale())
        .filter(piece -> !kept || !piece.forSale())
        .filter(piece -> isOf(places, piece.place()))
        .filter(piece -> isOf(lots, piece.lot()))
        .filter(piece -> isOf(numbers, piece.number()))
        .toList();
  }

  private static void known(
      String option, Set<String> wanted, List<LabelPiece> all, Function<LabelPiece, String> word)
      throws SettingException {
    for (String each : wanted) {
      if (all.stream().noneMatch(piece -> same(each, word.apply(piece)))) {
        Set<String> there = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
        all.forEach(piece -> there.add(word.apply(piece)));
        there.remove("");
        throw new SettingException(
            option
                + ": no piece has \""
                + each
                + "\""
                + (there.isEmpty() || there.size() > 20
                    ? ""
                    : "; there are " + String.join(", ", there)));
      }
    }
  }

  private static boolean isOf(Set<String> wanted, String word) {
    return wanted.isEmpty() || wanted.stream().anyMatch(each -> same(each, word));
  }

  private static boolean same(String one, String other) {
    return one.strip().toLowerCase(Locale.ROOT).equals(other.strip().toLowerCase(Locale.ROOT));
  }

  /**
   * The labels in their order.
   *
   * @throws SettingException if the wording cannot be used
   */
  List<Chosen> labels(List<LabelPiece> pieces, boolean priced) throws SettingException {
    LabelWording wording = wording();
    List<Chosen> labels = new ArrayList<>();
    for (LabelPiece piece : pieces) {
      boolean one = byRow || piece.pieces() > MOST_OF_A_ROW;
      Map<LabelField, String> fields = piece.fields(one ? piece.pieces() : 1, priced);
      Chosen label = new Chosen(piece, fields, wording.of(fields));
      for (long i = 0; i < (one ? 1 : piece.pieces()); i++) {
        labels.add(label);
      }
    }
    return labels;
  }

  private LabelWording wording() throws SettingException {
    try {
      return LabelWording.read(text);
    } catch (IllegalArgumentException unusable) {
      throw new SettingException("--text: " + unusable.getMessage());
    }
  }

  /** What the user did not ask for and should know. */
  List<String> remarks(List<LabelPiece> pieces) {
    return pieces.stream()
        .filter(piece -> !byRow && piece.pieces() > MOST_OF_A_ROW)
        .map(
            piece ->
                "Piece "
                    + piece.number()
                    + ": "
                    + piece.pieces()
                    + " pieces got one label with their number, because a row of more than "
                    + MOST_OF_A_ROW
                    + " is taken for a bag.")
        .toList();
  }
}

package fineweight.column;

import fineweight.clue.Clues;
import fineweight.clue.Field;
import fineweight.clue.reading.ClueReader;
import fineweight.column.Appraisal.Figures;
import fineweight.identification.Answer;
import fineweight.identification.Candidate;
import fineweight.identification.CoinIdentifier;
import fineweight.identification.Identification;
import fineweight.identification.Identification.AsStated;
import fineweight.identification.Identification.NoStandard;
import fineweight.identification.Identification.OneStandard;
import fineweight.identification.Identification.SeveralStandards;
import fineweight.identification.PieceCount;
import fineweight.metal.FineContent;
import fineweight.metal.Metal;
import fineweight.spot.SpotPrices;
import fineweight.standard.Certainty;
import fineweight.standard.CoinStandard;
import fineweight.standard.Standards;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.regex.Pattern;

/**
 * From the fields of a row to everything that is said about it: the one way that rows, the terminal
 * and functions take.
 */
public final class Appraiser {
  private static final Pattern ENDED = Pattern.compile(".*[.?!]$");

  private final ClueReader reader;
  private final CoinIdentifier identifier;
  private final SpotPrices spot;
  private final Standards standards;

  public Appraiser(
      ClueReader reader, CoinIdentifier identifier, SpotPrices spot, Standards standards) {
    this.reader = reader;
    this.identifier = identifier;
    this.spot = spot;
    this.standards = standards;
  }

  public Appraisal appraise(List<Field> fields) {
    return appraise(fields, "");
  }

  /**
   * @param answer the id of the standard that a person chose for this piece; empty if none. It
   *     counts where the words leave the standard open, and never against them
   */
  public Appraisal appraise(List<Field> fields, String answer) {
    Answer found = identifier.answer(reader.read(fields));
    Clues clues = found.clues();
    Identification identification = Answered.by(answer, found.identification(), standards);
    if (identification instanceof OneStandard one) {
      return one(clues, one);
    }
    if (identification instanceof SeveralStandards several) {
      return several(clues, several);
    }
    if (identification instanceof AsStated stated) {
      return stated(clues, stated);
    }
    NoStandard none = (NoStandard) identification;
    RowState state =
        none.kind() == NoStandard.Kind.NOT_BY_METAL ? RowState.NOTHING : RowState.NOT_KNOWN;
    Optional<Long> pieces = PieceCount.of(clues.quantity().value(), Optional.empty()).pieces();
    List<String> notes = new ArrayList<>();
    notes.add(sentence(none.reason()));
    return new Appraisal(clues, state, pieces, none, Figures.NONE, FineContent.NONE, notes);
  }

  private Appraisal one(Clues clues, OneStandard one) {
    CoinStandard standard = one.standard();
    PieceCount.Counted counted = PieceCount.of(clues.quantity().value(), Optional.of(standard));
    Figures figures = figures(standard);
    boolean unknownMass = standard.specification().isPrecious() && !figures.content().hasPrecious();
    boolean priced =
        figures.content().masses().keySet().stream().anyMatch(spot.prices()::containsKey);
    RowState state =
        !standard.specification().isPrecious() && !priced
            ? RowState.NOTHING
            : counted.pieces().isEmpty() || unknownMass ? RowState.NOT_KNOWN : RowState.VALUED;
    List<String> notes = new ArrayList<>();
    if (!counted.reason().isEmpty()) {
      notes.add(sentence(counted.reason()));
    }
    if (unknownMass) {
      notes.add("The catalogue knows no mass for this coin: weigh it.");
    }
    if (state == RowState.NOTHING) {
      notes.add("No precious metal: " + figures.metal() + ".");
    }
    if (!standard.specification().isPrecious() && priced) {
      notes.add(
          "Valued by its base metal: melting or exporting it may be unlawful (United States cents"
              + " and five cents: 31 CFR part 82); local law decides.");
    }
    remarks(one, notes);
    if (figures.fromMemory() && state == RowState.VALUED) {
      notes.add("Mass and fineness are from memory, no text was found.");
    }
    return new Appraisal(clues, state, counted.pieces(), one, figures, figures.content(), notes);
  }

  private Appraisal several(Clues clues, SeveralStandards several) {
    List<Candidate> ascending =
        several.candidates().stream().sorted(Comparator.comparing(this::worth)).toList();
    CoinStandard lowest = ascending.get(0).standard();
    CoinStandard highest = ascending.get(ascending.size() - 1).standard();
    PieceCount.Counted counted = PieceCount.of(clues.quantity().value(), Optional.of(lowest));
    List<String> notes = new ArrayList<>();
    notes.add(several.question());
    if (!counted.reason().isEmpty()) {
      notes.add(sentence(counted.reason()));
    }
    remarks(several, notes);
    if (counted.pieces().isEmpty()) {
      return new Appraisal(
          clues,
          RowState.NOT_KNOWN,
          counted.pieces(),
          several,
          Figures.NONE,
          FineContent.NONE,
          notes);
    }
    return new Appraisal(
        clues,
        RowState.SEVERAL,
        counted.pieces(),
        several,
        figures(lowest),
        highest.fineContent(),
        notes);
  }

  /** Melt at spot; where a metal has no price, its mass still orders the candidates. */
  private BigDecimal worth(Candidate candidate) {
    BigDecimal melt = spot.melt(candidate.content()).getAmount();
    BigDecimal unpriced = BigDecimal.ZERO;
    for (Metal metal : spot.missingFor(candidate.content())) {
      unpriced = unpriced.add(candidate.content().of(metal).grams());
    }
    return melt.add(unpriced);
  }

  private Appraisal stated(Clues clues, AsStated stated) {
    PieceCount.Counted counted = PieceCount.of(clues.quantity().value(), Optional.empty());
    boolean precious = stated.content().hasPrecious();
    RowState state =
        !precious
            ? RowState.NOTHING
            : counted.pieces().isEmpty() ? RowState.NOT_KNOWN : RowState.VALUED;
    List<String> notes = new ArrayList<>();
    notes.add(
        precious
            ? "Computed from your words (" + stated.words() + "), not from a standard."
            : "No precious metal: " + stated.metal().word() + ".");
    if (!counted.reason().isEmpty()) {
      notes.add(sentence(counted.reason()));
    }
    Figures figures =
        precious
            ? new Figures(
                "",
                stated.metal().word(),
                Optional.of(stated.fineness()),
                Optional.of(stated.gross()),
                stated.content(),
                "as stated: " + stated.words(),
                false)
            : new Figures(
                "",
                stated.metal().word(),
                Optional.empty(),
                Optional.empty(),
                FineContent.NONE,
                "",
                false);
    return new Appraisal(clues, state, counted.pieces(), stated, figures, stated.content(), notes);
  }

  private static void remarks(Identification identification, List<String> notes) {
    identification.reasons().remarks().forEach(remark -> notes.add(sentence(remark)));
    List<String> left = identification.reasons().notUnderstood();
    if (!left.isEmpty()) {
      notes.add(
          "Not understood: " + String.join(", ", left.subList(0, Math.min(left.size(), 6))) + ".");
    }
  }

  /** The figures of a standard, as a row shows them. */
  public static Figures figures(CoinStandard standard) {
    var specification = standard.specification();
    var main = specification.composition().mainPreciousMetal();
    return new Figures(
        standard.id(),
        metalWords(standard),
        main.flatMap(specification.composition()::fineness),
        specification.grossMass(),
        specification.fineContent(),
        ground(standard),
        standard.evidence().certainty() == Certainty.MEMORY);
  }

  private static String metalWords(CoinStandard standard) {
    StringJoiner words = new StringJoiner(", ");
    boolean precious = standard.specification().isPrecious();
    standard.specification().composition().parts().stream()
        .flatMap(part -> part.metals().stream())
        .filter(metal -> metal.isPrecious() == precious && isWorthNaming(standard, metal))
        .forEach(metal -> words.add(metal.word()));
    return words.toString();
  }

  /** The trace of silver in a gold alloy is no second metal of the coin. */
  private static boolean isWorthNaming(CoinStandard standard, Metal metal) {
    return !metal.isPrecious()
        || standard
            .specification()
            .composition()
            .fineness(metal)
            .filter(share -> share.perMille().compareTo(new BigDecimal("100")) >= 0)
            .isPresent();
  }

  private static String ground(CoinStandard standard) {
    var evidence = standard.evidence();
    String sources =
        evidence.sources().isEmpty() ? "" : " [" + String.join(", ", evidence.sources()) + "]";
    String locator = evidence.locator().isEmpty() ? "catalogue" : evidence.locator();
    return locator + sources + ", " + evidence.certainty().words();
  }

  static String sentence(String words) {
    String capital = words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
    return ENDED.matcher(capital).matches() ? capital : capital + ".";
  }
}

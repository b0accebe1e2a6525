package fineweight.identification;

import fineweight.clue.Clues;
import fineweight.clue.Field;
import fineweight.clue.FieldRole;
import fineweight.clue.lexicon.Lexicon;
import fineweight.clue.reading.ClueReader;
import fineweight.identification.Identification.AsStated;
import fineweight.identification.Identification.NoStandard;
import fineweight.identification.Identification.OneStandard;
import fineweight.identification.Identification.SeveralStandards;
import fineweight.metal.FineContent;
import fineweight.metal.Metal;
import fineweight.standard.CoinStandard;
import fineweight.standard.Standards;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** What the whole way from words to metal says about one row, for tests. */
record Answered(Clues clues, Identification identification, Optional<Long> pieces) {
  static final Standards STANDARDS = Standards.catalogue();
  private static final ClueReader READER = new ClueReader(Lexicon.standard());
  private static final CoinIdentifier IDENTIFIER =
      new CoinIdentifier(STANDARDS, Lexicon.standard(), "US", 2027);

  static Answered to(String description) {
    return to(List.of(new Field(FieldRole.DESCRIPTION, description)));
  }

  static Answered to(List<Field> fields) {
    Answer answer = IDENTIFIER.answer(READER.read(fields));
    Clues clues = answer.clues();
    Identification identification = answer.identification();
    Optional<CoinStandard> standard = Optional.empty();
    if (identification instanceof OneStandard one) {
      standard = Optional.of(one.standard());
    } else if (identification instanceof SeveralStandards several) {
      standard = Optional.of(several.candidates().get(0).standard());
    }
    return new Answered(
        clues, identification, PieceCount.of(clues.quantity().value(), standard).pieces());
  }

  /** {@code one} with precious metal, {@code base} without, {@code ask}, {@code none}. */
  String kind() {
    if (identification instanceof SeveralStandards) {
      return "ask";
    }
    if (identification instanceof NoStandard) {
      return "none";
    }
    boolean precious =
        identification instanceof OneStandard one
            ? one.standard().specification().isPrecious()
            : content().hasPrecious();
    return precious ? "one" : "base";
  }

  /** The content of one piece; nothing unless there is a single answer. */
  FineContent content() {
    if (identification instanceof OneStandard one) {
      return one.content();
    }
    return identification instanceof AsStated stated ? stated.content() : FineContent.NONE;
  }

  BigDecimal grams(Metal metal) {
    return content().of(metal).grams().multiply(BigDecimal.valueOf(pieces.orElse(0L)));
  }

  /** Whether a person is told that something may be otherwise. */
  boolean isFlagged() {
    Reasons reasons = identification.reasons();
    return !reasons.notUnderstood().isEmpty()
        || reasons.remarks().stream()
            .anyMatch(
                remark ->
                    !remark.startsWith("no country is named")
                        && !remark.startsWith("several entries of the catalogue"));
  }

  /** The standards named in the answer. */
  List<CoinStandard> standards() {
    if (identification instanceof OneStandard one) {
      return List.of(one.standard());
    }
    return identification instanceof SeveralStandards several
        ? several.candidates().stream().map(Candidate::standard).toList()
        : List.of();
  }

  String said() {
    List<String> remarks = identification.reasons().remarks();
    List<String> left = identification.reasons().notUnderstood();
    String main =
        switch (kind()) {
          case "ask" -> ((SeveralStandards) identification).question();
          case "none" -> ((NoStandard) identification).reason();
          default -> identification instanceof AsStated stated ? "stated " + stated.words() : "";
        };
    return kind()
        + " n="
        + pieces.map(String::valueOf).orElse("?")
        + " "
        + standards().stream().map(CoinStandard::id).toList()
        + " "
        + main
        + (remarks.isEmpty() ? "" : " | " + remarks)
        + (left.isEmpty() ? "" : " | not understood " + left);
  }
}

package fineweight.refresh.collection;

import fineweight.clue.Clues;
import fineweight.clue.Dating;
import fineweight.column.Appraisal;
import fineweight.identification.Identification.OneStandard;
import fineweight.identification.Identification.SeveralStandards;
import fineweight.refresh.inventory.Fate;
import fineweight.refresh.inventory.PieceNumbers;
import fineweight.refresh.inventory.ReadRow;
import fineweight.refresh.inventory.RowCondition;
import fineweight.standard.CoinStandard;
import fineweight.typeset.CollectedPiece;
import fineweight.typeset.SetReview;
import fineweight.typeset.Standing;
import fineweight.typeset.TypeSet;
import fineweight.typeset.TypeSetStatus;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** A set reviewed with the rows of an inventory. Immutable once made. */
public final class TypeSetReview {
  private final SetReview review;
  private final boolean mintColumn;
  private final List<ReadRow> rows = new ArrayList<>();
  private final Map<Integer, Standing> byRow = new HashMap<>();

  /**
   * @param read the rows that are still in the collection
   * @param mintColumn whether the inventory has a column of mint marks: a blank there is no mark
   */
  public TypeSetReview(TypeSet set, List<ReadRow> read, PieceNumbers numbers, boolean mintColumn) {
    this.mintColumn = mintColumn;
    List<CollectedPiece> pieces = new ArrayList<>();
    for (ReadRow row : read) {
      List<CoinStandard> standards = row.isCoin() ? standards(row.appraisal()) : List.of();
      if (!standards.isEmpty()) {
        rows.add(row);
        pieces.add(piece(row, standards, numbers.of(row.row())));
      }
    }
    review = SetReview.of(set, pieces);
    for (int i = 0; i < rows.size(); i++) {
      byRow.put(rows.get(i).row(), review.standings().get(i));
    }
  }

  private static List<CoinStandard> standards(Appraisal appraisal) {
    if (appraisal.identification() instanceof OneStandard one) {
      return List.of(one.standard());
    }
    return appraisal.identification() instanceof SeveralStandards several
        ? several.candidates().stream().map(candidate -> candidate.standard()).toList()
        : List.of();
  }

  private CollectedPiece piece(ReadRow row, List<CoinStandard> standards, String key) {
    Clues clues = row.appraisal().clues();
    Dating dating = clues.dating();
    boolean dated = dating.kind() == Dating.Kind.YEARS && dating.years().size() == 1;
    long count = row.appraisal().pieces().orElse(1L);
    return new CollectedPiece(
        key,
        standards,
        dated ? OptionalInt.of(dating.years().get(0)) : OptionalInt.empty(),
        clues
            .mint()
            .map(mint -> mint.value())
            .or(() -> mintColumn ? Optional.of("") : Optional.empty()),
        Optional.empty(),
        RowCondition.of(clues.condition()),
        (int) Math.max(1, Math.min(count, Integer.MAX_VALUE)),
        ruling(row.fate(), count));
  }

  /** Where only a part is for sale, the others are as undecided as if nothing was said. */
  private static Optional<CollectedPiece.Ruling> ruling(Fate fate, long left) {
    if (fate.kind() == Fate.Kind.KEEP) {
      return Optional.of(CollectedPiece.Ruling.KEEP);
    }
    boolean all = fate.offered().isPresent() && fate.offered().getAsInt() >= left;
    return all ? Optional.of(CollectedPiece.Ruling.SELL) : Optional.empty();
  }

  public SetReview review() {
    return review;
  }

  /** Where the row (from 0) stands; empty if it is not known what it is. */
  public Optional<Standing> standing(int row) {
    return Optional.ofNullable(byRow.get(row));
  }

  /** The rows for a place, the best first as the collection has them, in the order of the sheet. */
  public Map<String, List<ReadRow>> rowsByPlace() {
    Map<String, List<ReadRow>> byPlace = new HashMap<>();
    for (int i = 0; i < rows.size(); i++) {
      ReadRow row = rows.get(i);
      review
          .standings()
          .get(i)
          .place()
          .ifPresent(
              place -> byPlace.computeIfAbsent(place.key(), key -> new ArrayList<>()).add(row));
    }
    return byPlace;
  }

  /** A standing for a cell: the proposal first, then its ground. */
  public static String words(Standing standing) {
    if (standing.status() == TypeSetStatus.NOT_IN_SET && standing.proposal().isEmpty()) {
      return standing.status().words();
    }
    String proposal = standing.proposal().isEmpty() ? "" : standing.proposal() + ": ";
    return proposal + standing.status().words() + " (" + standing.sentence() + ")";
  }
}

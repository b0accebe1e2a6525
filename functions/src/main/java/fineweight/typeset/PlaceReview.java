package fineweight.typeset;

import fineweight.typeset.CollectedPiece.Ruling;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** The rows that are for one place of a set, decided among themselves. */
final class PlaceReview {
  private static final int NONE = -1;

  private final TypeEntry place;
  private final List<CollectedPiece> pieces;

  /** The index of the row to keep; none where the collector decided to sell them all. */
  private final int best;

  /** The index of the best certified row that is not decided to be sold. */
  private final int bestCertified;

  PlaceReview(TypeEntry place, List<CollectedPiece> pieces) {
    this.place = place;
    this.pieces = pieces;
    this.best = best(piece -> true);
    this.bestCertified = best(CollectedPiece::isCertified);
  }

  /** Ties go to the earlier row. */
  private int best(Predicate<CollectedPiece> counts) {
    int best = NONE;
    for (int i = 0; i < pieces.size(); i++) {
      CollectedPiece piece = pieces.get(i);
      boolean stays = counts.test(piece) && !piece.isRuled(Ruling.SELL);
      if (stays && (best == NONE || isBetter(piece, pieces.get(best)))) {
        best = i;
      }
    }
    return best;
  }

  private static boolean isBetter(CollectedPiece piece, CollectedPiece other) {
    return SetReview.BETTER_FIRST.compare(piece, other) < 0;
  }

  List<Standing> standings() {
    List<Standing> standings = new ArrayList<>();
    CollectedPiece bestSoFar = null;
    for (int i = 0; i < pieces.size(); i++) {
      CollectedPiece piece = pieces.get(i);
      TypeSetStatus status =
          bestSoFar == null
              ? TypeSetStatus.FILLS
              : isBetter(piece, bestSoFar) ? TypeSetStatus.IMPROVES : TypeSetStatus.DUPLICATE;
      standings.add(standing(i, status));
      if (status != TypeSetStatus.DUPLICATE) {
        bestSoFar = piece;
      }
    }
    return standings;
  }

  private Standing standing(int index, TypeSetStatus status) {
    CollectedPiece piece = pieces.get(index);
    if (piece.isRuled(Ruling.KEEP)) {
      return of(piece, status, piece.count(), "your decision");
    }
    if (piece.isRuled(Ruling.SELL)) {
      return of(
          piece, status, 0, best == NONE ? "your decision; it leaves a hole" : "your decision");
    }
    if (index == best) {
      return of(piece, status, 1, bestWords(piece));
    }
    if (index == bestCertified && isAheadByOpinion(piece)) {
      return of(
          piece,
          status,
          1,
          "certified; the raw piece has the higher grade only by its owner's eye");
    }
    String unknown = piece.condition().grade().isEmpty() ? ", and its grade is not recorded" : "";
    return of(
        piece,
        status,
        0,
        "not better than another, " + pieces.get(best).condition().words() + unknown);
  }

  private String bestWords(CollectedPiece piece) {
    String words = pieces.size() == 1 ? "the only one" : "the best one";
    return piece.condition().damaged() ? words + ", but damaged" : words;
  }

  /** Whether the best row is raw and as sound, so that an uncertified grade alone puts it ahead. */
  private boolean isAheadByOpinion(CollectedPiece certified) {
    CollectedPiece ahead = pieces.get(best);
    return !ahead.isCertified() && ahead.condition().damaged() == certified.condition().damaged();
  }

  private Standing of(CollectedPiece piece, TypeSetStatus status, int keep, String ground) {
    return new Standing(
        piece,
        Optional.of(place),
        status,
        keep,
        piece.count() - keep,
        place.words() + ": " + ground);
  }
}

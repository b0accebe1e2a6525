package fineweight.table;

import fineweight.refresh.collection.TypeSetReview;
import fineweight.refresh.inventory.PieceNumbers;
import fineweight.refresh.inventory.ReadRow;
import fineweight.typeset.Standing;
import fineweight.typeset.TypeSet;
import fineweight.typeset.TypeSetStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Tells where a piece on the table stands in the type set, the collection counted in. */
public final class SetPlaces {
  private final TypeSet set = TypeSet.unitedStates();
  private final List<ReadRow> collection;
  private final PieceNumbers numbers;

  /**
   * @param collection the rows that are in it already
   */
  public SetPlaces(List<ReadRow> collection, PieceNumbers numbers) {
    this.collection = List.copyOf(collection);
    this.numbers = numbers;
  }

  /** For where there is no collection yet. */
  public static SetPlaces ofNothing() {
    return new SetPlaces(List.of(), PieceNumbers.none());
  }

  /**
   * Where the last of the pieces stands.
   *
   * @param pieces those on the table, the piece asked for last; their rows are not the collection's
   * @return a sentence; empty if it is not known what the piece is or the set has no such place
   */
  Optional<String> standing(List<ReadRow> pieces) {
    List<ReadRow> all = new ArrayList<>(collection);
    all.addAll(pieces);
    int asked = pieces.get(pieces.size() - 1).row();
    return new TypeSetReview(set, all, numbers, false)
        .standing(asked)
        .filter(standing -> standing.status() != TypeSetStatus.NOT_IN_SET)
        .map(SetPlaces::words);
  }

  private static String words(Standing standing) {
    String place = standing.place().map(entry -> entry.words() + ": ").orElse("");
    String what =
        switch (standing.status()) {
          case FILLS -> "fills a hole";
          case IMPROVES -> "improves on the one you have";
          case DUPLICATE -> "duplicate";
          default -> standing.sentence();
        };
    return "type set: " + place + what;
  }
}

package fineweight.typeset;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A collection held against a set. For each place the best piece is proposed to be kept and the
 * others to be sold. Undamaged comes before damaged, then the higher grade, then certified before
 * raw, then the earlier row. The best certified piece is not proposed for sale because of a raw one
 * that is as sound and whose higher grade nobody independent gave. What the collector decided for a
 * row beats the proposal; and while he has not decided otherwise, the last piece of a place is
 * never proposed for sale. A piece that fills a place only perhaps is open: it keeps no other from
 * its place. Immutable.
 *
 * @param set the set
 * @param standings one for each row, in their order
 */
public record SetReview(TypeSet set, List<Standing> standings) {
  /** The better piece first; of equals the earlier, because sorting keeps their order. */
  static final Comparator<CollectedPiece> BETTER_FIRST =
      Comparator.<CollectedPiece, Boolean>comparing(piece -> piece.condition().damaged())
          .thenComparing(CollectedPiece::lowGrade, Comparator.reverseOrder())
          .thenComparing(piece -> !piece.isCertified())
          .thenComparing(CollectedPiece::highGrade, Comparator.reverseOrder());

  public SetReview {
    standings = List.copyOf(standings);
  }

  /**
   * Reviews a collection.
   *
   * @param pieces the rows that are still in the collection, in the order they came
   */
  public static SetReview of(TypeSet set, List<CollectedPiece> pieces) {
    Map<Integer, Standing> byRow = new HashMap<>();
    Map<TypeEntry, List<Integer>> byPlace = new LinkedHashMap<>();
    for (int row = 0; row < pieces.size(); row++) {
      List<TypeEntry> places = set.placesFor(pieces.get(row));
      if (places.size() == 1 && places.get(0).surelyHolds(pieces.get(row))) {
        byPlace.computeIfAbsent(places.get(0), place -> new ArrayList<>()).add(row);
      } else {
        byRow.put(row, withoutPlace(pieces.get(row), places));
      }
    }
    byPlace.forEach(
        (place, rows) -> {
          List<CollectedPiece> rivals = rows.stream().map(pieces::get).toList();
          List<Standing> decided = new PlaceReview(place, rivals).standings();
          for (int i = 0; i < rows.size(); i++) {
            byRow.put(rows.get(i), decided.get(i));
          }
        });
    List<Standing> inOrder = new ArrayList<>();
    for (int row = 0; row < pieces.size(); row++) {
      inOrder.add(byRow.get(row));
    }
    return new SetReview(set, inOrder);
  }

  private static Standing withoutPlace(CollectedPiece piece, List<TypeEntry> places) {
    TypeSetStatus status = places.isEmpty() ? TypeSetStatus.NOT_IN_SET : TypeSetStatus.OPEN;
    String ground =
        places.isEmpty()
            ? "the set has no place for it"
            : "it may be "
                + String.join(" or ", places.stream().map(TypeEntry::words).toList())
                + (places.size() == 1 ? ", or have no place: is it?" : ": which?");
    boolean keeps = piece.isRuled(CollectedPiece.Ruling.KEEP);
    boolean sells = piece.isRuled(CollectedPiece.Ruling.SELL);
    return new Standing(
        piece,
        Optional.empty(),
        status,
        keeps ? piece.count() : 0,
        sells ? piece.count() : 0,
        ground + (keeps || sells ? "; your decision" : ""));
  }

  /** The places that at least one row fills, whatever is decided for it. */
  public List<TypeEntry> held() {
    return set.entries().stream()
        .filter(entry -> standings.stream().anyMatch(one -> isFor(one, entry)))
        .toList();
  }

  /** The places that no piece fills. */
  public List<TypeEntry> holes() {
    return set.entries().stream()
        .filter(entry -> standings.stream().noneMatch(one -> isFor(one, entry)))
        .toList();
  }

  private static boolean isFor(Standing standing, TypeEntry entry) {
    return standing.place().filter(entry::equals).isPresent();
  }

  /** The coverage in words, such as {@code 14 of 110 places filled}. */
  public String coverageWords() {
    return held().size() + " of " + set.entries().size() + " places filled";
  }
}

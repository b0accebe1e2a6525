package fineweight.refresh.own;

import fineweight.clue.Field;
import fineweight.clue.FieldRole;
import fineweight.column.Appraiser;
import fineweight.identification.Identification;
import fineweight.identification.Identification.OneStandard;
import fineweight.identification.Identification.SeveralStandards;
import fineweight.standard.CoinStandard;
import fineweight.standard.Standards;
import fineweight.standard.Years;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Which standards the words of a list's line may mean, by the same way as an inventory's rows. */
final class CoinWords {
  private final Appraiser appraiser;
  private final Standards standards;

  CoinWords(Appraiser appraiser, Standards standards) {
    this.appraiser = appraiser;
    this.standards = standards;
  }

  /**
   * @param words a coin's words, or the id of a standard
   * @param years the dates that are meant; any if empty
   * @return none if no coin is known by these words with such a date
   */
  List<CoinStandard> meant(String words, Optional<Years> years) {
    Optional<CoinStandard> byId = standards.byId(words.strip());
    if (byId.isPresent()) {
      return List.of(byId.get());
    }
    List<CoinStandard> found = new ArrayList<>(of(words, year(years)));
    if (found.isEmpty() && years.isPresent()) {
      // A date of its own can be the only thing that a bare "dollar" lacks.
      found.addAll(of(words, Integer.toString(years.get().first())));
    }
    found.removeIf(
        standard -> years.filter(known -> !standard.issue().years().overlaps(known)).isPresent());
    return found;
  }

  private static String year(Optional<Years> years) {
    return years
        .filter(known -> known.last().isPresent() && known.last().getAsInt() == known.first())
        .map(known -> Integer.toString(known.first()))
        .orElse("");
  }

  private List<CoinStandard> of(String words, String year) {
    List<Field> fields = new ArrayList<>();
    fields.add(new Field(FieldRole.DESCRIPTION, words));
    if (!year.isEmpty()) {
      fields.add(new Field(FieldRole.YEAR, year));
    }
    Identification found = appraiser.appraise(fields).identification();
    if (found instanceof OneStandard one) {
      return List.of(one.standard());
    }
    return found instanceof SeveralStandards several
        ? several.candidates().stream().map(candidate -> candidate.standard()).toList()
        : List.of();
  }
}

package fineweight.identification;

import fineweight.clue.Clues;
import fineweight.clue.Dating;
import fineweight.clue.lexicon.Lexicon;
import fineweight.identification.Identification.OneStandard;
import fineweight.identification.Identification.SeveralStandards;
import fineweight.identification.candidate.Equivalence;
import fineweight.identification.candidate.Pool;
import fineweight.identification.candidate.When;
import fineweight.standard.Standards;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Finds the standard that clues point at. Immutable; the catalogue is indexed once. */
public final class CoinIdentifier {
  private final Pool pool;
  private final Questions questions;
  private final int latestYear;

  /**
   * @param standards what may be found
   * @param lexicon the word lists
   * @param home the catalogue key of the country that is meant where the words name none, such as
   *     {@code US}
   * @param latestYear the last year a coin can be dated, such as next year
   */
  public CoinIdentifier(Standards standards, Lexicon lexicon, String home, int latestYear) {
    this.pool = new Pool(standards, lexicon, home);
    this.questions = Questions.load();
    this.latestYear = latestYear;
  }

  /** What the row is, by the clues as they stand. */
  public Identification identify(Clues clues) {
    return answer(clues).identification();
  }

  /** What the row is, with the clues as they were understood in the end. */
  public Answer answer(Clues clues) {
    Reasons words = new Reasons(List.of(), List.of(), clues.wording().leftOver());
    Optional<Identification> blocked = Blockers.find(clues, words);
    if (blocked.isPresent()) {
      return new Answer(clues, blocked.get());
    }
    if (StatedPiece.isMeant(clues)) {
      return new Answer(clues, StatedPiece.of(clues, words));
    }
    Optional<Clues> junk = JunkSilver.of(clues, pool.home());
    if (junk.isPresent()) {
      return new Answer(junk.get(), search(junk.get(), JunkSilver.YEARS, JunkSilver.REMARKS));
    }
    Optional<Clues> counted = CountedUnits.of(clues, pool, first(clues));
    if (counted.isPresent()) {
      return new Answer(
          counted.get(), dated(counted.get(), List.of(CountedUnits.remark(clues, counted.get()))));
    }
    return new Answer(clues, dated(clues, List.of()));
  }

  private Identification dated(Clues clues, List<String> remarks) {
    Dating dating = clues.dating();
    return switch (dating.kind()) {
      case YEARS -> together(clues, dating.years(), remarks);
      case SHORT_YEARS ->
          together(
              clues, dating.years().stream().map(year -> fullYear(clues, year)).toList(), remarks);
      case SPAN -> search(clues, new When(dating.years().get(0), dating.years().get(1)), remarks);
      default -> search(clues, When.ANY, remarks);
    };
  }

  private When first(Clues clues) {
    Dating dating = clues.dating();
    return switch (dating.kind()) {
      case YEARS -> When.year(dating.years().get(0));
      case SHORT_YEARS -> When.year(fullYear(clues, dating.years().get(0)));
      case SPAN -> new When(dating.years().get(0), dating.years().get(1));
      default -> When.ANY;
    };
  }

  /**
   * The century in which such a coin was struck: the 20th before the 19th, but for the years that
   * the 21st has had.
   */
  private int fullYear(Clues clues, int twoDigits) {
    for (int century : new int[] {1900, 1800, 2000, 1700}) {
      int year = century + twoDigits;
      if (year <= latestYear && pool.has(clues, When.year(year))) {
        return year;
      }
    }
    return 1900 + twoDigits;
  }

  private Identification search(Clues clues, When when, List<String> remarks) {
    return new Search(pool, questions, latestYear, clues, when).find(remarks);
  }

  /** Several dates in one row: one answer if all have the same standard. */
  private Identification together(Clues clues, List<Integer> years, List<String> remarks) {
    Map<String, Candidate> different = new LinkedHashMap<>();
    Identification last = null;
    for (int year : years) {
      last = search(clues, When.year(year), remarks);
      if (years.size() == 1) {
        return last;
      }
      if (!(last instanceof OneStandard one)) {
        return last;
      }
      different.put(one.standard().id(), new Candidate(one.standard(), Integer.toString(year)));
    }
    if (Equivalence.same(different.values().stream().map(Candidate::standard).toList())) {
      return last;
    }
    return new SeveralStandards(
        List.copyOf(different.values()),
        "The row holds coins of different metal ("
            + years.stream().map(String::valueOf).collect(Collectors.joining(", "))
            + "). Which dates are how many? Give each its own row.",
        last.reasons());
  }
}

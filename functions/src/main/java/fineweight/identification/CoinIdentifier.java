package fineweight.identification;

import fineweight.clue.Clue;
import fineweight.clue.Clues;
import fineweight.clue.Dating;
import fineweight.clue.lexicon.Lexicon;
import fineweight.identification.Identification.NoStandard;
import fineweight.identification.Identification.OneStandard;
import fineweight.identification.Identification.SeveralStandards;
import fineweight.standard.CoinStandard;
import fineweight.standard.Standards;
import java.util.ArrayList;
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

  public Identification identify(Clues clues) {
    Reasons words = new Reasons(List.of(), List.of(), clues.wording().leftOver());
    Optional<Identification> blocked = Blockers.find(clues, words);
    if (blocked.isPresent()) {
      return blocked.get();
    }
    if (StatedPiece.isMeant(clues)) {
      return StatedPiece.of(clues, words);
    }
    Dating dating = clues.dating();
    return switch (dating.kind()) {
      case YEARS -> together(clues, dating.years());
      case SHORT_YEARS ->
          together(clues, dating.years().stream().map(year -> fullYear(clues, year)).toList());
      case SPAN -> forDate(clues, new When(dating.years().get(0), dating.years().get(1)));
      default -> forDate(clues, When.ANY);
    };
  }

  /**
   * The century in which such a coin was struck: the 20th before the 19th, but for the years that
   * the 21st has had.
   */
  private int fullYear(Clues clues, int twoDigits) {
    for (int century : new int[] {1900, 1800, 2000, 1700}) {
      int year = century + twoDigits;
      if (year <= latestYear && !drawn(clues, When.year(year)).isEmpty()) {
        return year;
      }
    }
    return 1900 + twoDigits;
  }

  private List<Profile> drawn(Clues clues, When when) {
    return pool
        .draw(clues, profile -> when.meets(profile.standard().issue().years()))
        .profiles()
        .stream()
        .filter(profile -> when.meets(profile.standard().issue().years()))
        .toList();
  }

  /** Several dates in one row: one answer if all have the same standard. */
  private Identification together(Clues clues, List<Integer> years) {
    if (years.size() == 1) {
      return forDate(clues, When.year(years.get(0)));
    }
    Map<String, Candidate> different = new LinkedHashMap<>();
    Identification last = null;
    for (int year : years) {
      last = forDate(clues, When.year(year));
      if (last instanceof OneStandard one) {
        different.put(one.standard().id(), new Candidate(one.standard(), Integer.toString(year)));
      } else {
        return last;
      }
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

  private Identification forDate(Clues clues, When when) {
    Reasons nothing = new Reasons(List.of(), List.of(), clues.wording().leftOver());
    if (when.year().isPresent() && when.first() > latestYear) {
      return new NoStandard(
          NoStandard.Kind.NOT_KNOWN, "the year " + when.first() + " lies in the future", nothing);
    }
    Pool.Drawn drawn = pool.draw(clues, profile -> when.meets(profile.standard().issue().years()));
    if (drawn.profiles().isEmpty()) {
      return new NoStandard(NoStandard.Kind.NOT_KNOWN, noCoin(clues), nothing);
    }
    List<Profile> dated =
        drawn.profiles().stream().filter(p -> when.meets(p.standard().issue().years())).toList();
    if (dated.isEmpty()) {
      return new NoStandard(NoStandard.Kind.NOT_KNOWN, noDate(drawn.profiles(), when), nothing);
    }
    Working working = new Working(dated);
    if (drawn.homeAssumed()) {
      working.remark("no country is named: taken as " + pool.home());
    }
    Weighing weighing = new Weighing(clues, when, working);
    weighing.weigh();
    MarkRemarks.add(clues, working);
    if (weighing.contradiction().isPresent()) {
      return contradicted(clues, when, drawn.profiles(), working, weighing.contradiction().get());
    }
    Optional<String> otherType = wrongType(clues, drawn.profiles(), working);
    if (otherType.isPresent()) {
      return contradicted(clues, when, drawn.profiles(), working, otherType.get());
    }
    return settle(clues, when, working);
  }

  /** A type that is named, exists in this denomination, but was not struck at this date. */
  private static Optional<String> wrongType(Clues clues, List<Profile> anyDate, Working working) {
    return clues.types().stream()
        .filter(type -> type.from() != fineweight.clue.FieldRole.NOTES)
        .filter(type -> working.open().stream().noneMatch(p -> p.hasType(type.value())))
        .filter(type -> anyDate.stream().anyMatch(p -> p.hasType(type.value())))
        .map(type -> "\"" + type.words() + "\" was not struck at this date")
        .findFirst();
  }

  private Identification settle(Clues clues, When when, Working working) {
    List<Profile> open = working.open();
    List<CoinStandard> standards = open.stream().map(Profile::standard).toList();
    if (open.size() > 1 && Equivalence.same(standards)) {
      CoinStandard lowest = Equivalence.lowest(standards);
      working.remark("several entries of the catalogue fit; their metal is the same within 0.5 %");
      return new OneStandard(lowest, working.reasons(clues.wording().leftOver()));
    }
    Optional<Profile> taken =
        open.size() > 1 ? questions.taken(open, when.year()) : Optional.empty();
    if (taken.isPresent()) {
      working.remark(
          "taken as "
              + Questions.describe(taken.get().standard(), when.year())
              + "; "
              + questions.question(open, when.year()));
      return new OneStandard(taken.get().standard(), working.reasons(clues.wording().leftOver()));
    }
    if (open.size() == 1) {
      return new OneStandard(open.get(0).standard(), working.reasons(clues.wording().leftOver()));
    }
    return several(
        open,
        when,
        questions.question(open, when.year()),
        working.reasons(clues.wording().leftOver()));
  }

  private SeveralStandards several(
      List<Profile> open, When when, String question, Reasons reasons) {
    return new SeveralStandards(questions.candidates(open, when.year()), question, reasons);
  }

  /** Words against the catalogue: what it may be instead, or no answer. */
  private Identification contradicted(
      Clues clues, When when, List<Profile> anyDate, Working working, String contradiction) {
    List<Profile> instead = new ArrayList<>(working.open());
    for (Profile other : anyDate) {
      if (!instead.contains(other) && isNear(other, when) && Weighing.fits(clues, other)) {
        instead.add(other);
      }
    }
    Reasons reasons = working.reasons(clues.wording().leftOver());
    String check =
        contradiction + " of " + Questions.describe(working.open().get(0).standard(), when.year());
    boolean differ = !Equivalence.same(instead.stream().map(Profile::standard).toList());
    if (instead.size() > working.open().size() && differ) {
      return several(
          instead, when, check + ". Are date and words read right? Which is it?", reasons);
    }
    return new NoStandard(
        NoStandard.Kind.NOT_KNOWN,
        check
            + ". Check the date and the words; have the piece looked at by someone who knows the series.",
        reasons);
  }

  private static boolean isNear(Profile other, When when) {
    return when.equals(When.ANY)
        || new When(when.first() - 3, when.last() + 3).meets(other.standard().issue().years());
  }

  private String noCoin(Clues clues) {
    String denomination =
        clues.denominations().isEmpty() ? "" : " \"" + clues.denominations().get(0).words() + "\"";
    String country = clues.country().map(Clue::words).map(words -> " of " + words).orElse("");
    if (denomination.isEmpty() && clues.types().isEmpty()) {
      return "the words name no coin that the catalogue knows";
    }
    String type =
        denomination.isEmpty() ? " \"" + clues.types().get(0).words() + "\"" : denomination;
    return "the catalogue has no" + type + country;
  }

  private static String noDate(List<Profile> profiles, When when) {
    String known =
        profiles.stream()
            .map(p -> p.standard().issue().years().toString())
            .distinct()
            .limit(6)
            .collect(Collectors.joining(", "));
    String denomination = profiles.get(0).standard().issue().denomination();
    return "the catalogue has no " + denomination + " of " + when + "; it has " + known;
  }
}

package fineweight.identification;

import fineweight.clue.Clue;
import fineweight.clue.Clues;
import fineweight.clue.FieldRole;
import fineweight.clue.Issuers;
import fineweight.clue.TypeName;
import fineweight.identification.Identification.NoStandard;
import fineweight.identification.Identification.OneStandard;
import fineweight.identification.Identification.SeveralStandards;
import fineweight.identification.candidate.Equivalence;
import fineweight.identification.candidate.Pool;
import fineweight.identification.candidate.Profile;
import fineweight.identification.candidate.When;
import fineweight.identification.weighing.Weighing;
import fineweight.identification.weighing.Working;
import fineweight.standard.CoinStandard;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The search for the standard of one row and one date. */
final class Search {
  private final Pool pool;
  private final Questions questions;
  private final int latestYear;
  private final Clues clues;
  private final When when;

  Search(Pool pool, Questions questions, int latestYear, Clues clues, When when) {
    this.pool = pool;
    this.questions = questions;
    this.latestYear = latestYear;
    this.clues = clues;
    this.when = when;
  }

  Identification find(List<String> remarks) {
    if (when.year().isPresent() && when.first() > latestYear) {
      return none("the year " + when.first() + " lies in the future", List.of());
    }
    Pool.Drawn drawn = pool.draw(clues, when);
    if (drawn.profiles().isEmpty()) {
      return none(noCoin(), List.of());
    }
    List<Profile> dated = drawn.profiles().stream().filter(when::meets).toList();
    if (dated.isEmpty()) {
      return none(noDate(drawn.profiles()), List.of());
    }
    Working working = new Working(dated);
    if (drawn.homeAssumed()) {
      working.remark("no country is named: taken as " + pool.home());
    }
    remarks.forEach(working::remark);
    clues.country().ifPresent(country -> country(country, working));
    clues
        .wording()
        .slips()
        .forEach(
            slip ->
                working.remark("\"" + slip.written() + "\" is read as \"" + slip.read() + "\""));
    Weighing.weigh(clues, when, working);
    return judged(drawn, working);
  }

  private static void country(Clue<Issuers> country, Working working) {
    switch (country.value().kind()) {
      case "hint" -> working.remark("no country is named: taken from \"" + country.words() + "\"");
      case "ancient", "token" ->
          working.remark(
              "the words \"" + country.words() + "\" also name coins that have no standard");
      default -> {
        // The country is plainly said.
      }
    }
  }

  private Identification judged(Pool.Drawn drawn, Working working) {
    if (working.contradiction().isPresent()) {
      return contradicted(drawn.profiles(), working, working.contradiction().get());
    }
    Optional<String> otherType = wrongType(drawn.profiles(), working);
    if (otherType.isPresent()) {
      return contradicted(drawn.profiles(), working, otherType.get());
    }
    strangeTypes(working);
    Optional<Identification> two = TwoCoins.find(drawn, pool, clues, when, working, questions);
    return two.isPresent() ? two.get() : settle(working);
  }

  /** A type that is named, exists in this denomination, but was not struck at this date. */
  private Optional<String> wrongType(List<Profile> anyDate, Working working) {
    List<Clue<TypeName>> types =
        clues.types().stream().filter(type -> type.from() != FieldRole.NOTES).toList();
    List<Clue<TypeName>> wrong =
        types.stream()
            .filter(type -> working.open().stream().noneMatch(p -> p.hasType(type.value())))
            .filter(type -> anyDate.stream().anyMatch(p -> p.hasType(type.value())))
            .toList();
    if (wrong.isEmpty()) {
      return Optional.empty();
    }
    String sentence = "\"" + wrong.get(0).words() + "\" was not struck at this date";
    if (wrong.size() < types.size()) {
      // "Peace 1922, Morgan 1921": another type that is said does fit this date.
      working.remark(sentence);
      return Optional.empty();
    }
    return Optional.of(sentence);
  }

  private void strangeTypes(Working working) {
    clues.types().stream()
        .filter(type -> type.from() != FieldRole.NOTES)
        .filter(type -> TwoCoins.isStrange(type, working.open(), working))
        .forEach(type -> working.remark("\"" + type.words() + "\" is no name of this coin"));
  }

  private Identification settle(Working working) {
    List<Profile> open = working.open();
    List<CoinStandard> standards = open.stream().map(Profile::standard).toList();
    if (open.size() > 1 && Equivalence.same(standards)) {
      working.remark("several entries of the catalogue fit; their metal is the same within 0.5 %");
      return new OneStandard(Equivalence.lowest(standards), reasons(working));
    }
    Optional<Profile> taken =
        open.size() > 1 ? questions.taken(open, when.year()) : Optional.empty();
    if (taken.isPresent()) {
      working.remark(
          "taken as "
              + Questions.describe(taken.get().standard(), when.year())
              + "; "
              + questions.question(open, when.year()));
      return new OneStandard(taken.get().standard(), reasons(working));
    }
    if (open.size() == 1) {
      return new OneStandard(open.get(0).standard(), reasons(working));
    }
    return several(open, questions.question(open, when.year()), working);
  }

  private SeveralStandards several(List<Profile> open, String question, Working working) {
    return new SeveralStandards(
        questions.candidates(open, when.year()), question, reasons(working));
  }

  private Reasons reasons(Working working) {
    return new Reasons(working.decidedBy(), working.remarks(), clues.wording().leftOver());
  }

  /** Words against the catalogue: what it may be instead, or no answer. */
  private Identification contradicted(
      List<Profile> anyDate, Working working, String contradiction) {
    List<Profile> instead = new ArrayList<>(working.open());
    for (Profile other : anyDate) {
      if (!instead.contains(other) && isNear(other) && Weighing.fits(clues, other)) {
        instead.add(other);
      }
    }
    String check =
        contradiction + " of " + Questions.describe(working.open().get(0).standard(), when.year());
    boolean differ = !Equivalence.same(instead.stream().map(Profile::standard).toList());
    if (instead.size() > working.open().size() && differ) {
      return several(instead, check + ". Are date and words read right? Which is it?", working);
    }
    return none(
        check
            + ". Check the date and the words; have the piece looked at by someone who knows the series.",
        working.remarks());
  }

  private boolean isNear(Profile other) {
    return when.equals(When.ANY) || new When(when.first() - 3, when.last() + 3).meets(other);
  }

  private Identification none(String reason, List<String> remarks) {
    return new NoStandard(
        NoStandard.Kind.NOT_KNOWN,
        reason,
        new Reasons(List.of(), remarks, clues.wording().leftOver()));
  }

  private String noCoin() {
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

  private String noDate(List<Profile> profiles) {
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

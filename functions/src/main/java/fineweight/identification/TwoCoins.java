package fineweight.identification;

import fineweight.clue.Clue;
import fineweight.clue.Clues;
import fineweight.clue.FieldRole;
import fineweight.clue.TypeName;
import fineweight.clue.word.Word;
import fineweight.clue.word.Words;
import fineweight.identification.Identification.SeveralStandards;
import fineweight.identification.candidate.Equivalence;
import fineweight.identification.candidate.Pool;
import fineweight.identification.candidate.Profile;
import fineweight.identification.candidate.When;
import fineweight.identification.weighing.Weighing;
import fineweight.identification.weighing.Working;
import fineweight.standard.Tell;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Words that name two different coins: "quarter and dime", "half dollar, wheat". */
final class TwoCoins {
  private TwoCoins() {}

  /** The question which of them it is; empty if the words name one, or coins of the same metal. */
  static Optional<Identification> find(
      Pool.Drawn drawn, Pool pool, Clues clues, When when, Working working, Questions questions) {
    Set<Profile> open = new LinkedHashSet<>(working.open());
    List<String> named = new ArrayList<>();
    if (drawn.namesSeveral()) {
      clues.denominations().forEach(clue -> named.add(clue.words()));
      if (clues.condition().mark("error").isPresent()) {
        // "nickel on silver dime planchet": the metal said decides nothing.
        Working apart = new Working(drawn.profiles().stream().filter(when::meets).toList());
        Weighing.weigh(clues.withoutMetal(), when, apart);
        open.addAll(apart.open());
      }
    }
    clues.types().stream()
        .filter(type -> !type.value().implied().isEmpty())
        .filter(type -> isStrange(type, drawn.profiles(), working))
        .filter(type -> open.addAll(pool.ofType(type.value(), drawn.profiles(), when)))
        .forEach(type -> named.add(type.words()));
    List<Profile> all = List.copyOf(open);
    boolean same = Equivalence.same(all.stream().map(Profile::standard).toList());
    return named.isEmpty() || same || all.size() < 2
        ? Optional.empty()
        : Optional.of(
            new SeveralStandards(
                questions.candidates(all, when.year()),
                question(named),
                new Reasons(working.decidedBy(), working.remarks(), clues.wording().leftOver())));
  }

  private static String question(List<String> named) {
    return "The words name more than one coin ("
        + named.stream().distinct().collect(Collectors.joining(", "))
        + "). Which is it, or which pieces belong in rows of their own?";
  }

  /** A type's name that fits no coin of the denomination and that no tell of the coin holds. */
  static boolean isStrange(Clue<TypeName> type, List<Profile> anyDate, Working working) {
    return type.from() != FieldRole.NOTES
        && anyDate.stream().noneMatch(p -> p.hasType(type.value()))
        && working.open().stream().noneMatch(p -> isTold(p, type.words()));
  }

  private static boolean isTold(Profile profile, String typeWords) {
    Set<String> words = Words.of(typeWords).stream().map(Word::text).collect(Collectors.toSet());
    return Stream.concat(
            profile.standard().distinction().onlyIf().stream(),
            profile.standard().distinction().tells().stream())
        .map(Tell::phrase)
        .flatMap(phrase -> Stream.of(phrase.split(" ")))
        .anyMatch(words::contains);
  }
}

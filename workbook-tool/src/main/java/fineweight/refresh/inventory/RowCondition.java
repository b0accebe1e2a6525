package fineweight.refresh.inventory;

import fineweight.clue.Condition;
import fineweight.grade.Grade;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** The preservation of a row's pieces, as its words say it. */
public final class RowCondition {
  /** The remarks that lower a piece below its grade. */
  private static final Set<String> FAULTS =
      Set.of(
          "mounted",
          "holed",
          "plugged",
          "cut",
          "clipped",
          "bent",
          "cleaned",
          "polished",
          "scratched",
          "corroded",
          "environmental",
          "damaged");

  private RowCondition() {}

  public static fineweight.grade.Condition of(Condition said) {
    Optional<Grade> grade = said.grade().flatMap(clue -> grade(clue.words(), clue.value()));
    boolean certified = said.certificate().isPresent() || said.mark("certified").isPresent();
    return new fineweight.grade.Condition(
        grade, certified && said.mark("raw").isEmpty(), !faults(said).isEmpty());
  }

  private static Optional<Grade> grade(String words, int number) {
    return Grade.read(words)
        .or(() -> number >= 1 && number <= 70 ? Optional.of(Grade.of(number)) : Optional.empty());
  }

  /** The faults in the owner's own words, each once. */
  public static List<String> faults(Condition said) {
    List<String> faults = new ArrayList<>();
    said.marks().stream()
        .filter(mark -> FAULTS.contains(mark.value()))
        .map(mark -> mark.words().toLowerCase(Locale.ROOT))
        .filter(words -> !faults.contains(words))
        .forEach(faults::add);
    return faults;
  }
}

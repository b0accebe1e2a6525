package fineweight.grade;

import java.util.Objects;
import java.util.Optional;

/**
 * What is known of a piece's preservation. Immutable.
 *
 * @param grade empty if none is recorded
 * @param certified whether an independent certifier gave the grade; a grade from anyone else is an
 *     opinion, and the piece is raw
 * @param damaged holed, mounted, cleaned, bent or otherwise worth less than its grade
 */
public record Condition(Optional<Grade> grade, boolean certified, boolean damaged) {
  /** Nothing recorded: raw, no grade, no damage known. */
  public static final Condition UNKNOWN = new Condition(Optional.empty(), false, false);

  public Condition {
    Objects.requireNonNull(grade, "grade");
  }

  public static Condition raw(Grade grade) {
    return new Condition(Optional.of(grade), false, false);
  }

  public static Condition certified(Grade grade) {
    return new Condition(Optional.of(grade), true, false);
  }

  public Condition withDamage() {
    return new Condition(grade, certified, true);
  }

  /** The words for a sentence, such as {@code certified 65} or {@code raw 20 to 35, damaged}. */
  public String words() {
    return (certified ? "certified" : "raw")
        + grade.map(known -> " " + known).orElse(", no grade")
        + (damaged ? ", damaged" : "");
  }
}

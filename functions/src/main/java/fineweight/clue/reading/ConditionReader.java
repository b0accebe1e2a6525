package fineweight.clue.reading;

import fineweight.clue.Clue;
import fineweight.clue.Condition;
import fineweight.clue.FieldRole;
import fineweight.clue.lexicon.Meaning;
import fineweight.clue.passage.Hit;
import fineweight.clue.passage.Passage;
import fineweight.clue.word.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads grade, certificate and remarks. */
final class ConditionReader {
  private static final Pattern GRADE_NUMBER = Pattern.compile("[1-9]|[1-6]\\d|70");

  private ConditionReader() {}

  static Condition read(List<Passage> passages) {
    Optional<Clue<Integer>> grade = Optional.empty();
    Optional<Clue<String>> certificate = Optional.empty();
    List<Clue<String>> marks = new ArrayList<>();
    for (Passage passage : passages) {
      if (passage.role() == FieldRole.CERTIFICATE) {
        certificate =
            Optional.of(new Clue<>(passage.text().strip(), passage.text(), passage.role()));
        passage.take(0, passage.size());
      } else if (passage.role().isText()
          || passage.role() == FieldRole.GRADE
          || passage.role() == FieldRole.METAL) {
        marks(passage, marks);
      }
      if (grade.isEmpty() && (passage.role() == FieldRole.GRADE || passage.role().isText())) {
        grade = grade(passage);
      }
      if (passage.role() == FieldRole.GRADE) {
        passage.take(0, passage.size());
      }
    }
    return new Condition(grade, certificate, marks);
  }

  private static void marks(Passage passage, List<Clue<String>> marks) {
    if (passage.role() == FieldRole.DESCRIPTION) {
      passage.hits().stream()
          .filter(hit -> hit.namesCoin() && passage.isPlural(hit))
          .map(hit -> new Clue<>("plural", passage.raw(hit.at(), hit.end()), passage.role()))
          .forEach(marks::add);
    }
    for (Hit hit : passage.hits()) {
      boolean negated = passage.isNegated(hit.at());
      boolean origin = hit.isMark("set") && isOrigin(passage, hit.at());
      for (Meaning.Mark mark : hit.all(Meaning.Mark.class)) {
        if (origin) {
          passage.take(hit.at(), hit.end());
          continue;
        }
        String kind = negated ? "no " + mark.kind() : mark.kind();
        marks.add(new Clue<>(kind, passage.raw(hit.at(), hit.end()), passage.role()));
        passage.take(hit.at(), hit.end());
      }
    }
  }

  /** "from a collector set" says where the coin was, not what the row is. */
  private static boolean isOrigin(Passage passage, int at) {
    for (int i = at - 1; i >= at - 3; i--) {
      if (passage.matches(i, "from|ex|aus|uit|du|da")) {
        return true;
      }
    }
    return false;
  }

  private static Optional<Clue<Integer>> grade(Passage passage) {
    for (Hit hit : passage.hits()) {
      Optional<Meaning.GradeName> name = hit.meaning(Meaning.GradeName.class);
      boolean place =
          passage.role() == FieldRole.GRADE
              || (name.isPresent() && !name.get().columnOnly() && looksLikeGrade(passage, hit));
      if (name.isPresent() && place) {
        int value = numberAfter(passage, hit.end()).orElse(name.get().grade());
        passage.take(hit.at(), hit.end());
        return Optional.of(new Clue<>(value, passage.raw(hit.at(), hit.end()), passage.role()));
      }
    }
    return Optional.empty();
  }

  /** In free text a grade stands in capitals: "VF", "MS-63"; "fine" alone may be the fineness. */
  private static boolean looksLikeGrade(Passage passage, Hit hit) {
    boolean capitals = true;
    for (int i = hit.at(); i < hit.end(); i++) {
      Word word = passage.word(i);
      capitals &= !word.isLetters() || word.isCapitals();
    }
    return capitals
        && passage.word(hit.at()).text().length() >= 2
        && passage.isFree(hit.at(), hit.end());
  }

  private static Optional<Integer> numberAfter(Passage passage, int end) {
    int at = passage.isSign(end, "-") ? end + 1 : end;
    Optional<Word> number =
        passage.at(at).filter(word -> GRADE_NUMBER.matcher(word.text()).matches());
    if (number.isEmpty() || passage.isTaken(at)) {
      return Optional.empty();
    }
    passage.take(at, at + 1);
    return Optional.of(Integer.parseInt(number.get().text()));
  }
}

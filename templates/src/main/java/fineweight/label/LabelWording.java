package fineweight.label;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What labels say, line by line: words with fields in braces, lines parted by bars. A line whose
 * fields are all empty is left out. Faults and a wanted price are said on every label, on a line of
 * their own where the wording has none. Immutable.
 */
public final class LabelWording {
  /** What labels say unless their owner wants something else. */
  public static final String USUAL =
      "{denomination}, {type}|{country} {date}|{metal}, {fine}|{count}|{grade} {holder}|{faults}|No {number}, {place}|{price}";

  private static final Pattern FIELD = Pattern.compile("\\{([^{}]*)}");
  private static final Set<LabelField> NEVER_LEFT_OUT =
      EnumSet.of(LabelField.FAULTS, LabelField.COUNT, LabelField.PRICE);

  private final List<String> lines = new ArrayList<>();

  private LabelWording(List<String> lines) {
    this.lines.addAll(lines);
  }

  /**
   * @throws IllegalArgumentException if a word in braces is no field
   */
  public static LabelWording read(String words) {
    Objects.requireNonNull(words, "words");
    Set<LabelField> used = EnumSet.noneOf(LabelField.class);
    Matcher field = FIELD.matcher(words);
    while (field.find()) {
      String word = field.group(1);
      used.add(LabelField.of(word).orElseThrow(() -> unknown(word)));
    }
    if (used.isEmpty()) {
      throw new IllegalArgumentException(
          "the wording \"" + words + "\" names no field; write one such as {type}");
    }
    List<String> lines = new ArrayList<>(List.of(words.split("\\|")));
    for (LabelField never : NEVER_LEFT_OUT) {
      if (!used.contains(never)) {
        lines.add("{" + never.word() + "}");
      }
    }
    return new LabelWording(lines);
  }

  private static IllegalArgumentException unknown(String word) {
    return new IllegalArgumentException(
        "{"
            + word
            + "} is no field of a label; there are "
            + Stream.of(LabelField.values())
                .map(LabelField::word)
                .collect(Collectors.joining(", ")));
  }

  /** The label of a piece; fields that are absent are empty. */
  public Label of(Map<LabelField, String> piece) {
    List<String> said = new ArrayList<>();
    for (String line : lines) {
      boolean empty =
          FIELD.matcher(line).results().allMatch(field -> value(field.group(1), piece).isEmpty());
      boolean fixed = !FIELD.matcher(line).find();
      if (fixed || !empty) {
        said.add(filled(line, piece));
      }
    }
    return new Label(said.stream().filter(line -> !line.isEmpty()).toList());
  }

  private static String filled(String line, Map<LabelField, String> piece) {
    String filled =
        FIELD
            .matcher(line)
            .replaceAll(
                (MatchResult field) -> Matcher.quoteReplacement(value(field.group(1), piece)));
    // What parts two fields goes with the one that is empty.
    return filled
        .replaceAll("\\s+", " ")
        .replaceAll(" ([,;])", "$1")
        .replaceAll("([,;])(\\s*[,;])+", "$1")
        .replaceAll("^[\\s,;]+|[\\s,;]+$", "");
  }

  private static String value(String word, Map<LabelField, String> piece) {
    return LabelField.of(word).map(field -> piece.getOrDefault(field, "")).orElse("").strip();
  }
}

package fineweight.refresh.worth;

import fineweight.column.Appraisal;
import fineweight.column.RowState;
import fineweight.identification.Identification.OneStandard;
import fineweight.identification.Identification.SeveralStandards;
import fineweight.metal.Metal;
import fineweight.refresh.inventory.ReadRow;
import fineweight.standard.Issue;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Sums over rows by what they have in common. Each row counts once in every division. */
public final class Groups {
  private final Worths worths;
  private final Map<Key, Totals> sums = new HashMap<>();

  private record Key(Optional<Metal> metal, String type, RowState state) {}

  public Groups(Worths worths, List<ReadRow> rows) {
    this.worths = worths;
    for (ReadRow row : rows) {
      Appraisal appraisal = row.appraisal();
      Key key = new Key(mainMetal(appraisal), type(appraisal), appraisal.state());
      sums.computeIfAbsent(key, k -> new Totals(worths)).add(row);
    }
  }

  /** The precious metal that a row is worth most for; with no price, the one it holds most of. */
  private Optional<Metal> mainMetal(Appraisal appraisal) {
    return appraisal.figures().content().masses().entrySet().stream()
        .filter(entry -> entry.getKey().isPrecious())
        .max(
            Comparator.comparing(
                entry ->
                    worths
                        .spot()
                        .prices()
                        .of(entry.getKey())
                        .map(price -> entry.getValue().grams().multiply(price.perTroyOunce()))
                        .orElse(entry.getValue().grams())))
        .map(Map.Entry::getKey);
  }

  /** "dollar, Morgan (US)". */
  private static String type(Appraisal appraisal) {
    if (appraisal.identification() instanceof OneStandard one) {
      Issue issue = one.standard().issue();
      boolean single = issue.types().size() == 1;
      return issue.denomination()
          + (single ? ", " + issue.types().get(0) : "")
          + place(issue.country());
    }
    if (appraisal.identification() instanceof SeveralStandards several) {
      Issue issue = several.candidates().get(0).standard().issue();
      return issue.denomination() + place(issue.country()) + ", not settled";
    }
    return appraisal.state() == RowState.NOT_KNOWN ? "not known" : "no type of the catalogue";
  }

  private static String place(String country) {
    return country.isEmpty() ? "" : " (" + country + ")";
  }

  /** By main metal, in the order of the price lists; what has none comes last. */
  public Map<String, Totals> byMetal() {
    Map<String, Totals> found =
        merged(
            key ->
                key.metal()
                    .map(Metal::word)
                    .orElse(key.state() == RowState.NOT_KNOWN ? "not known" : "no precious metal"));
    Map<String, Totals> ordered = new LinkedHashMap<>();
    Spot.precious().forEach(metal -> move(found, ordered, metal.word()));
    move(found, ordered, "no precious metal");
    move(found, ordered, "not known");
    return ordered;
  }

  /** By the state of the rows, as their cells show it. */
  public Map<String, Totals> byState() {
    Map<String, Totals> found = merged(key -> key.state().label());
    Map<String, Totals> ordered = new LinkedHashMap<>();
    for (RowState state : RowState.values()) {
      move(found, ordered, state.label());
    }
    return ordered;
  }

  /** By type, the one of most worth first. */
  public Map<String, Totals> byType() {
    Map<String, Totals> ordered = new LinkedHashMap<>();
    merged(Key::type).entrySet().stream()
        .sorted(
            Comparator.comparing((Map.Entry<String, Totals> entry) -> entry.getValue().worth())
                .reversed()
                .thenComparing(Map.Entry::getKey))
        .forEach(entry -> ordered.put(entry.getKey(), entry.getValue()));
    return ordered;
  }

  private static void move(Map<String, Totals> from, Map<String, Totals> to, String key) {
    if (from.containsKey(key)) {
      to.put(key, from.get(key));
    }
  }

  private Map<String, Totals> merged(Function<Key, String> by) {
    Map<String, Totals> merged = new HashMap<>();
    sums.forEach(
        (key, sum) -> merged.computeIfAbsent(by.apply(key), k -> new Totals(worths)).add(sum));
    return merged;
  }

  /** One sum of several. */
  public Totals together(Iterable<Totals> parts) {
    Totals sum = new Totals(worths);
    parts.forEach(sum::add);
    return sum;
  }
}

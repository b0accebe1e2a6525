package fineweight.identification;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.clue.Field;
import fineweight.clue.FieldRole;
import fineweight.metal.FineContent;
import fineweight.metal.Metal;
import fineweight.standard.CoinStandard;
import fineweight.standard.Distinction;
import fineweight.standard.Mints;
import fineweight.standard.Tell;
import fineweight.standard.Years;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Every standard of the catalogue can be reached: a description made of its own country,
 * denomination, type, year, mint mark and the words that set it apart is answered with its metal,
 * or with a question that offers it.
 */
class CatalogueReachTest {
  private static final int LATEST = 2026;

  /**
   * A row whose own words name two alloys ("copper or billon"), and a silver-plated coin, which
   * gets no figure.
   */
  private static final Set<String> NOT_BY_OWN_WORDS =
      Set.of("de-vereinskreuzer-copper", "nl-5e-2011-plated");

  @Test
  void everyStandardOfEveryYearIsAnsweredOrOffered() throws IOException {
    int answered = 0;
    int offered = 0;
    List<String> unreached = new ArrayList<>();
    for (CoinStandard standard : Answered.STANDARDS.all()) {
      if (standard.issue().country().equals("generic")
          || NOT_BY_OWN_WORDS.contains(standard.id())) {
        continue;
      }
      for (int year : years(standard)) {
        List<Field> fields = fields(standard, year);
        Answered got = Answered.to(fields);
        if (got.kind().equals("ask")) {
          boolean offers =
              got.standards().stream().anyMatch(s -> sameMetal(s.fineContent(), standard));
          offered += offers ? 1 : 0;
          note(unreached, offers, standard, year, fields, got);
        } else {
          boolean same = !got.kind().equals("none") && sameMetal(got.content(), standard);
          answered += same ? 1 : 0;
          note(unreached, same, standard, year, fields, got);
        }
      }
    }
    System.out.println(
        "catalogue: answered "
            + answered
            + ", offered "
            + offered
            + ", not reached "
            + unreached.size());
    Files.write(Path.of("target", "reach-report.txt"), unreached);
    assertThat(unreached).isEmpty();
  }

  private static void note(
      List<String> unreached,
      boolean reached,
      CoinStandard standard,
      int year,
      List<Field> fields,
      Answered got) {
    if (!reached) {
      unreached.add(
          standard.id()
              + " "
              + year
              + " "
              + fields.stream().map(Field::text).toList()
              + ": "
              + got.said());
    }
  }

  private static List<Integer> years(CoinStandard standard) {
    List<Integer> years = new ArrayList<>();
    for (Years.Range range : standard.issue().years().ranges()) {
      int last = Math.min(range.last(), LATEST);
      for (int year = Math.max(range.first(), 1000); year <= last; year++) {
        years.add(year);
      }
    }
    return years;
  }

  private static List<Field> fields(CoinStandard standard, int year) {
    List<Field> fields = new ArrayList<>();
    fields.add(new Field(FieldRole.COUNTRY, standard.issue().country()));
    fields.add(new Field(FieldRole.DENOMINATION, standard.issue().denomination()));
    fields.add(new Field(FieldRole.YEAR, Integer.toString(year)));
    Distinction distinction = standard.distinction();
    List<String> words = new ArrayList<>();
    standard.issue().types().stream().findFirst().ifPresent(words::add);
    words.add(distinction.variantIn(year));
    tell(distinction.onlyIf(), year).ifPresent(words::add);
    tell(distinction.tells(), year).ifPresent(words::add);
    String description = String.join(", ", words.stream().filter(w -> !w.isBlank()).toList());
    if (!description.isBlank()) {
      fields.add(new Field(FieldRole.DESCRIPTION, description));
    }
    mint(standard.issue().mints(), distinction, year)
        .ifPresent(letters -> fields.add(new Field(FieldRole.MINT, letters)));
    return fields;
  }

  private static Optional<String> tell(List<Tell> tells, int year) {
    return tells.stream()
        .filter(tell -> tell.holdsIn(year))
        .map(Tell::phrase)
        .filter(phrase -> !phrase.startsWith("mint "))
        .findFirst();
  }

  private static Optional<String> mint(Mints mints, Distinction distinction, int year) {
    Optional<String> told =
        distinction.onlyIf().stream()
            .filter(tell -> tell.holdsIn(year) && tell.phrase().matches("mint .{1,2}"))
            .map(tell -> tell.phrase().substring(5).toUpperCase(java.util.Locale.ROOT))
            .findFirst();
    if (told.isPresent()) {
      return told;
    }
    return mints.marks().stream()
        .filter(mark -> mints.allow(mark.letters(), year) && mark.letters().matches("\\p{Lu}+"))
        .map(Mints.Mark::letters)
        .findFirst();
  }

  private static boolean sameMetal(FineContent content, CoinStandard standard) {
    for (Metal metal : Metal.values()) {
      if (metal.isPrecious()) {
        BigDecimal wanted = standard.fineContent().of(metal).grams();
        BigDecimal found = content.of(metal).grams();
        BigDecimal slack =
            wanted
                .multiply(new BigDecimal("0.005"))
                .max(isMain(standard, metal) ? BigDecimal.ZERO : new BigDecimal("1.5"));
        if (wanted.subtract(found).abs().compareTo(slack) > 0) {
          return false;
        }
      }
    }
    return true;
  }

  /** "silver-plated copper" gets no figure, and holds none. */
  private static boolean isNothingToValue(Answered got) {
    return got.identification() instanceof Identification.NoStandard none
        && none.kind() == Identification.NoStandard.Kind.NOT_BY_METAL;
  }

  private static boolean isMain(CoinStandard standard, Metal metal) {
    return standard
        .specification()
        .composition()
        .mainPreciousMetal()
        .filter(metal::equals)
        .isPresent();
  }
}

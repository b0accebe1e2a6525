package fineweight.identification;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import fineweight.identification.candidate.Profile;
import fineweight.quantity.Mass;
import fineweight.standard.CoinStandard;
import fineweight.standard.Years;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * The questions that settle a known doubt, read from resource files; a plain one is made where
 * there is none.
 */
final class Questions {
  private static final List<String> FILES =
      List.of("questions-americas.csv", "questions-eurasia.csv");

  private final List<Known> known = new ArrayList<>();

  /**
   * @param answers by id
   * @param take the id to take without asking, because the others hold the same metal or are error
   *     coins; may be empty
   */
  private record Known(
      Set<String> ids,
      Optional<Years> years,
      String question,
      Map<String, String> answers,
      String take) {
    boolean fits(Set<String> wanted, OptionalInt year) {
      return ids.containsAll(wanted)
          && (years.isEmpty() || year.isEmpty() || years.get().contains(year.getAsInt()));
    }
  }

  static Questions load() {
    Questions questions = new Questions();
    for (String file : FILES) {
      questions.read(file);
    }
    return questions;
  }

  private void read(String file) {
    InputStream bytes = Questions.class.getResourceAsStream("/fineweight/standard/" + file);
    if (bytes == null) {
      throw new IllegalStateException(
          "the list of questions " + file + " is missing from the program");
    }
    try (CsvReader<NamedCsvRecord> rows =
        CsvReader.builder()
            .ofNamedCsvRecord(new InputStreamReader(bytes, StandardCharsets.UTF_8))) {
      rows.forEach(this::add);
    } catch (IOException failed) {
      throw new UncheckedIOException("cannot read " + file, failed);
    }
  }

  private void add(NamedCsvRecord row) {
    List<String> ids = List.of(row.getField("standards").strip().split("\\s+"));
    String[] texts = row.getField("answers").split("\\|", -1);
    Map<String, String> answers = new LinkedHashMap<>();
    for (int i = 0; i < ids.size() && i < texts.length; i++) {
      answers.put(ids.get(i), texts[i].strip());
    }
    String years = row.getField("years").strip();
    known.add(
        new Known(
            Set.copyOf(ids),
            years.isEmpty() ? Optional.empty() : Optional.of(Years.parse(years)),
            row.getField("question").strip(),
            answers,
            row.getField("take").strip()));
  }

  private Optional<Known> find(List<Profile> open, OptionalInt year) {
    Set<String> wanted = new HashSet<>();
    open.forEach(profile -> wanted.add(profile.standard().id()));
    return known.stream()
        .filter(entry -> entry.fits(wanted, year))
        .min(java.util.Comparator.comparingInt(entry -> entry.ids().size()));
  }

  /** The standard to take without asking, if there is one. */
  Optional<Profile> taken(List<Profile> open, OptionalInt year) {
    return find(open, year)
        .flatMap(
            entry ->
                open.stream()
                    .filter(profile -> profile.standard().id().equals(entry.take()))
                    .findFirst());
  }

  String question(List<Profile> open, OptionalInt year) {
    return find(open, year).map(Known::question).orElseGet(() -> plainQuestion(open, year));
  }

  List<Candidate> candidates(List<Profile> open, OptionalInt year) {
    Optional<Known> entry = find(open, year);
    List<Candidate> candidates = new ArrayList<>();
    Set<String> used = new HashSet<>();
    for (Profile profile : open) {
      CoinStandard standard = profile.standard();
      String answer =
          entry.map(found -> found.answers().getOrDefault(standard.id(), "")).orElse("");
      if (answer.isEmpty() || !used.add(answer)) {
        answer = describe(standard, year);
        used.add(answer);
      }
      candidates.add(new Candidate(standard, answer));
    }
    return candidates;
  }

  private static String plainQuestion(List<Profile> open, OptionalInt year) {
    StringBuilder question = new StringBuilder("Which of these is it: ");
    for (int i = 0; i < open.size() && i < 6; i++) {
      question
          .append(i == 0 ? "" : i == open.size() - 1 ? " or " : ", ")
          .append(describe(open.get(i).standard(), year));
    }
    return question.append(open.size() > 6 ? " or another?" : "?").toString();
  }

  /** Type, what marks it out, and what a scale shows. */
  static String describe(CoinStandard standard, OptionalInt year) {
    String types = String.join("; ", standard.issue().types());
    String variant = variantIn(standard.distinction().variant(), year);
    String mass =
        standard
            .specification()
            .grossMass()
            .map(Mass::grams)
            .map(grams -> grams.toPlainString() + " g")
            .orElse("");
    List<String> parts = new ArrayList<>();
    parts.add(types.isEmpty() ? standard.issue().denomination() : types);
    if (!variant.isEmpty()) {
      parts.add(variant);
    }
    standard
        .specification()
        .composition()
        .mainPreciousMetal()
        .ifPresentOrElse(
            metal ->
                parts.add(
                    metal.word()
                        + " "
                        + standard.specification().composition().fineness(metal).get()),
            () -> parts.add("no precious metal"));
    if (!mass.isEmpty()) {
      parts.add(mass);
    }
    return String.join(", ", parts) + " (" + standard.id() + ")";
  }

  /** Of a variant such as "1853: arrows; 1873: no arrows" the part for the year. */
  private static String variantIn(String variant, OptionalInt year) {
    List<String> parts = new ArrayList<>();
    for (String part : variant.split(";", -1)) {
      int colon = part.indexOf(':');
      String head = colon < 0 ? "" : part.substring(0, colon).strip();
      if (head.matches("\\d{3,4}(-\\d{3,4})?([;,] ?\\d{3,4}(-\\d{3,4})?)*")) {
        Years years = Years.parse(head.replace(',', ';').replace(" ", ""));
        if (year.isPresent() && years.contains(year.getAsInt())) {
          parts.add(part.substring(colon + 1).strip());
        }
      } else if (!part.isBlank()) {
        parts.add(part.strip());
      }
    }
    return String.join("; ", parts);
  }
}

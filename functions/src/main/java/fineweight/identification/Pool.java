package fineweight.identification;

import fineweight.clue.Clue;
import fineweight.clue.Clues;
import fineweight.clue.Denomination;
import fineweight.clue.TypeName;
import fineweight.clue.lexicon.Face;
import fineweight.clue.lexicon.Lexicon;
import fineweight.standard.CoinStandard;
import fineweight.standard.Standards;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** The standards that country and denomination leave open, whatever the date. */
final class Pool {
  private final Map<String, List<Profile>> byCountry = new LinkedHashMap<>();
  private final List<Profile> all = new ArrayList<>();
  private final String home;

  Pool(Standards standards, Lexicon lexicon, String home) {
    this.home = home;
    for (CoinStandard standard : standards.all()) {
      Profile profile = new Profile(standard, lexicon);
      all.add(profile);
      byCountry
          .computeIfAbsent(standard.issue().country(), unused -> new ArrayList<>())
          .add(profile);
    }
  }

  String home() {
    return home;
  }

  /**
   * @param profiles the standards open
   * @param homeAssumed whether the collector's own country was taken because the words name none
   */
  record Drawn(List<Profile> profiles, boolean homeAssumed) {}

  /**
   * The standards that fit country and denomination; the home country first where the words name
   * none.
   */
  Drawn draw(Clues clues, Predicate<Profile> dated) {
    if (clues.country().isPresent() && !clues.country().get().value().keys().isEmpty()) {
      List<Profile> said = new ArrayList<>();
      clues
          .country()
          .get()
          .value()
          .keys()
          .forEach(key -> said.addAll(byCountry.getOrDefault(key, List.of())));
      return new Drawn(fitting(said, clues), false);
    }
    Set<String> bound = boundCountries(clues);
    if (bound.isEmpty() || bound.contains(home)) {
      List<Profile> here = fitting(byCountry.getOrDefault(home, List.of()), clues);
      if (here.stream().anyMatch(dated)) {
        return new Drawn(here, true);
      }
    }
    List<Profile> elsewhere =
        bound.isEmpty()
            ? all
            : all.stream().filter(p -> bound.contains(p.standard().issue().country())).toList();
    return new Drawn(fitting(elsewhere, clues), false);
  }

  /** Countries to which a coin's or type's own name belongs: a florin is no American coin. */
  private static Set<String> boundCountries(Clues clues) {
    Set<String> bound = new LinkedHashSet<>();
    for (Clue<Denomination> denomination : clues.denominations()) {
      bound.addAll(denomination.value().countries());
    }
    for (Clue<TypeName> type : clues.types()) {
      bound.addAll(type.value().countries());
    }
    return bound;
  }

  private static List<Profile> fitting(List<Profile> profiles, Clues clues) {
    List<Profile> fit = byFace(profiles, clues);
    Optional<BigDecimal> ounces = clues.physical().measures().statedOunces().map(Clue::value);
    if (ounces.isPresent()) {
      List<Profile> sized =
          fit.stream()
              .filter(p -> p.ounces().filter(size -> size.compareTo(ounces.get()) == 0).isPresent())
              .toList();
      return sized.isEmpty() ? fit : sized;
    }
    return fit;
  }

  private static List<Profile> byFace(List<Profile> profiles, Clues clues) {
    List<List<Face>> wanted = new ArrayList<>();
    clues.denominations().forEach(clue -> wanted.add(clue.value().faces()));
    if (wanted.isEmpty()) {
      return byTypeAlone(profiles, clues);
    }
    List<Profile> every =
        profiles.stream().filter(p -> wanted.stream().allMatch(p::hasFace)).toList();
    if (!every.isEmpty()) {
      return every;
    }
    return profiles.stream().filter(p -> p.hasFace(wanted.get(0))).toList();
  }

  private static List<Profile> byTypeAlone(List<Profile> profiles, Clues clues) {
    if (clues.types().isEmpty()) {
      boolean sized = clues.physical().measures().statedOunces().isPresent();
      return sized && clues.country().isPresent()
          ? profiles.stream().filter(p -> p.ounces().isPresent()).toList()
          : List.of();
    }
    for (Clue<TypeName> type : clues.types()) {
      List<Face> implied = type.value().implied();
      List<Profile> named =
          profiles.stream()
              .filter(
                  p ->
                      p.hasType(type.value())
                          && (implied.isEmpty() || p.hasFace(implied) || p.ounces().isPresent()))
              .toList();
      if (!named.isEmpty()) {
        return named;
      }
    }
    return List.of();
  }
}

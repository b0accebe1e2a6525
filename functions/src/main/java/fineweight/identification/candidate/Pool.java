package fineweight.identification.candidate;

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

/** The standards that country and denomination leave open, whatever the date. */
public final class Pool {
  /** Gold coins were withdrawn from use by then nearly everywhere. */
  private static final int LAST_GOLD_IN_USE = 1933;

  private final Map<String, List<Profile>> byCountry = new LinkedHashMap<>();
  private final List<Profile> all = new ArrayList<>();
  private final String home;

  public Pool(Standards standards, Lexicon lexicon, String home) {
    this.home = home;
    for (CoinStandard standard : standards.all()) {
      Profile profile = new Profile(standard, lexicon);
      all.add(profile);
      byCountry
          .computeIfAbsent(standard.issue().country(), unused -> new ArrayList<>())
          .add(profile);
    }
  }

  public String home() {
    return home;
  }

  /**
   * @param profiles the standards open
   * @param homeAssumed whether the collector's own country was taken because the words name none
   * @param namesSeveral whether the words name denominations that no single coin has
   */
  public record Drawn(List<Profile> profiles, boolean homeAssumed, boolean namesSeveral) {
    static Drawn of(Fitting fitting, boolean homeAssumed) {
      return new Drawn(fitting.profiles(), homeAssumed, fitting.namesSeveral());
    }
  }

  private record Fitting(List<Profile> profiles, boolean namesSeveral) {}

  /**
   * The standards that fit country and denomination; the home country first where the words name
   * none and it struck such a coin at that date.
   */
  public Drawn draw(Clues clues, When when) {
    if (clues.country().isPresent() && !clues.country().get().value().keys().isEmpty()) {
      List<Profile> said = new ArrayList<>();
      clues
          .country()
          .get()
          .value()
          .keys()
          .forEach(key -> said.addAll(byCountry.getOrDefault(key, List.of())));
      return Drawn.of(fitting(said, clues, when), false);
    }
    Set<String> bound = boundCountries(clues);
    if (bound.isEmpty() || bound.contains(home)) {
      Fitting here = fitting(byCountry.getOrDefault(home, List.of()), clues, when);
      if (here.profiles().stream().anyMatch(when::meets)) {
        return Drawn.of(here, true);
      }
    }
    List<Profile> elsewhere = all;
    if (!bound.isEmpty()) {
      elsewhere = new ArrayList<>();
      for (String key : bound) {
        elsewhere.addAll(byCountry.getOrDefault(key, List.of()));
      }
    }
    return Drawn.of(fitting(elsewhere, clues, when), false);
  }

  /** Whether a coin of such a denomination was struck at that date. */
  public boolean has(Clues clues, When when) {
    return draw(clues, when).profiles().stream().anyMatch(when::meets);
  }

  /** The standards of a type at a date, in the countries of those at hand. */
  public List<Profile> ofType(TypeName type, List<Profile> atHand, When when) {
    return atHand.stream()
        .map(profile -> profile.standard().issue().country())
        .distinct()
        .filter(country -> type.countries().isEmpty() || type.countries().contains(country))
        .flatMap(country -> byCountry.getOrDefault(country, List.of()).stream())
        .filter(profile -> when.meets(profile) && profile.hasType(type))
        .filter(profile -> profile.hasFace(type.implied()) && profile.ounces().isEmpty())
        .filter(profile -> profile.standard().distinction().onlyIf().isEmpty())
        .toList();
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

  private static Fitting fitting(List<Profile> profiles, Clues clues, When when) {
    Fitting byFace = byFace(profiles, clues);
    List<Profile> fit = withoutLateGold(byFace.profiles(), clues, when);
    Optional<BigDecimal> ounces = clues.physical().measures().statedOunces().map(Clue::value);
    if (ounces.isPresent()) {
      List<Profile> sized =
          fit.stream()
              .filter(p -> p.ounces().filter(size -> size.compareTo(ounces.get()) == 0).isPresent())
              .toList();
      fit = sized.isEmpty() ? fit : sized;
    }
    return new Fitting(fit, byFace.namesSeveral());
  }

  /**
   * Gold of after 1933 was struck for investors: "1 pound 1985" is no sovereign unless its name or
   * gold is said.
   */
  private static List<Profile> withoutLateGold(List<Profile> fit, Clues clues, When when) {
    boolean goldSaid =
        clues.physical().metal().said().stream().anyMatch(clue -> clue.value().equals("Au"));
    if (goldSaid || when.first() <= LAST_GOLD_IN_USE || clues.denominations().isEmpty()) {
      return fit;
    }
    List<Face> wanted = clues.denominations().get(0).value().faces();
    boolean called = fit.stream().anyMatch(p -> when.meets(p) && p.isCalled(wanted));
    return called ? fit.stream().filter(p -> p.isCalled(wanted) || !p.isGold()).toList() : fit;
  }

  private static Fitting byFace(List<Profile> profiles, Clues clues) {
    List<List<Face>> wanted = new ArrayList<>();
    clues.denominations().forEach(clue -> wanted.add(clue.value().faces()));
    if (wanted.isEmpty()) {
      return new Fitting(byTypeAlone(profiles, clues), false);
    }
    List<Profile> every =
        profiles.stream().filter(p -> wanted.stream().allMatch(p::hasFace)).toList();
    if (!every.isEmpty()) {
      return new Fitting(every, false);
    }
    List<Profile> any =
        profiles.stream().filter(p -> wanted.stream().anyMatch(p::hasFace)).toList();
    long named =
        wanted.stream().filter(faces -> any.stream().anyMatch(p -> p.hasFace(faces))).count();
    return new Fitting(any, named > 1);
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

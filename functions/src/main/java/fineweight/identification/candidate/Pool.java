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
import java.util.Collection;
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

  private final Map<String, Shelf> byCountry = new LinkedHashMap<>();
  private final Shelf all = new Shelf();
  private final Shelf none = new Shelf();
  private final String home;

  public Pool(Standards standards, Lexicon lexicon, String home) {
    this.home = home;
    for (CoinStandard standard : standards.all()) {
      Profile profile = new Profile(standard, lexicon);
      all.add(profile);
      byCountry.computeIfAbsent(standard.issue().country(), unused -> new Shelf()).add(profile);
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
      Fitting fit = fitting(shelves(clues.country().get().value().keys()), clues, when);
      boolean hint = clues.country().get().value().kind().equals("hint");
      if (!hint || fit.profiles().stream().anyMatch(when::meets)) {
        return Drawn.of(fit, false);
      }
    }
    Set<String> bound = boundCountries(clues);
    if (bound.isEmpty() || bound.contains(home)) {
      Fitting here = fitting(shelves(List.of(home)), clues, when);
      if (here.profiles().stream().anyMatch(when::meets)) {
        return Drawn.of(here, true);
      }
    }
    List<Shelf> elsewhere = bound.isEmpty() ? List.of(all) : shelves(bound);
    return Drawn.of(fitting(elsewhere, clues, when), false);
  }

  private List<Shelf> shelves(Collection<String> countries) {
    return countries.stream().map(key -> byCountry.getOrDefault(key, none)).toList();
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
        .flatMap(country -> byCountry.getOrDefault(country, none).profiles().stream())
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

  private static Fitting fitting(List<Shelf> shelves, Clues clues, When when) {
    Fitting byFace = byFace(shelves, clues);
    List<Profile> fit = withoutLateGold(byFace.profiles(), clues, when);
    Optional<BigDecimal> ounces = clues.physical().measures().statedOunces().map(Clue::value);
    if (ounces.isPresent()) {
      List<Profile> sized =
          fit.stream()
              .filter(p -> p.ounces().filter(size -> size.compareTo(ounces.get()) == 0).isPresent())
              .toList();
      if (sized.isEmpty()) {
        // "1 oz American Eagle": the ounces name the coin, not the ten dollars of an old eagle.
        List<Profile> bySize = bySize(everything(shelves), ounces.get(), when);
        boolean named =
            clues.types().stream()
                .anyMatch(type -> bySize.stream().anyMatch(p -> p.hasType(type.value())));
        boolean instead =
            named || (!clues.denominations().isEmpty() && fit.stream().noneMatch(when::meets));
        return new Fitting(instead && !bySize.isEmpty() ? bySize : fit, false);
      }
      fit = sized;
    }
    return new Fitting(fit, byFace.namesSeveral());
  }

  private static List<Profile> bySize(List<Profile> profiles, BigDecimal ounces, When when) {
    return profiles.stream()
        .filter(p -> p.ounces().filter(size -> size.compareTo(ounces) == 0).isPresent())
        .filter(when::meets)
        .toList();
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

  private static List<Profile> everything(List<Shelf> shelves) {
    return shelves.stream().flatMap(shelf -> shelf.profiles().stream()).toList();
  }

  private static Fitting byFace(List<Shelf> shelves, Clues clues) {
    List<List<Face>> wanted = new ArrayList<>();
    clues.denominations().forEach(clue -> wanted.add(clue.value().faces()));
    if (wanted.isEmpty()) {
      return new Fitting(byTypeAlone(everything(shelves), clues), false);
    }
    List<Face> either = wanted.stream().flatMap(List::stream).distinct().toList();
    List<Profile> any = shelves.stream().flatMap(shelf -> shelf.withAny(either).stream()).toList();
    List<Profile> every = any.stream().filter(p -> wanted.stream().allMatch(p::hasFace)).toList();
    if (!every.isEmpty()) {
      return new Fitting(every, false);
    }
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
    List<Profile> named =
        profiles.stream()
            .filter(p -> clues.types().stream().anyMatch(type -> isNamed(p, type.value())))
            .toList();
    List<Profile> byAll =
        named.stream()
            .filter(p -> clues.types().stream().allMatch(type -> isNamed(p, type.value())))
            .toList();
    return byAll.isEmpty() ? named : byAll;
  }

  private static boolean isNamed(Profile profile, TypeName type) {
    List<Face> implied = type.implied();
    return profile.hasType(type)
        && (implied.isEmpty() || profile.hasFace(implied) || profile.ounces().isPresent());
  }
}

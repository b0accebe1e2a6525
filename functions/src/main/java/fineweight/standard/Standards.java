package fineweight.standard;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** All standards that a look-up may use. Immutable. */
public final class Standards {
  /** The lists of the catalogue's files, one for each half of the world. */
  private static final List<String> LISTS = List.of("files-americas.txt", "files-eurasia.txt");

  private final Map<String, CoinStandard> byId;
  private final Map<String, List<CoinStandard>> byCountry;

  private Standards(Map<String, CoinStandard> byId) {
    this.byId = Collections.unmodifiableMap(byId);
    Map<String, List<CoinStandard>> grouped = new LinkedHashMap<>();
    for (CoinStandard standard : byId.values()) {
      grouped
          .computeIfAbsent(standard.issue().country(), country -> new ArrayList<>())
          .add(standard);
    }
    grouped.replaceAll((country, standards) -> List.copyOf(standards));
    this.byCountry = Collections.unmodifiableMap(grouped);
  }

  /**
   * @throws IllegalArgumentException if two standards have the same id
   */
  public static Standards of(Collection<CoinStandard> standards) {
    Map<String, CoinStandard> byId = new LinkedHashMap<>();
    for (CoinStandard standard : standards) {
      if (byId.put(standard.id(), standard) != null) {
        throw new IllegalArgumentException(
            "the id " + standard.id() + " stands twice in the catalogue");
      }
    }
    return new Standards(byId);
  }

  /**
   * The catalogue that comes with the product: every file that {@code files-americas.txt} and
   * {@code files-eurasia.txt} beside this class list.
   *
   * @throws StandardFileException at the first row that cannot be used
   */
  public static Standards catalogue() {
    return Loaded.CATALOGUE;
  }

  /** Read on first use, once: the catalogue is immutable. */
  private static final class Loaded {
    static final Standards CATALOGUE = readCatalogue();
  }

  private static Standards readCatalogue() {
    List<CoinStandard> all = new ArrayList<>();
    for (String list : LISTS) {
      if (Standards.class.getResource(list) != null) {
        readList(list, all);
      }
    }
    return of(all);
  }

  private static void readList(String list, List<CoinStandard> all) {
    try (BufferedReader files = open(list)) {
      for (String file = files.readLine(); file != null; file = files.readLine()) {
        if (!file.isBlank()) {
          try (BufferedReader text = open(file.strip())) {
            all.addAll(StandardFile.read(file.strip(), text));
          }
        }
      }
    } catch (IOException failed) {
      throw new UncheckedIOException("cannot read the catalogue", failed);
    }
  }

  private static BufferedReader open(String resource) throws IOException {
    InputStream bytes = Standards.class.getResourceAsStream(resource);
    if (bytes == null) {
      throw new IOException("the catalogue file " + resource + " is missing from the program");
    }
    return new BufferedReader(new InputStreamReader(bytes, StandardCharsets.UTF_8));
  }

  /**
   * These standards and those of a collector's own; an own standard replaces one with the same id.
   */
  public Standards with(Collection<CoinStandard> own) {
    Map<String, CoinStandard> merged = new LinkedHashMap<>(byId);
    own.forEach(standard -> merged.put(standard.id(), standard));
    return new Standards(merged);
  }

  public Collection<CoinStandard> all() {
    return byId.values();
  }

  public Optional<CoinStandard> byId(String id) {
    return Optional.ofNullable(byId.get(id));
  }

  /** The standards of an issuer, in the order of the catalogue; empty if it has none. */
  public List<CoinStandard> of(String country) {
    return byCountry.getOrDefault(country, List.of());
  }
}

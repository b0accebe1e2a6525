package fineweight.standard;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The pages under docs/catalogue are those of the data. Run with -Dfineweight.write=true to write
 * them anew.
 */
class CatalogueReferenceTest {
  private static final Path FOLDER =
      Path.of(System.getProperty("fineweight.root"), "docs", "catalogue");

  @Test
  void pagesAreThoseOfTheData() throws IOException {
    Map<String, String> wanted = CatalogueReference.pages(Standards.catalogue());
    if (Boolean.getBoolean("fineweight.write")) {
      Files.createDirectories(FOLDER);
      for (Map.Entry<String, String> page : wanted.entrySet()) {
        Files.writeString(FOLDER.resolve(page.getKey()), page.getValue());
      }
    }
    assertThat(written()).isEqualTo(new TreeMap<>(wanted));
  }

  private static Map<String, String> written() throws IOException {
    Map<String, String> pages = new TreeMap<>();
    try (Stream<Path> files = Files.list(FOLDER)) {
      for (Path file : files.toList()) {
        pages.put(file.getFileName().toString(), Files.readString(file));
      }
    }
    return pages;
  }

  @Test
  void everyStandardStandsOnOnePage() {
    String all = String.join("", CatalogueReference.pages(Standards.catalogue()).values());
    for (CoinStandard standard : Standards.catalogue().all()) {
      assertThat(all).contains("| `" + standard.id() + "` |");
    }
  }
}

package fineweight.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Makes the site from the documents, into {@code docs/target/site}, and looks it over. */
class SiteTest {
  private static final Pattern LINK = Pattern.compile("(?:href|src)=\"([^\":]+?)(?:#([^\"]*))?\"");
  private static final Pattern COLOURS =
      Pattern.compile("background: #([0-9a-f]{6}); color: #([0-9a-f]{6})");

  @Test
  void everyPageIsMadeAndLeadsOn() throws IOException {
    Path site = Markdown.root().resolve("docs/target/site");
    Set<Path> pages = Site.make(Markdown.root(), site);
    assertThat(pages).hasSameSizeAs(Markdown.documents());
    for (Path page : pages) {
      String html = Files.readString(page);
      assertThat(html).contains("<html lang=\"en\">", "<title>", "<h1");
      Matcher link = LINK.matcher(html);
      while (link.find()) {
        Path to = page.resolveSibling(link.group(1));
        assertThat(to).as(page + " leads to " + link.group(1)).exists();
        if (link.group(2) != null) {
          assertThat(Files.readString(to)).contains("id=\"" + link.group(2) + "\"");
        }
      }
    }
  }

  /** WCAG 2.2, success criterion 1.4.3: 4.5 to 1 for text. */
  @Test
  void wordsStandOutFromTheirGround() {
    Matcher colours = COLOURS.matcher(Site.STYLE);
    int pairs = 0;
    while (colours.find()) {
      double ground = luminance(colours.group(1)) + 0.05;
      double words = luminance(colours.group(2)) + 0.05;
      assertThat(Math.max(ground, words) / Math.min(ground, words)).isGreaterThanOrEqualTo(4.5);
      pairs++;
    }
    assertThat(pairs).isGreaterThanOrEqualTo(4);
    assertThat(Site.STYLE.replaceAll(COLOURS.pattern(), "")).doesNotContain("color: #");
  }

  /** Relative luminance by the definition of WCAG 2.2. */
  private static double luminance(String colour) {
    double[] parts = new double[3];
    for (int i = 0; i < parts.length; i++) {
      double part = Integer.parseInt(colour.substring(2 * i, 2 * i + 2), 16) / 255.0;
      parts[i] = part <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
    }
    return 0.2126 * parts[0] + 0.7152 * parts[1] + 0.0722 * parts[2];
  }
}

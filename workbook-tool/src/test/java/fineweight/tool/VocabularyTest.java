package fineweight.tool;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page of names holds every name of the program, and none that is gone. */
class VocabularyTest {
  private static final Set<String> KINDS = Set.of("trade", "standard", "platform", "ours");

  /** A line of a table: the names, what they are, and of which kind. */
  private static final Pattern LINE = Pattern.compile("\\| (`[^|]+`) \\| ([^|]+) \\| ([^|]+) \\|");

  /** A bar within a cell, as tables of Markdown want it, and what stands for it while reading. */
  private static final String BAR = "\\|";

  private static final String HELD = "\u0001";

  private static final Pattern WORD = Pattern.compile("`([^`]+)`");

  @TempDir Path folder;

  @Test
  void thePageListsEveryNameAndNoDeadOne() throws IOException {
    Map<String, Set<String>> page = page();
    List<String> differences = new ArrayList<>();
    Vocabulary.of(folder)
        .forEach(
            (section, words) -> {
              Set<String> listed = page.getOrDefault(section, Set.of());
              words.stream()
                  .filter(word -> !listed.contains(word))
                  .forEach(word -> differences.add(section + " lacks " + word));
              listed.stream()
                  .filter(word -> !words.contains(word))
                  .forEach(word -> differences.add(section + " has the dead " + word));
            });
    assertThat(differences).isEmpty();
  }

  /** Sections that no part of the program can be asked for hold words of its sources. */
  @Test
  void whatIsListedByHandIsInTheSources() throws IOException {
    String sources = Vocabulary.sources();
    for (String section : Set.of("Words at the table", "Files", "Environment")) {
      assertThat(page().get(section))
          .as(section)
          .isNotEmpty()
          .allSatisfy(word -> assertThat(sources).contains(word));
    }
  }

  @Test
  void everyNameIsOfAKindAndSaysWhatItIs() throws IOException {
    for (String line : Files.readAllLines(file())) {
      if (!line.startsWith("| `")) {
        continue;
      }
      Matcher matcher = LINE.matcher(line.replace(BAR, HELD));
      assertThat(matcher.matches()).as(line).isTrue();
      assertThat(matcher.group(3))
          .as(line)
          .satisfies(kind -> assertThat(KINDS).contains(kind.split("[,: ]")[0]));
    }
  }

  private static Path file() {
    return Vocabulary.root().resolve("docs/vocabulary.md");
  }

  private static Map<String, Set<String>> page() throws IOException {
    Map<String, Set<String>> page = new LinkedHashMap<>();
    String section = "";
    for (String line : Files.readAllLines(file())) {
      if (line.startsWith("## ")) {
        section = line.substring(3);
      }
      Matcher names = LINE.matcher(line.replace(BAR, HELD));
      if (names.matches()) {
        Matcher word = WORD.matcher(names.group(1));
        while (word.find()) {
          page.computeIfAbsent(section, key -> new TreeSet<>())
              .add(word.group(1).replace(HELD, "|"));
        }
      }
    }
    return page;
  }
}

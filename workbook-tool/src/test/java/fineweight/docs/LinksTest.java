package fineweight.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Links within the project lead to a file and heading that are there; every page can be reached.
 */
class LinksTest {
  @Test
  void everyLinkLeadsSomewhere() throws IOException {
    List<String> dead = new ArrayList<>();
    int checked = 0;
    for (Path document : Markdown.documents()) {
      for (String target : Markdown.targets(Markdown.read(document))) {
        if (target.matches("[a-z]+:.*")) {
          continue;
        }
        checked++;
        if (!leads(document, target)) {
          dead.add(document + " -> " + target);
        }
      }
    }
    assertThat(dead).isEmpty();
    assertThat(checked).isGreaterThan(40);
  }

  private static boolean leads(Path document, String target) throws IOException {
    String[] parts = target.split("#", 2);
    Path file = parts[0].isEmpty() ? document : document.resolveSibling(parts[0]);
    if (!Files.exists(file)) {
      return false;
    }
    return parts.length == 1 || Markdown.anchors(Markdown.read(file)).contains(parts[1]);
  }

  /** The index of the documents leads to all of them, through the pages it names. */
  @Test
  void everyPageCanBeReachedFromTheIndex() throws IOException {
    Path index = Markdown.root().resolve("docs/README.md").normalize();
    Set<Path> reached = new HashSet<>(Set.of(index));
    Deque<Path> next = new ArrayDeque<>(reached);
    while (!next.isEmpty()) {
      Path page = next.pop();
      for (String target : Markdown.targets(Markdown.read(page))) {
        String file = target.split("#", 2)[0];
        if (file.endsWith(".md") && !target.matches("[a-z]+:.*")) {
          Path to = page.resolveSibling(file).normalize();
          if (reached.add(to)) {
            next.push(to);
          }
        }
      }
    }
    assertThat(reached).containsAll(Markdown.documents().stream().map(Path::normalize).toList());
  }
}

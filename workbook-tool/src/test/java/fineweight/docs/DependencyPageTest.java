package fineweight.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/** The page of dependencies names what the build uses, in the versions that it uses. */
class DependencyPageTest {
  private static final Pattern LINE = Pattern.compile("\\| `([^`]+:[^`]+)` \\| ([^ |]+) \\|.*");
  private static final String BROUGHT_ALONG = "## What these bring along";

  @Test
  void thePageNamesWhatThePomNames() throws Exception {
    String page = Files.readString(Markdown.root().resolve("docs/dependencies.md"));
    Set<String> told = lines(page.substring(0, page.indexOf(BROUGHT_ALONG)));
    assertThat(told).isEqualTo(ofThePom());
  }

  @Test
  void whatIsBroughtAlongIsWhatRuns() throws IOException {
    String page = Files.readString(Markdown.root().resolve("docs/dependencies.md"));
    String classPath =
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    Set<String> told = lines(page.substring(page.indexOf(BROUGHT_ALONG)));
    assertThat(told).hasSizeGreaterThan(10);
    for (String each : told) {
      String[] parts = each.split("[: ]");
      assertThat(classPath).contains("/" + parts[1] + "-" + parts[2] + ".jar");
    }
  }

  private static Set<String> lines(String page) {
    return page.lines()
        .map(LINE::matcher)
        .filter(Matcher::matches)
        .map(line -> line.group(1) + " " + line.group(2))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Set<String> ofThePom() throws Exception {
    Document pom =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(Markdown.root().resolve("pom.xml").toFile());
    Map<String, String> properties = new HashMap<>();
    NodeList settings = pom.getElementsByTagName("properties").item(0).getChildNodes();
    for (int i = 0; i < settings.getLength(); i++) {
      properties.put(
          "${" + settings.item(i).getNodeName() + "}", settings.item(i).getTextContent());
    }
    Set<String> found = new TreeSet<>();
    for (String kind : List.of("dependency", "plugin", "path")) {
      NodeList all = pom.getElementsByTagName(kind);
      for (int i = 0; i < all.getLength(); i++) {
        Element each = (Element) all.item(i);
        String version = properties.getOrDefault(child(each, "version"), child(each, "version"));
        String group = child(each, "groupId");
        if (!version.isEmpty() && !group.equals("fineweight")) {
          found.add(
              (group.isEmpty() ? "org.apache.maven.plugins" : group)
                  + ":"
                  + child(each, "artifactId")
                  + " "
                  + version);
        }
      }
    }
    found.add(
        "com.google.googlejavaformat:google-java-format "
            + properties.get("${google-java-format.version}"));
    return found;
  }

  private static String child(Element of, String name) {
    for (Node node = of.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node.getNodeName().equals(name)) {
        return node.getTextContent().strip();
      }
    }
    return "";
  }
}

package fineweight.docs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.Heading;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;

/** A document in Markdown: where it leads, and which headings can be led to. */
final class Markdown {
  private static final Parser PARSER =
      Parser.builder().extensions(List.of(TablesExtension.create())).build();

  private Markdown() {}

  static Path root() {
    return Path.of(System.getProperty("fineweight.root", ".."));
  }

  /** Every document of the project, in the order of their names. */
  static Set<Path> documents() throws IOException {
    try (Stream<Path> docs = Files.walk(root().resolve("docs"))) {
      Set<Path> documents = new TreeSet<>();
      docs.filter(each -> each.toString().endsWith(".md"))
          .filter(each -> !each.toString().contains("/target/"))
          .forEach(documents::add);
      documents.add(root().resolve("README.md"));
      documents.add(root().resolve("DEVELOPERS.md"));
      return documents;
    }
  }

  static Node read(Path document) throws IOException {
    return PARSER.parse(Files.readString(document));
  }

  /** Where its links and pictures lead. */
  static Set<String> targets(Node document) {
    Set<String> targets = new LinkedHashSet<>();
    document.accept(
        new AbstractVisitor() {
          @Override
          public void visit(Link link) {
            targets.add(link.getDestination());
            visitChildren(link);
          }

          @Override
          public void visit(Image image) {
            targets.add(image.getDestination());
            visitChildren(image);
          }
        });
    return targets;
  }

  /** The anchors of its headings: small letters, figures and hyphens. */
  static Set<String> anchors(Node document) {
    Set<String> anchors = new LinkedHashSet<>();
    document.accept(
        new AbstractVisitor() {
          @Override
          public void visit(Heading heading) {
            anchors.add(anchor(words(heading)));
          }
        });
    return anchors;
  }

  static String anchor(String heading) {
    return heading
        .toLowerCase(Locale.ROOT)
        .replaceAll("[^\\p{L}\\p{N} _-]", "")
        .strip()
        .replace(' ', '-');
  }

  /** Its first heading. */
  static String title(Node document) {
    for (Node node = document.getFirstChild(); node != null; node = node.getNext()) {
      if (node instanceof Heading) {
        return words(node);
      }
    }
    return "";
  }

  static String words(Node of) {
    StringBuilder words = new StringBuilder();
    of.accept(
        new AbstractVisitor() {
          @Override
          public void visit(Text text) {
            words.append(text.getLiteral());
          }

          @Override
          public void visit(Code code) {
            words.append(code.getLiteral());
          }
        });
    return words.toString();
  }
}

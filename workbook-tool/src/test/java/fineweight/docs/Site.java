package fineweight.docs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.Heading;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.renderer.html.AttributeProvider;
import org.commonmark.renderer.html.HtmlRenderer;

/** The documents as pages for a browser, readable without scripts and without a network. */
final class Site {
  /** Light and dark by the reader's setting; every ground names the colour of its words. */
  static final String STYLE =
      """
      body { background: #fcfbf7; color: #22252a; font: 1.05rem/1.55 system-ui, sans-serif;
        max-width: 62rem; margin: 0 auto; padding: 1rem 1.5rem 4rem; }
      nav { border-bottom: 2px solid currentColor; padding: .6rem 0; margin-bottom: 1.5rem; }
      a { background: #fcfbf7; color: #164a86; }
      a:focus { outline: 3px solid currentColor; outline-offset: 2px; }
      table { border-collapse: collapse; display: block; overflow-x: auto; }
      th, td { border: 1px solid currentColor; padding: .3rem .6rem; text-align: left; vertical-align: top; }
      th { background: #e6e2d6; color: #22252a; }
      pre, code { background: #efece2; color: #22252a; }
      pre { padding: .8rem; overflow-x: auto; }
      img { max-width: 100%; height: auto; }
      @media (prefers-color-scheme: dark) {
        body { background: #1c1f24; color: #ece9e0; }
        a { background: #1c1f24; color: #a9cbf5; }
        th { background: #34383f; color: #ece9e0; }
        pre, code { background: #2a2e35; color: #ece9e0; }
      }
      """;

  private Site() {}

  /**
   * Makes every page.
   *
   * @param root the folder of the project
   * @param site the folder of the pages; what is there is written over
   * @return the pages made
   */
  static Set<Path> make(Path root, Path site) throws IOException {
    Set<Path> pages = new TreeSet<>();
    for (Path document : Markdown.documents()) {
      Path place = site.resolve(html(root.relativize(document).toString()));
      Files.createDirectories(place.getParent());
      Node node = Markdown.read(document);
      for (String target : Markdown.targets(node)) {
        String file = target.split("#", 2)[0];
        if (!file.isEmpty() && !file.endsWith(".md") && !file.matches("[a-z]+:.*")) {
          take(document.resolveSibling(file), place.resolveSibling(file));
        }
      }
      Files.writeString(place, page(root, document, node));
      pages.add(place);
    }
    return pages;
  }

  private static void take(Path from, Path to) throws IOException {
    if (Files.isRegularFile(from)) {
      Files.createDirectories(to.normalize().getParent());
      Files.copy(from, to.normalize(), StandardCopyOption.REPLACE_EXISTING);
    } else {
      Files.createDirectories(to.normalize());
    }
  }

  private static String html(String document) {
    return document.replaceAll("README\\.md$", "index.html").replaceAll("\\.md$", ".html");
  }

  private static String page(Path root, Path document, Node node) {
    HtmlRenderer renderer =
        HtmlRenderer.builder()
            .extensions(List.of(TablesExtension.create()))
            .attributeProviderFactory(context -> new Places())
            .build();
    String up = "../".repeat(root.relativize(document).getNameCount() - 1);
    return """
        <!DOCTYPE html>
        <html lang="en">
        <head><meta charset="utf-8"><meta name="viewport" content="width=device-width">
        <title>%s - Fineweight</title><style>
        %s</style></head>
        <body><nav><a href="%sindex.html">Fineweight</a> / <a href="%sdocs/index.html">Documents</a></nav>
        <main>
        %s</main></body></html>
        """
        .formatted(
            Markdown.title(node).replace("&", "&amp;").replace("<", "&lt;"),
            STYLE,
            up,
            up,
            renderer.render(node));
  }

  /** Headings can be led to, and links lead to pages. */
  private static final class Places implements AttributeProvider {
    @Override
    public void setAttributes(Node node, String tag, Map<String, String> attributes) {
      if (node instanceof Heading heading) {
        attributes.put("id", Markdown.anchor(Markdown.words(heading)));
      } else if (node instanceof Link link && !link.getDestination().matches("[a-z]+:.*")) {
        String[] parts = link.getDestination().split("#", 2);
        attributes.put("href", html(parts[0]) + (parts.length == 2 ? "#" + parts[1] : ""));
      }
    }
  }
}

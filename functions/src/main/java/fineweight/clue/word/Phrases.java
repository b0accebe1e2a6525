package fineweight.clue.word;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Phrases with what they mean; finds the longest one that begins at a word. Filled once, then only
 * read.
 *
 * @param <M> the meaning
 */
public final class Phrases<M> {
  private final Node<M> root = new Node<>();

  private static final class Node<M> {
    final Map<String, Node<M>> next = new HashMap<>();
    final List<M> meanings = new ArrayList<>();
  }

  /**
   * @param meanings at least one
   * @param length how many words the phrase spans in the text, signs between them included
   */
  public record Found<M>(List<M> meanings, int length) {}

  /** Adds a meaning to a phrase; a phrase may have several. */
  public void add(String phrase, M meaning) {
    String normal = Words.normal(phrase);
    if (normal.isEmpty()) {
      throw new IllegalArgumentException("the phrase \"" + phrase + "\" holds no word");
    }
    Node<M> node = root;
    for (String word : normal.split(" ")) {
      node = node.next.computeIfAbsent(word, unused -> new Node<>());
    }
    node.meanings.add(meaning);
  }

  /**
   * The longest phrase beginning at that word; null if there is none. Hyphens and the like between
   * words do not count.
   */
  public Found<M> longestAt(List<Word> words, int at) {
    Node<M> node = root;
    Found<M> best = null;
    for (int i = at; i < words.size(); i++) {
      Node<M> next = node.next.get(words.get(i).text());
      if (next == null) {
        boolean bridges = i > at && isBridge(words.get(i));
        if (bridges) {
          continue;
        }
        break;
      }
      node = next;
      if (!node.meanings.isEmpty()) {
        best = new Found<>(node.meanings, i - at + 1);
      }
    }
    return best;
  }

  private static boolean isBridge(Word word) {
    return word.kind() == Word.Kind.SIGN && (word.is("-") || word.is("'") || word.is("\""));
  }
}

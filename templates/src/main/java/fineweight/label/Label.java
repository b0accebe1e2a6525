package fineweight.label;

import java.util.List;

/**
 * The words of one label. Immutable.
 *
 * @param lines the first stands out
 */
public record Label(List<String> lines) {
  public Label {
    lines = List.copyOf(lines);
  }
}

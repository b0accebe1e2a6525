package fineweight.standard;

import java.util.List;

/**
 * Where the figures of a standard come from. Immutable.
 *
 * @param sources keys of the catalogue's list of sources; empty if from memory
 * @param locator article, page or table within the sources
 * @param certainty how well the deciding figures are supported
 * @param note disagreements and remarks, may be empty
 */
public record Evidence(List<String> sources, String locator, Certainty certainty, String note) {
  public Evidence {
    sources = List.copyOf(sources);
  }
}

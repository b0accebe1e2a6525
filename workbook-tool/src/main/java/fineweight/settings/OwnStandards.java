package fineweight.settings;

import fineweight.standard.CoinStandard;
import fineweight.standard.Overlaps;
import fineweight.standard.StandardFile;
import fineweight.standard.StandardFileException;
import fineweight.standard.Standards;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A collector's own standards: a CSV with the columns of the catalogue. A row with an id of the
 * catalogue replaces that row; any other is added.
 */
public final class OwnStandards {
  private OwnStandards() {}

  /**
   * The catalogue with the file's standards.
   *
   * @throws SettingException at the first row that cannot be used, or that claims a coin of the
   *     catalogue without a word to tell the two apart; the sentence names file, line and column
   */
  public static Standards read(Path file) throws SettingException {
    List<CoinStandard> own;
    try (Reader text = Files.newBufferedReader(file)) {
      own = StandardFile.read(file.toString(), text);
    } catch (StandardFileException unusable) {
      throw new SettingException(unusable.getMessage());
    } catch (IOException | UncheckedIOException failed) {
      throw new SettingException(
          "the file of own standards "
              + file
              + " cannot be read as UTF-8 text; check its name and save it as UTF-8");
    }
    refuseTwice(file, own);
    Standards merged = Standards.catalogue().with(own);
    refuseClash(file, own, merged);
    return merged;
  }

  private static void refuseTwice(Path file, List<CoinStandard> own) throws SettingException {
    Set<String> seen = new java.util.HashSet<>();
    for (CoinStandard standard : own) {
      if (!seen.add(standard.id())) {
        throw new SettingException(file + ": the id " + standard.id() + " stands twice");
      }
    }
  }

  private static void refuseClash(Path file, List<CoinStandard> own, Standards merged)
      throws SettingException {
    Set<String> ids = own.stream().map(CoinStandard::id).collect(Collectors.toSet());
    for (Overlaps.Overlap overlap : Overlaps.among(merged.all())) {
      if (ids.contains(overlap.first().id()) || ids.contains(overlap.second().id())) {
        throw new SettingException(
            file
                + ": "
                + overlap.first().id()
                + " and "
                + overlap.second().id()
                + " claim the same coin of "
                + overlap.year()
                + "; give the own row a variant or tells that set it apart, or the other's id to"
                + " replace it");
      }
    }
  }
}

package fineweight.tool;

import fineweight.settings.OwnStandards;
import fineweight.settings.SettingException;
import fineweight.standard.Standards;
import java.nio.file.Path;
import java.util.Locale;
import picocli.CommandLine.Option;

/** The options that say what may be found and where a coin is at home. */
final class CatalogueOptions {
  @Option(
      names = "--own-standards",
      paramLabel = "FILE",
      description = {
        "CSV of your own coin standards, with the catalogue's columns;",
        "a row with an id of the catalogue replaces it, any other is added."
      })
  private Path ownStandards;

  @Option(
      names = "--home",
      paramLabel = "COUNTRY",
      defaultValue = "US",
      description =
          "Country meant where the words name none (a key of the catalogue);"
              + " ${DEFAULT-VALUE} if absent.")
  private String home;

  Standards standards() throws SettingException {
    return ownStandards == null ? Standards.catalogue() : OwnStandards.read(ownStandards);
  }

  /**
   * @throws SettingException if the catalogue has no coin of that country
   */
  String home() throws SettingException {
    for (String key : new String[] {home, home.toUpperCase(Locale.ROOT)}) {
      if (!Standards.catalogue().of(key).isEmpty()) {
        return key;
      }
    }
    throw new SettingException(
        "--home: the catalogue has no coins of \""
            + home
            + "\"; write a code such as US, GB or DE");
  }
}

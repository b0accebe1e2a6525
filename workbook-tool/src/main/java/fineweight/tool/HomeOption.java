package fineweight.tool;

import fineweight.settings.SettingException;
import fineweight.standard.Standards;
import java.util.Locale;
import picocli.CommandLine.Option;

/** The option that names the country meant where a coin's words name none. */
final class HomeOption {
  @Option(
      names = "--home",
      paramLabel = "COUNTRY",
      defaultValue = "US",
      description =
          "Country meant where the words name none (a key of the catalogue); ${DEFAULT-VALUE} if absent.")
  private String home;

  /**
   * @throws SettingException if the catalogue has no coin of that country
   */
  String country() throws SettingException {
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

package fineweight.settings;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;

/** Where the settings file is by the custom of the platform. */
public final class SettingsPlace {
  private static final String NAME = "settings.json";

  private SettingsPlace() {}

  /**
   * The folder of settings of the XDG Base Directory Specification, on Windows that of APPDATA, on
   * macOS Library/Application Support.
   *
   * @param system its name, as in the property {@code os.name}
   * @param home the user's own folder
   */
  public static Path of(Map<String, String> environment, String system, Path home) {
    String low = system.toLowerCase(Locale.ROOT);
    if (low.startsWith("windows") && environment.containsKey("APPDATA")) {
      return Path.of(environment.get("APPDATA")).resolve("Fineweight").resolve(NAME);
    }
    if (low.startsWith("mac")) {
      return home.resolve("Library/Application Support/Fineweight").resolve(NAME);
    }
    Path given = Path.of(environment.getOrDefault("XDG_CONFIG_HOME", ""));
    Path folder = given.isAbsolute() ? given : home.resolve(".config");
    return folder.resolve("fineweight").resolve(NAME);
  }

  public static Path ofThisProcess() {
    return of(
        System.getenv(), System.getProperty("os.name"), Path.of(System.getProperty("user.home")));
  }
}

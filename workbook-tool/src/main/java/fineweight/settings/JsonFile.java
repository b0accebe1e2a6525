package fineweight.settings;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Reads a small JSON file that a person wrote; its faults become sentences. */
final class JsonFile {
  private static final long LARGEST = 1_000_000;

  private JsonFile() {}

  /**
   * @param kind what the file is of, for the sentences, such as {@code prices}
   * @param form what it should hold
   * @return the object in the file
   * @throws SettingException if the file cannot be read or holds no JSON object
   */
  static JsonNode read(Path file, String kind, String form) throws SettingException {
    JsonMapper mapper =
        JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .build();
    try {
      if (Files.size(file) > LARGEST) {
        throw new SettingException(file + " is too large for a file of " + kind);
      }
      JsonNode root = mapper.readTree(Files.readAllBytes(file));
      if (root == null || !root.isObject()) {
        throw new SettingException(file + " holds no JSON object; expected " + form);
      }
      return root;
    } catch (JsonProcessingException broken) {
      var place = broken.getLocation();
      String where =
          place == null ? "" : ", line " + place.getLineNr() + ", column " + place.getColumnNr();
      throw new SettingException(file + where + ": this is no JSON that can be read");
    } catch (IOException failed) {
      throw new SettingException(
          "the file of " + kind + " " + file + " cannot be read; check its name and place");
    }
  }
}

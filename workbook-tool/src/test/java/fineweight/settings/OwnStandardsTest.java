package fineweight.settings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fineweight.metal.Metal;
import fineweight.standard.Certainty;
import fineweight.standard.CoinStandard;
import fineweight.standard.Standards;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The pieces are invented; the columns are the catalogue's. */
class OwnStandardsTest {
  private static final String HEADER =
      "id,country,denomination,face_value,currency,type_name,years,mints,variant,only_if,tells,"
          + "composition,mass_g,mass_grains,fine_mass_g,diameter_mm,thickness_mm,magnetic,source,"
          + "locator,certainty,note\n";

  @TempDir Path folder;

  private Path file(String... rows) throws IOException {
    Path file = folder.resolve("own.csv");
    Files.writeString(file, HEADER + String.join("\n", rows) + "\n");
    return file;
  }

  @Test
  void aNewStandardIsAdded() throws Exception {
    Standards standards =
        OwnStandards.read(
            file(
                "xx-1crown-2001,Hutt,1 crown,1,crown,Lighthouse,2001,,,,,Ag 500; Cu"
                    + " 500,20,,,,,no,,,own,invented"));
    CoinStandard own = standards.byId("xx-1crown-2001").orElseThrow();
    assertThat(own.evidence().certainty()).isEqualTo(Certainty.OWN);
    assertThat(own.fineContent().of(Metal.SILVER).grams()).isEqualByComparingTo("10");
    assertThat(standards.all()).hasSize(Standards.catalogue().all().size() + 1);
  }

  @Test
  void anIdOfTheCatalogueReplacesItsRow() throws Exception {
    Standards standards =
        OwnStandards.read(
            file(
                "us-half-1964-kennedy,US,half dollar,0.5,USD,Kennedy,1964,,,,,Ag 900; Cu"
                    + " 100,12.4,,,,,no,,,own,my scale"));
    assertThat(standards.all()).hasSameSizeAs(Standards.catalogue().all());
    assertThat(
            standards
                .byId("us-half-1964-kennedy")
                .orElseThrow()
                .fineContent()
                .of(Metal.SILVER)
                .grams())
        .isEqualByComparingTo("11.16");
  }

  @Test
  void aBadFigureIsNamedByLineAndColumn() throws Exception {
    Path file =
        file(
            "xx-1crown-2001,Hutt,1 crown,1,crown,Lighthouse,2001,,,,,Ag 500; Cu"
                + " 500,heavy,,,,,no,,,own,");
    assertThatThrownBy(() -> OwnStandards.read(file))
        .isInstanceOf(SettingException.class)
        .hasMessageContaining("own.csv, line 2, column mass_g");
  }

  @Test
  void aClashWithTheCatalogueIsNamedWithItsRemedy() throws Exception {
    Path file =
        file(
            "xx-half-1964,US,half dollar,0.5,USD,Kennedy,1964,,,,,Ag 800; Cu"
                + " 200,12.5,,,,,no,,,own,");
    assertThatThrownBy(() -> OwnStandards.read(file))
        .isInstanceOf(SettingException.class)
        .hasMessageContaining("us-half-1964-kennedy")
        .hasMessageContaining("xx-half-1964")
        .hasMessageContaining("claim the same coin of 1964");
  }

  @Test
  void anAbsentFileIsNamed() {
    assertThatThrownBy(() -> OwnStandards.read(folder.resolve("absent.csv")))
        .isInstanceOf(SettingException.class)
        .hasMessageContaining("absent.csv");
  }
}

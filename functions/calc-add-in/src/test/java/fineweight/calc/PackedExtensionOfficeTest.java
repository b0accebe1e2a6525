package fineweight.calc;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.jar.Attributes;
import java.util.jar.JarInputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;

/** What the packed extension holds; needs the package, but no office. */
class PackedExtensionOfficeTest {
  @Test
  void everyJarThatTheAddInNamesIsInThePackage() throws IOException {
    try (ZipFile extension = new ZipFile(System.getProperty("fineweight.extension"));
        InputStream bytes = extension.getInputStream(extension.getEntry("fineweight-calc.jar"));
        JarInputStream jar = new JarInputStream(bytes)) {
      Attributes manifest = jar.getManifest().getMainAttributes();
      assertThat(manifest.getValue("RegistrationClassName"))
          .isEqualTo(AddInRegistration.class.getName());
      List<String> named = List.of(manifest.getValue(Attributes.Name.CLASS_PATH).split(" "));
      assertThat(named).hasSizeGreaterThan(2).allMatch(name -> name.startsWith("lib/"));
      List<String> packed =
          extension.stream()
              .map(ZipEntry::getName)
              .filter(name -> name.startsWith("lib/") && name.endsWith(".jar"))
              .toList();
      assertThat(packed).containsExactlyInAnyOrderElementsOf(named);
    }
  }

  /** The office's own jars come with the office; packing them would bring a second copy. */
  @Test
  void nothingOfTheOfficeAndNoDateOfTodayIsPacked() throws IOException {
    try (ZipFile extension = new ZipFile(System.getProperty("fineweight.extension"))) {
      assertThat(extension.stream().map(ZipEntry::getName).toList())
          .contains("META-INF/manifest.xml", "types.idl", "CalcAddIns.xcu", "description.xml")
          .noneMatch(name -> name.contains("libreoffice") || name.contains("unoil"));
      assertThat(extension.stream().map(entry -> entry.getTimeLocal().toLocalDate()).distinct())
          .hasSize(1);
    }
  }
}

package fineweight.workbook.xlsx.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fineweight.workbook.xlsx.xml.DamageException;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SharedStringsTest {
  private static SharedStrings read(String xml) throws IOException {
    return SharedStrings.read(
        "texts", new ByteArrayInputStream(xml.getBytes(StandardCharsets.UTF_8)));
  }

  @Test
  void countsItemsAndNotWhatTheListSays() throws IOException {
    SharedStrings texts =
        read(
            "<sst count='9' uniqueCount='9'><si/><si><t/></si><si><t xml:space='preserve'> a </t></si></sst>");
    assertThat(texts.count()).isEqualTo(3);
    assertThat(texts.get(0)).isEmpty();
    assertThat(texts.get(2)).isEqualTo(" a ");
    assertThatThrownBy(() -> texts.get(3)).isInstanceOf(DamageException.class);
    assertThatThrownBy(() -> texts.get(-1)).isInstanceOf(DamageException.class);
  }

  @Test
  void keepsManyAndLongTextsApart() throws IOException {
    String long1 = "\u00e9".repeat(200_000);
    String items =
        IntStream.range(0, 20_000)
            .mapToObj(i -> "<si><t>text " + i + (i == 7 ? long1 : "") + "</t></si>")
            .collect(Collectors.joining());
    SharedStrings texts = read("<sst>" + items + "</sst>");
    assertThat(texts.get(6)).isEqualTo("text 6");
    assertThat(texts.get(7)).isEqualTo("text 7" + long1);
    assertThat(texts.get(8)).isEqualTo("text 8");
    assertThat(texts.get(19_999)).isEqualTo("text 19999");
  }

  @Test
  void refusesAnotherRoot() {
    assertThatThrownBy(() -> read("<worksheet/>")).isInstanceOf(DamageException.class);
  }
}

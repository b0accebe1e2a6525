package fineweight.workbook.xlsx.xml;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class MarkupTest {
  private static Markup markup(String xml) {
    return Markup.of("part", xml);
  }

  private static String apply(ByteEdits edits) {
    return new String(edits.apply(), StandardCharsets.UTF_8);
  }

  @Test
  void knowsThePlacesOfItsElements() {
    Markup markup =
        markup("<?xml version='1.0'?><!-- \u00fc --><a><b c='\u00fc'>t\u00fc</b><d/></a>");
    Element b = markup.root().child("b").orElseThrow();
    assertThat(markup.source(b)).isEqualTo("<b c='\u00fc'>t\u00fc</b>");
    assertThat(b.text()).isEqualTo("t\u00fc");
    assertThat(b.get("c")).isEqualTo("\u00fc");
    assertThat(markup.source(markup.root().child("d").orElseThrow())).isEqualTo("<d/>");
  }

  @Test
  void editsLeaveAllOtherBytes() {
    Markup markup = markup("<x:a xmlns:x='u' ><x:b/> <x:c n='1'/><x:d>t</x:d></x:a>");
    ByteEdits edits = new ByteEdits(markup);
    edits.append(markup.root(), "<new/>");
    edits.append(markup.root().child("c").orElseThrow(), "<in/>", "n", "2");
    edits.remove(markup.root().child("d").orElseThrow());
    edits.insertBefore(markup.root().child("b").orElseThrow(), "<first/>");
    assertThat(apply(edits))
        .isEqualTo("<x:a xmlns:x='u' ><first/><x:b/> <x:c n='2'><in/></x:c><new/></x:a>");
  }

  @Test
  void refusesEntitiesDeepNestingAndWrongXml() {
    assertThatThrownBy(() -> markup("<!DOCTYPE a [<!ENTITY e 'x'>]><a>&e;</a>"))
        .isInstanceOf(DamageException.class)
        .hasMessageContaining("entities");
    assertThatThrownBy(() -> markup("<a>".repeat(300) + "</a>".repeat(300)))
        .isInstanceOf(DamageException.class)
        .hasMessageContaining("deep");
    assertThatThrownBy(() -> markup("<a><b></a>")).isInstanceOf(DamageException.class);
    assertThatThrownBy(() -> markup("")).isInstanceOf(DamageException.class);
  }

  @Test
  void readsWhateverEncodingIsDeclared() throws IOException {
    String xml = "<?xml version=\"1.0\" encoding=\"windows-1252\"?><a>\u20ac</a>";
    byte[] bytes = xml.getBytes("windows-1252");
    assertThat(Markup.read("p", new ByteArrayInputStream(bytes)).root().text()).isEqualTo("\u20ac");
    byte[] wide = "<a>\u20ac</a>".getBytes(StandardCharsets.UTF_16LE);
    assertThat(Markup.read("p", new ByteArrayInputStream(wide)).root().text()).isEqualTo("\u20ac");
    byte[] unknown = "<?xml version=\"1.0\" encoding=\"x-none\"?><a/>".getBytes("US-ASCII");
    assertThatThrownBy(() -> Markup.read("p", new ByteArrayInputStream(unknown)))
        .isInstanceOf(DamageException.class)
        .hasMessageContaining("x-none");
  }
}

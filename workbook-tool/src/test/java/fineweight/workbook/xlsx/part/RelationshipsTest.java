package fineweight.workbook.xlsx.part;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.workbook.xlsx.xml.Markup;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class RelationshipsTest {
  private static Relationships of(String list) {
    return new Relationships(
        "xl/workbook.xml",
        Markup.of("rels", "<Relationships xmlns=\"u\">" + list + "</Relationships>"));
  }

  private static String target(String target) {
    return of("<Relationship Id=\"a\" Type=\"x/worksheet\" Target=\"" + target + "\"/>")
        .byKind("worksheet")
        .orElseThrow()
        .part();
  }

  @Test
  void resolvesTargets() {
    assertThat(target("worksheets/s.xml")).isEqualTo("xl/worksheets/s.xml");
    assertThat(target("/xl/worksheets/s.xml")).isEqualTo("xl/worksheets/s.xml");
    assertThat(target("../other/./s%201.xml")).isEqualTo("other/s 1.xml");
    assertThat(target("../../../s.xml")).isEqualTo("s.xml");
  }

  @Test
  void neverFollowsAnExternalTarget() {
    assertThat(
            of("<Relationship Id=\"a\" Type=\"x/worksheet\" Target=\"http://127.0.0.1/\""
                    + " TargetMode=\"External\"/>")
                .byId("a"))
        .isEmpty();
  }

  @Test
  void findsAFreeId() {
    Relationships relations =
        of("<Relationship Id=\"rId2\" Type=\"x/styles\" Target=\"styles.xml\"/>");
    assertThat(relations.add("worksheet", "xl/worksheets/s.xml")).isEqualTo("rId3");
    assertThat(new String(relations.changed(), StandardCharsets.UTF_8))
        .contains("<Relationship Id=\"rId3\" ", "Target=\"/xl/worksheets/s.xml\"/></Relation");
  }

  @Test
  void namesItsOwnPart() {
    assertThat(Relationships.partOf("xl/workbook.xml")).isEqualTo("xl/_rels/workbook.xml.rels");
    assertThat(Relationships.partOf("")).isEqualTo("_rels/.rels");
  }
}

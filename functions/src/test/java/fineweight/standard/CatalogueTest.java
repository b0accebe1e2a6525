package fineweight.standard;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class CatalogueTest {
  @Test
  void loads() {
    assertThat(Standards.catalogue().all()).hasSizeGreaterThan(160);
  }
}

package org.comparanda.suggestion;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.comparanda.outside.OutsideSet;
import org.comparanda.taxon.TaxonName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MethodRuleTest {
  // Counts of animals, taxa and measurements are those of the outside sets
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          iris            | linear, by rule: no taxon and no measurement has fewer than 10 animals
          crabs           | linear, by rule: no taxon and no measurement has fewer than 10 animals
          mouse_t2_5      | linear, by rule: no taxon and no measurement has fewer than 10 animals
          mouse_t2_15     | shrunk-pooled, by rule: n − k = 73 is below 10 × 15 measurements
          microtus_ref    | shrunk-pooled, by rule: n − k = 43 is below 10 × 8 measurements
          wolves_group    | predictive, by rule: rm_f has fewer than 10 animals (3)
          midge           | predictive, by rule: Apf has fewer than 10 animals (6)
          wolves_location | linear, by rule: rm has fewer than 10 animals (9), yet linear was clearly \
          better held out
          """)
  void theMethodAndItsReasonFollowFromTheShelf(String name, String reason) {
    OutsideSet set = OutsideSet.named(name);
    assertEquals(
        reason,
        MethodRule.of(set.rows(), set.classes().stream().map(TaxonName::new).toList()).reason());
  }
}

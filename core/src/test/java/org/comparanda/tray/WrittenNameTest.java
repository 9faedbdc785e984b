package org.comparanda.tray;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.comparanda.statistics.Outcome;
import org.comparanda.taxon.TaxonName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WrittenNameTest {
  @ParameterizedTest
  @CsvSource({
    "Ovis aries, Ovis aries, NONE",
    "cf. Ovis aries, Ovis aries, CF",
    "Ovis cf. aries, Ovis aries, CF",
    "Ovis aff. aries, Ovis aries, AFF",
    "Ovis sp., Ovis, SP",
    "Bovidae indet., Bovidae, INDET",
    "Bovidae gen. et sp. indet., Bovidae, GEN_ET_SP_INDET",
    "Ovis indet., Ovis, INDET",
    "?Ovis aries, Ovis aries, UNCERTAIN",
    "Ovis aries?, Ovis aries, UNCERTAIN"
  })
  void openNomenclatureIsReadAsItIsWritten(String text, String taxon, Qualifier qualifier) {
    assertEquals(
        Outcome.of(new WrittenName(new TaxonName(taxon), qualifier)), WrittenName.read(text));
  }
}

package org.comparanda.taxon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.comparanda.oldcards.CardParser;
import org.comparanda.tables.CardWordTable;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.tables.SkeletonGroups;
import org.comparanda.tables.TraitTable;
import org.comparanda.tray.Beside;
import org.comparanda.tray.Trait;
import org.junit.jupiter.api.Test;

/** After a taxon and a group were renamed, all that the program knows of them still holds. */
class RenamedTaxonTest {
  private static final ReferenceTables TABLES = ReferenceTables.shipped();
  private static final TaxonName SHEEP = new TaxonName("Ovis aries");
  private static final TaxonName NOW = new TaxonName("Ovis nova");
  private static final TaxonTree TREE =
      HouseNames.of(List.of())
          .renamed(SHEEP, NOW, TABLES.taxa())
          .then(names -> names.on(TABLES.taxa()))
          .value()
          .orElseThrow();

  @Test
  void bothNamesAreOneTaxonUnderTheNewOne() {
    assertEquals(NOW, TREE.accepted(SHEEP));
    assertEquals(NOW, TREE.accepted(NOW));
    assertEquals(List.of(SHEEP), TREE.synonymsOf(NOW));
    assertTrue(TREE.within(NOW, SHEEP) && TREE.within(SHEEP, NOW));
    assertTrue(TREE.within(NOW, new TaxonName("Bovidae")));
    assertEquals(Optional.of("Ovis aries stands here as Ovis nova."), TREE.standsUnder(SHEEP));
    assertEquals(Optional.empty(), TREE.standsUnder(NOW));
  }

  @Test
  void itsLookAlikesAndTheTraitsThatTellThemApartStay() {
    assertEquals(Set.of(new TaxonName("Capra hircus")), TREE.lookAlikesOf(NOW));
    List<Trait> traits = TraitTable.shipped(Locale.ENGLISH, TABLES.protocol(), TREE);
    assertTrue(traits.stream().anyMatch(t -> t.taxa().contains(NOW)));
    assertFalse(traits.stream().anyMatch(t -> t.taxa().contains(SHEEP)));
  }

  @Test
  void traitsOfAPairThatBecameOneTaxonAreNoLongerAsked() {
    TaxonName goat = new TaxonName("Capra hircus");
    TaxonTree one =
        HouseNames.of(List.of())
            .renamed(goat, SHEEP, TABLES.taxa())
            .then(names -> names.on(TABLES.taxa()))
            .value()
            .orElseThrow();
    assertFalse(
        TraitTable.shipped(Locale.ENGLISH, TABLES.protocol(), one).stream()
            .anyMatch(trait -> trait.taxa().contains(SHEEP) && trait.taxa().contains(goat)));
  }

  @Test
  void theNumbersPerSkeletonOfARenamedGroupStay() {
    TaxonName group = new TaxonName("Bovidae");
    Optional<String> before = SkeletonGroups.shipped(TABLES.taxa()).of(SHEEP);
    assertTrue(before.isPresent());
    TaxonTree renamed =
        HouseNames.of(List.of())
            .renamed(group, new TaxonName("Bovidae nova"), TABLES.taxa())
            .then(names -> names.on(TABLES.taxa()))
            .value()
            .orElseThrow();
    assertEquals(before, SkeletonGroups.shipped(renamed).of(SHEEP));
  }

  @Test
  void anOldCardWithTheOldNameProposesTheOneItHasNow() {
    CardParser parser = new CardParser(CardWordTable.shipped(TABLES.protocol(), TREE));
    assertEquals(Optional.of(NOW), parser.read("Ovis aries, humerus left").taxon());
    assertEquals(Optional.of(NOW), parser.read("sheep, humerus left").taxon());
  }

  @Test
  void aCallUnderTheOldNameIsNotAgainstTheNewOne() {
    Beside sheep = new Beside(List.of(NOW), List.of(), Optional.empty());
    assertFalse(sheep.against(SHEEP, TREE));
    Beside out = new Beside(List.of(), List.of(NOW), Optional.empty());
    assertTrue(out.against(SHEEP, TREE));
  }
}

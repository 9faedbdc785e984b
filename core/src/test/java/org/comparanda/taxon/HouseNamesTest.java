package org.comparanda.taxon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A small invented tree under real names. */
class HouseNamesTest {
  private static final TaxonTree SHIPPED =
      new TaxonTree(
          List.of(
              shipped("Bovidae", null),
              shipped("Caprini", "Bovidae"),
              shipped("Ovis", "Caprini"),
              shipped("Ovis aries", "Ovis"),
              shipped("Capra hircus", "Caprini")),
          List.of(Set.of(name("Ovis aries"), name("Capra hircus"))));
  private static final HouseNames NONE = HouseNames.of(List.of());

  private static TaxonName name(String name) {
    return new TaxonName(name);
  }

  private static Taxon shipped(String name, String parent) {
    return new Taxon(
        name(name),
        "",
        "",
        "",
        Optional.ofNullable(parent).map(TaxonName::new),
        Growth.DETERMINATE,
        false,
        "test");
  }

  private static HouseTaxon house(String name, String parent, String accepted) {
    return new HouseTaxon(
        name(name),
        "Author, 1900",
        "species",
        Optional.ofNullable(parent).map(TaxonName::new),
        Optional.ofNullable(accepted).map(TaxonName::new),
        "",
        "test");
  }

  private static TaxonTree tree(HouseNames names) {
    return names.on(SHIPPED).value().orElseThrow();
  }

  private static HouseNames done(org.comparanda.statistics.Outcome<HouseNames> outcome) {
    return outcome.value().orElseThrow();
  }

  @Test
  void aTaxonThatIsMadeOneWithAnotherLeavesThatOneWhereItStands() {
    TaxonTree one = tree(done(NONE.renamed(name("Capra hircus"), name("Ovis aries"), SHIPPED)));
    assertEquals(name("Ovis aries"), one.accepted(name("Capra hircus")));
    assertEquals(
        List.of(name("Ovis aries"), name("Ovis"), name("Caprini"), name("Bovidae")),
        one.lineage(name("Ovis aries")));
    assertEquals(Set.of(), one.lookAlikesOf(name("Ovis aries")));
  }

  @Test
  void aRenamedTaxonKeepsItsPlaceItsGrowthAndItsLookAlikes() {
    HouseNames renamed =
        done(NONE.renamed(name("Ovis aries"), name("Ovis gmelini aries"), SHIPPED));
    TaxonTree tree = tree(renamed);
    assertEquals(
        List.of("Ovis gmelini aries", "Ovis", "Caprini", "Bovidae"),
        tree.lineage(name("Ovis gmelini aries")).stream().map(TaxonName::value).toList());
    assertEquals(Growth.DETERMINATE, tree.taxon(name("Ovis gmelini aries")).orElseThrow().growth());
    assertEquals(Set.of(name("Ovis gmelini aries")), tree.lookAlikesOf(name("Capra hircus")));
  }

  @Test
  void theOldNameIsFoundAndHasItsPlaceUnderTheNewOne() {
    HouseNames renamed =
        done(NONE.renamed(name("Ovis aries"), name("Ovis gmelini aries"), SHIPPED));
    assertEquals(name("Ovis gmelini aries"), renamed.accepted(name("Ovis aries")));
    assertEquals(Set.of(name("Ovis aries")), renamed.synonymsOf(name("Ovis gmelini aries")));
    assertTrue(tree(renamed).lineage(name("Ovis aries")).contains(name("Ovis gmelini aries")));
  }

  @Test
  void aRenamedGroupKeepsItsMembers() {
    TaxonTree tree = tree(done(NONE.renamed(name("Caprini"), name("Ovibovini"), SHIPPED)));
    assertTrue(tree.lineage(name("Ovis aries")).contains(name("Ovibovini")));
    assertEquals(
        Optional.of(name("Ovibovini")),
        tree.lowestCommon(List.of(name("Ovis aries"), name("Capra hircus"))));
  }

  @Test
  void aTaxonIsMovedWithAllBelowIt() {
    TaxonTree tree = tree(done(NONE.moved(name("Ovis"), name("Bovidae"), SHIPPED)));
    assertEquals(
        List.of("Ovis aries", "Ovis", "Bovidae"),
        tree.lineage(name("Ovis aries")).stream().map(TaxonName::value).toList());
  }

  @Test
  void aRingOrAMissingParentIsRefused() {
    assertTrue(NONE.moved(name("Caprini"), name("Ovis"), SHIPPED).value().isEmpty());
    assertEquals(
        "\"Nowhere\" is no name of this house. Nothing was moved.",
        NONE.moved(name("Ovis"), name("Nowhere"), SHIPPED).fold(n -> "", none -> none.reason()));
    assertTrue(
        HouseNames.of(List.of(house("Ovis vignei", "Nowhere", null)))
            .on(SHIPPED)
            .value()
            .isEmpty());
  }

  @Test
  void aNewNameTakesGrowthFromWhatItStandsUnder() {
    TaxonTree tree =
        tree(
            HouseNames.of(
                List.of(
                    house("Ovis vignei", "Ovis", null), house("Ovis arkal", null, "Ovis vignei"))));
    assertEquals(Growth.DETERMINATE, tree.taxon(name("Ovis vignei")).orElseThrow().growth());
    assertEquals("synonym", tree.taxon(name("Ovis arkal")).orElseThrow().rank());
  }
}

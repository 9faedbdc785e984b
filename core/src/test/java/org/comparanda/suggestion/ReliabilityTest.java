package org.comparanda.suggestion;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.comparanda.bone.Side;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.Proportion;
import org.comparanda.statistics.discriminant.Shares;
import org.comparanda.taxon.TaxonName;
import org.junit.jupiter.api.Test;

class ReliabilityTest {
  private static final TaxonName SHEEP = new TaxonName("Ovis aries");
  private static final TaxonName GOAT = new TaxonName("Capra hircus");

  // Counted by hand: a share on a bound belongs to the band that it begins; 1 is in the last band
  @Test
  void bandsHoldTheAnimalsWhoseLargestShareLiesInThem() {
    List<Trial.ShareBand> bands =
        Reliability.of(
            List.of(
                sheep(0.5),
                sheep(0.5625),
                goatTakenForSheep(0.59375),
                goatTakenForSheep(0.90625),
                sheep(0.9375),
                sheep(0.96875),
                sheep(0.99),
                sheep(1)));
    assertEquals(
        List.of(
            new Trial.ShareBand(0.5, 0.6, 0.5520833333333334, new Proportion(2, 3)),
            new Trial.ShareBand(0.9, 0.95, 0.921875, new Proportion(1, 2)),
            new Trial.ShareBand(0.95, 0.99, 0.96875, new Proportion(1, 1)),
            new Trial.ShareBand(0.99, 1, 0.995, new Proportion(2, 2))),
        bands);
  }

  @Test
  void animalsThatCouldNotBeJudgedAreInNoBand() {
    HeldOut unknown = row(SHEEP, Optional.empty(), Outcome.none("Too few.", "Add animals."));
    assertEquals(List.of(), Reliability.of(List.of(unknown)));
  }

  private static HeldOut sheep(double share) {
    return row(SHEEP, Optional.of(SHEEP), shares(share));
  }

  private static HeldOut goatTakenForSheep(double share) {
    return row(GOAT, Optional.of(SHEEP), shares(share));
  }

  private static Outcome<Shares> shares(double largest) {
    return Outcome.of(new Shares(List.of(1 - largest, largest)));
  }

  private static HeldOut row(
      TaxonName taxon, Optional<TaxonName> suggested, Outcome<Shares> shares) {
    return new HeldOut(
        new Offered(
            0, new BoneRow(Side.NOT_KNOWN, Map.of()), Sample.Offer.ANIMAL, Offered.Level.ONLY_BONE),
        List.of(),
        taxon,
        taxon.equals(SHEEP) ? 1 : 0,
        suggested,
        shares,
        true,
        Outcome.none("Not looked at.", "None."),
        Answer.FITS_A_FEW);
  }
}

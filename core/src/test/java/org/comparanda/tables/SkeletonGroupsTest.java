package org.comparanda.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.comparanda.taxon.TaxonName;
import org.junit.jupiter.api.Test;

class SkeletonGroupsTest {
  private static final ReferenceTables TABLES = ReferenceTables.shipped();
  private static final SkeletonGroups GROUPS = SkeletonGroups.shipped(TABLES.taxa());

  @Test
  void taxonBelongsToTheGroupOfItsNearestAncestor() {
    assertEquals(Optional.of("bovid_cervid"), GROUPS.of(new TaxonName("Ovis aries")));
    assertEquals(Optional.of("bovid_cervid"), GROUPS.of(new TaxonName("Capreolus")));
    assertEquals(Optional.of("equid"), GROUPS.of(new TaxonName("Equus caballus")));
    assertEquals(Optional.empty(), GROUPS.of(new TaxonName("Testudo graeca")));
    assertEquals(Optional.empty(), GROUPS.of(new TaxonName("Mammalia")));
    assertEquals(Optional.empty(), GROUPS.of(new TaxonName("A kind of the table's own")));
  }

  @Test
  void everyGroupHasNumbersInTheElements() {
    Set<String> counted =
        TABLES.protocol().elements().stream()
            .flatMap(e -> e.perSkeleton().keySet().stream())
            .collect(Collectors.toSet());
    Set<String> named =
        TableFile.shipped("skeleton-groups.json").rows("groups").stream()
            .map(row -> row.text("group"))
            .collect(Collectors.toSet());
    assertEquals(counted, named);
  }

  @Test
  void groupOfAnUnknownTaxonIsABrokenTable() {
    String text = "{\"groups\": [{\"group\": \"g\", \"taxon\": \"Ovi\", \"source\": \"test\"}]}";
    BrokenTable problem =
        assertThrows(
            BrokenTable.class,
            () -> SkeletonGroups.read(TableFile.of("skeleton-groups.json", text), TABLES.taxa()));
    assertTrue(String.valueOf(problem.getMessage()).contains("\"Ovi\""));
  }
}

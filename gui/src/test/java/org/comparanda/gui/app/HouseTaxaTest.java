package org.comparanda.gui.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.function.Supplier;
import org.comparanda.measurement.PersonId;
import org.comparanda.register.ChangeNote;
import org.comparanda.storage.Collection;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HouseTaxaTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-11-25T10:00:00Z"), ZoneOffset.UTC);
  private static final TaxonName SHEEP = new TaxonName("Ovis aries");
  private static final TaxonName NOW = new TaxonName("Ovis nova");

  @TempDir Path folder;

  @Test
  void whatIsMadeOfTheTaxaIsMadeAnewOnceNamesWereChanged() {
    TaxonTree shipped = ReferenceTables.shipped().taxa();
    try (Collection room = Collection.create(folder.resolve("room.comparanda"), CLOCK)) {
      HouseTaxa taxa = new HouseTaxa(room.names(), shipped);
      Supplier<List<TaxonName>> old = taxa.following(tree -> tree.synonymsOf(NOW));
      List<TaxonName> before = old.get();
      assertSame(before, old.get());
      room.names().rename(SHEEP, NOW, shipped, new ChangeNote(new PersonId("p1"), "new list"));
      assertSame(before, old.get(), "not looked at again yet");
      taxa.again();
      assertEquals(List.of(SHEEP), old.get());
      assertEquals(NOW, taxa.get().accepted(SHEEP));
    }
  }
}

package org.comparanda.gui.shelf.keeping;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.Animal;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.ShelfBone;
import org.comparanda.reference.Source;
import org.comparanda.storage.Collection;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;

/** A real collection of two invented animals for the keeper's pages. */
public final class KeepersRoom {
  public static final ReferenceTables TABLES = ReferenceTables.shipped();
  public static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-11-25T09:00:00Z"), ZoneOffset.UTC);

  private KeepersRoom() {}

  public static Collection collection(Path folder) {
    Collection made = Collection.create(folder.resolve("room.comparanda"), CLOCK);
    made.animals()
        .add(
            List.of(
                sheep("T-1", bone(Side.LEFT, 150.0), bone(Side.RIGHT, 165.0)),
                sheep("T-2", bone(Side.RIGHT, 151.0))));
    return made;
  }

  public static KeeperRoom of(Collection collection) {
    return of(collection, TABLES::taxa);
  }

  static KeeperRoom of(Collection collection, Supplier<TaxonTree> taxa) {
    return new KeeperRoom(
        collection.animals(),
        collection.register(),
        collection.acceptedFindings(),
        collection.readings(),
        TABLES.protocol(),
        taxa,
        () -> collection.houseRules().inForce().comparison(),
        CLOCK,
        Words.of("keeper", Locale.ENGLISH),
        Locale.ENGLISH);
  }

  public static ShelfBone bone(Side side, double gl) {
    return new ShelfBone(
        new ElementKey("humerus"),
        side,
        Portion.WHOLE,
        Set.of(),
        Map.of(new MeasurementCode("GL"), gl));
  }

  private static Animal sheep(String number, ShelfBone... bones) {
    return new Animal(
        new AnimalId(number),
        Optional.of(new TaxonName("Ovis aries")),
        Source.OWN_DRAWER,
        Optional.of("C 4"),
        "",
        "adult",
        "",
        Optional.empty(),
        Optional.empty(),
        Set.of(),
        "",
        List.of(bones));
  }
}

package org.comparanda.gui.secondlook;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.comparanda.bone.BoneAge;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.Person;
import org.comparanda.measurement.PersonId;
import org.comparanda.secondlook.LookDesk;
import org.comparanda.secondlook.Queue;
import org.comparanda.storage.Collection;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.tables.TraitTable;
import org.comparanda.taxon.TaxonName;
import org.comparanda.tray.Beside;
import org.comparanda.tray.Call;
import org.comparanda.tray.Qualifier;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;
import org.comparanda.tray.TrayId;

/**
 * A room on a real file where Ann called ten bones: L-0 to L-4 sheep, L-5 to L-9 goat; the numbers
 * said red deer of each. Every second one is drawn. All of it is invented.
 */
final class LookRoom {
  static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T10:00:00Z"), ZoneOffset.UTC);
  static final Person ANN = new Person(new PersonId("ann"), "Invented Ann");
  static final Person BEN = new Person(new PersonId("ben"), "Invented Ben");
  static final Person CAT = new Person(new PersonId("cat"), "Invented Cat");
  private static final ReferenceTables TABLES = ReferenceTables.shipped();
  private static final TrayId TRAY = new TrayId("T-1");

  final Collection collection;

  LookRoom(Path folder) {
    collection = Collection.create(folder.resolve("c.comparanda"), CLOCK);
    List.of(ANN, BEN, CAT).forEach(collection.people()::save);
    collection
        .trays()
        .save(new Tray(TRAY, "Lot 1", "Pit 4", BoneAge.RECENT, "pit 4", "", Tray.State.DONE));
    IntStream.range(0, 10).forEach(i -> called("L-" + i, i < 5 ? "Ovis aries" : "Capra hircus"));
  }

  private void called(String bone, String taxon) {
    collection
        .trays()
        .save(
            TrayBone.fresh(
                new BoneId(bone), TRAY, new ElementKey("radius"), Side.LEFT, Portion.DISTAL));
    collection
        .trays()
        .record(
            new Call(
                0,
                new BoneId(bone),
                new TaxonName(taxon),
                Qualifier.NONE,
                ANN.id(),
                CLOCK.instant(),
                "broad groove",
                true),
            new Beside(List.of(new TaxonName("Cervus elaphus")), List.of(), Optional.of(0.31)));
  }

  SecondLookRoom room(Optional<Person> sits) {
    return new SecondLookRoom(
        by ->
            new LookDesk(collection.by(by).trays(), collection.by(by).draws(), new Queue(2, 0.05)),
        collection.trays(),
        collection.houseRules(),
        collection.people(),
        sits.map(Person::id),
        TABLES.protocol(),
        TABLES::taxa,
        () -> TraitTable.shipped(Locale.ENGLISH, TABLES.protocol(), TABLES.taxa()),
        Words.of("secondlook", Locale.ENGLISH),
        Locale.ENGLISH,
        CLOCK);
  }

  SecondLookViewModel model(Optional<Person> sits) {
    SecondLookViewModel model = new SecondLookViewModel(room(sits), Runnable::run, Runnable::run);
    model.refresh();
    return model;
  }
}

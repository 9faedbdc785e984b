package org.comparanda.gui.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.comparanda.bone.BoneAge;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.Person;
import org.comparanda.measurement.PersonId;
import org.comparanda.storage.Collection;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;
import org.comparanda.tray.TrayId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Slips and the page of keys as files beside the collection; read back by PDFBox. Invented. */
class SlipFolderTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-11-25T10:00:00Z"), ZoneOffset.UTC);

  @TempDir private Path folder;

  private static String text(Path file) throws IOException {
    try (PDDocument read = Loader.loadPDF(file.toFile())) {
      return new PDFTextStripper().getText(read);
    }
  }

  private Workplace place(Collection collection, Locale language) {
    return new Workplace(
        Runnable::run,
        Runnable::run,
        language,
        CLOCK,
        new Look(),
        ReferenceTables.shipped(language),
        collection,
        new RememberedThings(folder));
  }

  @Test
  void aSlipHoldsNumberElementAndTrayAndThePageOfKeysHoldsEveryKey() throws IOException {
    try (Collection collection = withOneBone()) {
      SlipFolder slips = new SlipFolder(place(collection, Locale.ENGLISH));
      Path slip = slips.slip(new BoneId("L1/7"));
      assertEquals(folder.resolve("slips").resolve("L1%2F7.pdf"), slip);
      String said = text(slip);
      assertTrue(said.contains("L1/7"), said);
      assertTrue(said.contains("humerus"), said);
      assertTrue(said.contains("First tray"), said);
      String keys = text(slips.keyCard());
      assertTrue(keys.contains("0 1 more bones like this one"), keys);
      assertTrue(keys.contains("- 1 broken"), keys);
      assertTrue(keys.contains("- - - STOP"), keys);
    }
  }

  @Test
  void aSlipSpeaksTheLanguageOfTheScreens() throws IOException {
    try (Collection collection = withOneBone()) {
      SlipFolder slips = new SlipFolder(place(collection, Locale.GERMAN));
      String said = text(slips.slip(new BoneId("L1/7")));
      assertTrue(said.contains("Oberarmbein links, ganz"), said);
      assertTrue(said.contains("noch nicht bestimmt"), said);
      assertTrue(said.contains("Ein Vorschlag ist keine Bestimmung."), said);
      assertTrue(text(slips.keyCard()).contains("Seite 1"), "the page of keys, too");
    }
  }

  private Collection withOneBone() {
    Collection collection = Collection.create(folder.resolve("c.comparanda"), CLOCK);
    Tray tray =
        new Tray(new TrayId("t1"), "L1", "First tray", BoneAge.RECENT, "", "", Tray.State.WAITING);
    collection.trays().save(tray);
    collection.people().save(new Person(new PersonId("p1"), "Invented Person"));
    collection
        .trays()
        .save(
            TrayBone.fresh(
                new BoneId("L1/7"),
                tray.id(),
                new ElementKey("humerus"),
                Side.LEFT,
                Portion.WHOLE));
    return collection;
  }
}

package org.comparanda.gui.shelf.skeleton;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import org.comparanda.bone.ElementKey;
import org.comparanda.capture.NamedKey;
import org.comparanda.gui.capture.MapMemory;
import org.comparanda.gui.capture.ReadingPlace;
import org.comparanda.gui.shelf.keeping.KeepersRoom;
import org.comparanda.gui.shelf.keeping.Signature;
import org.comparanda.gui.text.Numbers;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.Reading;
import org.comparanda.reference.AnimalId;
import org.comparanda.storage.Collection;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** Skeleton T-1 of an invented room, measured with the keys of the Bench, Enter as \n. */
abstract class MeasuredSkeleton {
  static final ElementKey CALCANEUS = new ElementKey("calcaneus");
  static final BoneId LEFT = new BoneId("T-1 calcaneus left");
  static final BoneId RIGHT = new BoneId("T-1 calcaneus right");

  @TempDir Path folder;
  Collection collection;
  Signature signature;
  SkeletonViewModel skeleton;

  @BeforeEach
  void open() {
    collection = KeepersRoom.collection(folder);
    start();
  }

  void start() {
    signature = new Signature();
    skeleton = new SkeletonViewModel(room(), signature, Runnable::run, Runnable::run, () -> {});
    signature.whoProperty().set("p1");
    skeleton.open(new AnimalId("T-1"));
  }

  SkeletonRoom room() {
    return new SkeletonRoom(
        KeepersRoom.of(collection),
        new ReadingPlace(
            "shelf 1",
            KeepersRoom.CLOCK,
            Words.of("bench", Locale.ENGLISH),
            new Numbers(Locale.ENGLISH),
            KeepersRoom.TABLES.protocol(),
            collection.readings(),
            collection.drafts(),
            collection.caliperCards(),
            new MapMemory(new HashMap<>())),
        collection.skeletons(),
        collection.houseRules(),
        collection.stops(),
        KeepersRoom.TABLES.outlines(),
        () -> folder.resolve("keys.pdf"));
  }

  @AfterEach
  void close() {
    collection.close();
  }

  void calcaneus() {
    skeleton.choose(KeepersRoom.TABLES.protocol().element(CALCANEUS).orElseThrow());
  }

  void keys(String characters) {
    for (int i = 0; i < characters.length(); i++) {
      char c = characters.charAt(i);
      if (skeleton.inHand().state().questionsProperty().get().isPresent()) {
        skeleton.inHand().state().typed(c);
      } else if (c == '\n') {
        skeleton.inHand().readings().pressed(NamedKey.ENTER);
      } else {
        skeleton.inHand().readings().typed(c);
      }
    }
  }

  SkeletonRow row(int index) {
    return skeleton.inHand().rows().get(index);
  }

  List<String> taken(BoneId bone) {
    return collection.readings().of(bone).stream().map(Reading::asTyped).toList();
  }

  String message() {
    return skeleton.inHand().readings().messageProperty().get();
  }

  void stop() {
    skeleton.inHand().readings().pressed(NamedKey.STOP);
    skeleton.inHand().readings().pressed(NamedKey.ENTER);
  }
}

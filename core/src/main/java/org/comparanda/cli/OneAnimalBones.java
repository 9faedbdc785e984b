package org.comparanda.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import org.comparanda.exchange.table.BoneTable;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.BoneInHand;

/** How the rows of a table of bones are put together before a size is estimated. */
enum OneAnimalBones {
  /** Each bone by itself, streamed. */
  EACH_BONE {
    @Override
    void forEach(BoneTable bones, BiConsumer<String, List<BoneInHand>> taker) {
      bones.forEach(bone -> taker.accept(bone.id(), List.of(bone)));
    }
  },
  /** Bones that share an animal, or else a label, are one animal; the table is held in memory. */
  BY_ANIMAL {
    @Override
    void forEach(BoneTable bones, BiConsumer<String, List<BoneInHand>> taker) {
      Map<String, List<BoneInHand>> together = new LinkedHashMap<>();
      bones.forEach(
          bone ->
              together
                  .computeIfAbsent(
                      bone.animal().map(AnimalId::value).orElse(bone.id()), id -> new ArrayList<>())
                  .add(bone));
      together.forEach(taker);
    }
  };

  abstract void forEach(BoneTable bones, BiConsumer<String, List<BoneInHand>> taker);

  /** By animal where the measurements asked from are of several elements. */
  static OneAnimalBones of(List<String> from) {
    return from.stream().map(OneAnimalBones::element).distinct().count() > 1
        ? BY_ANIMAL
        : EACH_BONE;
  }

  private static String element(String name) {
    return name.substring(0, Math.max(0, name.indexOf('.')));
  }
}

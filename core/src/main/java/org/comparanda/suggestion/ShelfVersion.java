package org.comparanda.suggestion;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Collectors;
import org.comparanda.reference.Animal;
import org.comparanda.reference.Shelf;
import org.comparanda.reference.ShelfBone;

/** Names the state of a shelf by what may feed a fit: equal rows have equal versions. */
final class ShelfVersion {
  private static final int SHOWN = 12;

  private ShelfVersion() {}

  /** The first 12 hexadecimal digits of SHA-256 over the animals in catalogue order. */
  static String of(Shelf shelf) {
    String rows = shelf.animals().stream().map(ShelfVersion::row).collect(Collectors.joining("\n"));
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(rows.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(digest).substring(0, SHOWN);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java has SHA-256.", e);
    }
  }

  private static String row(Animal animal) {
    List<String> bones = animal.bones().stream().map(ShelfVersion::bone).sorted().toList();
    return animal.id()
        + "|"
        + animal.taxon().map(Object::toString).orElse("")
        + "|"
        + animal.flags().stream().sorted().toList()
        + "|"
        + bones;
  }

  private static String bone(ShelfBone bone) {
    return bone.element()
        + " "
        + bone.side()
        + " "
        + bone.portion()
        + " "
        + bone.flags().stream().sorted().toList()
        + " "
        + bone.values();
  }
}

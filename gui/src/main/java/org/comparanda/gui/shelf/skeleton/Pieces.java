package org.comparanda.gui.shelf.skeleton;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;

/**
 * Which piece of each side is meant, where an element is there in pieces.
 *
 * @param chosen the part of the chosen piece; a side with none has one bone
 */
record Pieces(Map<Side, Portion> chosen) {
  static final Pieces NONE = new Pieces(Map.of());

  Pieces {
    chosen = Map.copyOf(chosen);
  }

  /** A part that none of these is. */
  static Optional<Portion> free(List<Portion> there) {
    return Stream.of(Portion.PROXIMAL, Portion.DISTAL, Portion.SHAFT, Portion.OTHER)
        .filter(part -> !there.contains(part))
        .findFirst();
  }

  Optional<Portion> of(Side side) {
    return Optional.ofNullable(chosen.get(side));
  }

  Pieces with(Side side, Portion portion) {
    Map<Side, Portion> more = new EnumMap<>(Side.class);
    more.putAll(chosen);
    more.put(side, portion);
    return new Pieces(more);
  }
}

package org.comparanda.register;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Flag;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.bone.Symmetry;
import org.comparanda.measurement.Measurement;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.Protocol;
import org.comparanda.reference.ShelfBone;
import org.comparanda.statistics.Outcome;

/**
 * A bone of an animal's card as it is to be: added when the animal has none of that element, side
 * and portion, otherwise changed. Values that are not named stay; an empty one is withdrawn.
 *
 * @param flags new flags; empty keeps those that it has
 * @param mm values in mm by code; empty withdraws one
 */
public record BoneEdit(
    ElementKey element,
    Side side,
    Portion portion,
    Optional<Set<Flag>> flags,
    Map<MeasurementCode, Optional<Double>> mm) {
  public BoneEdit {
    flags = flags.map(Set::copyOf);
    mm = java.util.Collections.unmodifiableMap(new TreeMap<>(mm));
  }

  /** The card with it, or why not: an element or code that the protocol lacks. */
  public Outcome<AnimalCard> apply(AnimalCard card, Protocol protocol) {
    if (protocol.element(element).isEmpty()) {
      return Outcome.none(
          "\"" + element + "\" is no element of the protocol. Nothing was stored.",
          "Correct the word.");
    }
    boolean axial = protocol.element(element).orElseThrow().symmetry() == Symmetry.AXIAL;
    if (axial && side == Side.NOT_KNOWN) {
      return new BoneEdit(element, Side.AXIAL, portion, flags, mm).apply(card, protocol);
    }
    for (MeasurementCode code : mm.keySet()) {
      Optional<Measurement> known = protocol.measurement(element, code);
      if (known.isEmpty()) {
        return Outcome.none(
            "\"" + code + "\" is no measurement of the " + element + ". Nothing was stored.",
            "Known are: "
                + String.join(
                    ", ", protocol.of(element).stream().map(m -> m.code().value()).toList())
                + ".");
      }
    }
    List<ShelfBone> bones = new ArrayList<>(card.animal().bones());
    int place =
        IntStream.range(0, bones.size()).filter(i -> is(bones.get(i))).findFirst().orElse(-1);
    ShelfBone before =
        place < 0 ? new ShelfBone(element, side, portion, Set.of(), Map.of()) : bones.get(place);
    Map<MeasurementCode, Double> values = new TreeMap<>(before.values());
    mm.forEach(
        (code, value) ->
            value.ifPresentOrElse(v -> values.put(code, v), () -> values.remove(code)));
    ShelfBone after = new ShelfBone(element, side, portion, flags.orElse(before.flags()), values);
    if (place < 0) {
      bones.add(after);
    } else {
      bones.set(place, after);
    }
    return Outcome.of(card.withAnimal(card.animal().withBones(bones)));
  }

  private boolean is(ShelfBone bone) {
    return bone.element().equals(element) && bone.side() == side && bone.portion() == portion;
  }
}

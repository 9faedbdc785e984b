package org.comparanda.gui.sizedesk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.comparanda.bone.BoneState;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Fusion;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.BoneInHand;
import org.comparanda.sizeestimate.SizeDesk;
import org.comparanda.sizeestimate.SizesDisagree;
import org.comparanda.taxon.TaxonName;

/**
 * What is in hand, as bones: one per element measured.
 *
 * @param bones labelled by their element
 */
record InHand(List<BoneInHand> bones) {
  InHand {
    bones = List.copyOf(bones);
  }

  static InHand of(SizeAsk ask) {
    Map<ElementKey, Map<MeasurementCode, Double>> byElement = new LinkedHashMap<>();
    ask.values()
        .forEach(
            (key, value) -> {
              int dot = key.indexOf('.');
              ElementKey element =
                  dot > 0 ? new ElementKey(key.substring(0, dot)) : ElementKey.UNNAMED;
              byElement
                  .computeIfAbsent(element, e -> new HashMap<>())
                  .put(new MeasurementCode(key.substring(dot + 1)), value);
            });
    List<BoneInHand> bones = new ArrayList<>();
    byElement.forEach(
        (element, values) ->
            bones.add(
                new BoneInHand(
                    element.value(),
                    ask.own(),
                    element,
                    Side.NOT_KNOWN,
                    Portion.WHOLE,
                    new BoneState(Fusion.CANT_SEE, Fusion.CANT_SEE, Set.of()),
                    values)));
    return new InHand(bones);
  }

  List<SizesDisagree> notOneAnimal(SizeDesk desk, Set<TaxonName> taxa) {
    return bones.size() > 1 ? desk.oneAnimal(taxa).among(bones) : List.of();
  }
}

package org.comparanda.suggestion;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.comparanda.bone.Element;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.Protocol;
import org.comparanda.reference.BoneInHand;
import org.comparanda.statistics.Proportion;

/** The second line under an answer: which bone, which sample, how the trial of the set went. */
final class SampleLine {
  private SampleLine() {}

  /** "Left distal humerus, 2 measurements, 47 animals." */
  static String of(BoneInHand bone, Protocol protocol, int measurements, int animals) {
    return bone(bone, protocol)
        + ", "
        + Wording.count(measurements, "measurement")
        + ", "
        + Wording.count(animals, "animal")
        + ".";
  }

  /** What the trial says beside a verdict; empty where it has nothing to say. */
  static String trial(Verdict verdict, Proportion gate, Proportion toldApart) {
    return switch (verdict.answer()) {
      case FITS_ONE ->
          " In the trial of this set that answer was right " + AnswerSentence.times(gate) + ".";
      case FITS_A_FEW, FITS_GROUP_ONLY ->
          toldApart.tries() == 0
              ? " The trial of this set held none of them."
              : " In the trial of this set they were told apart "
                  + AnswerSentence.times(toldApart)
                  + ".";
      default -> "";
    };
  }

  static String elementName(ElementKey element, Protocol protocol) {
    return element.equals(ElementKey.UNNAMED)
        ? "bone"
        : protocol
            .element(element)
            .map(Element::name)
            .orElse(element.value())
            .replaceFirst(",.*", "")
            .toLowerCase(Locale.ROOT);
  }

  private static String bone(BoneInHand bone, Protocol protocol) {
    List<String> words = new ArrayList<>();
    if (bone.side() == Side.LEFT || bone.side() == Side.RIGHT) {
      words.add(bone.side().name().toLowerCase(Locale.ROOT));
    }
    if (bone.portion() == Portion.PROXIMAL || bone.portion() == Portion.DISTAL) {
      words.add(bone.portion().name().toLowerCase(Locale.ROOT));
    }
    words.add(elementName(bone.element(), protocol));
    if (bone.portion() == Portion.SHAFT) {
      words.add("shaft");
    }
    String text = String.join(" ", words);
    return Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }
}

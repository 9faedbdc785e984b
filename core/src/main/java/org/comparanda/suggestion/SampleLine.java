package org.comparanda.suggestion;

import java.util.Locale;
import org.comparanda.bone.Element;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.ElementNames;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.Protocol;
import org.comparanda.reference.BoneInHand;
import org.comparanda.statistics.Proportion;

/** The second line under an answer: which bone, which sample, how the trial of the set went. */
final class SampleLine {
  private final Protocol protocol;
  private final Locale language;
  private final Phrases phrases;

  SampleLine(Protocol protocol, Locale language) {
    this.protocol = protocol;
    this.language = language;
    this.phrases = Phrases.in(language);
  }

  /** "Left distal humerus, 2 measurements, 47 animals." */
  String of(BoneInHand bone, int measurements, int animals) {
    return phrases.say(
        "sample",
        bone(bone),
        phrases.say("measurements", measurements),
        phrases.say("animals", animals));
  }

  /** What the trial says beside a verdict; empty where it has nothing to say. */
  String trial(Verdict verdict, Proportion gate, Proportion toldApart) {
    return switch (verdict.answer()) {
      case FITS_ONE -> phrases.say("trial.one", AnswerSentence.times(gate, phrases));
      case FITS_A_FEW, FITS_GROUP_ONLY ->
          toldApart.tries() == 0
              ? phrases.say("trial.none")
              : phrases.say("trial.apart", AnswerSentence.times(toldApart, phrases));
      default -> "";
    };
  }

  /** The element as the answers call it. */
  String elementName(ElementKey element) {
    return element.equals(ElementKey.UNNAMED)
        ? "bone"
        : protocol.element(element).map(this::name).orElse(element.value()).replaceFirst(",.*", "");
  }

  /** Lower-case inside a sentence, where the language of the name writes it so. */
  private String name(Element element) {
    String name = ElementNames.in(language).of(element);
    return name.equals(element.name()) ? name.toLowerCase(Locale.ROOT) : name;
  }

  private String bone(BoneInHand bone) {
    boolean end = bone.portion() == Portion.PROXIMAL || bone.portion() == Portion.DISTAL;
    boolean paired = bone.side() == Side.LEFT || bone.side() == Side.RIGHT;
    String text =
        phrases.say(
            "bone",
            paired ? phrases.say("side." + bone.side()) : "",
            end ? phrases.say("portion." + bone.portion()) : "",
            elementName(bone.element()),
            bone.portion() == Portion.SHAFT ? phrases.say("portion.SHAFT") : "");
    return Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }
}

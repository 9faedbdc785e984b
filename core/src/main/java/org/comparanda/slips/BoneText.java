package org.comparanda.slips;

import java.util.Locale;
import java.util.Optional;
import org.comparanda.bone.Element;
import org.comparanda.bone.Side;
import org.comparanda.dossier.Dossier;
import org.comparanda.tray.Call;

/** A bone and its call in words, as labels have them. */
record BoneText(SlipFacts facts) {
  /** For example: left humerus, distal. */
  String bone(Dossier d) {
    String element =
        facts
            .protocol()
            .element(d.bone().element())
            .map(Element::name)
            .orElse(d.bone().element().value());
    String side =
        d.bone().side() == Side.LEFT || d.bone().side() == Side.RIGHT
            ? word(d.bone().side()) + " "
            : "";
    return side + element + ", " + word(d.bone().portion());
  }

  /** The name with its qualifier where open nomenclature puts it; "not called yet" without one. */
  String name(Optional<Call> call) {
    return call.map(BoneText::name).orElse("not called yet");
  }

  static String name(Call call) {
    return call.written();
  }

  /** The name, with what the row is where it is no ordinary call. */
  static String nameAndKind(Call call) {
    return call.kind() == Call.Kind.CALL ? name(call) : name(call) + " (" + word(call.kind()) + ")";
  }

  /** Who made the call and on which day. */
  String by(Call call) {
    return facts.name().apply(call.person()) + ", " + call.at().toString().substring(0, 10);
  }

  static String word(Enum<?> word) {
    return word.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}

package org.comparanda.slips;

import java.util.Locale;
import java.util.Optional;
import org.comparanda.bone.Element;
import org.comparanda.bone.Side;
import org.comparanda.dossier.Dossier;
import org.comparanda.tray.Call;
import org.comparanda.tray.Qualifier;

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
    String taxon = call.taxon().value();
    Qualifier qualifier = call.qualifier();
    return switch (qualifier) {
      case NONE -> taxon;
      case CF, AFF -> beforeEpithet(taxon, qualifier.sign());
      case SP, INDET -> taxon + " " + qualifier.sign();
      case UNCERTAIN -> qualifier.sign() + taxon;
    };
  }

  private static String beforeEpithet(String taxon, String sign) {
    int blank = taxon.indexOf(' ');
    return blank < 0
        ? sign + " " + taxon
        : taxon.substring(0, blank) + " " + sign + taxon.substring(blank);
  }

  /** Who made the call and on which day. */
  String by(Call call) {
    return facts.name().apply(call.person()) + ", " + call.at().toString().substring(0, 10);
  }

  static String word(Enum<?> word) {
    return word.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}

package org.comparanda.gui.shelf.keeping;

import java.util.Locale;
import org.comparanda.bone.Flag;
import org.comparanda.check.Correction;
import org.comparanda.check.Finding;
import org.comparanda.gui.text.Numbers;
import org.comparanda.gui.text.Words;

/** What a finding proposes to put on the card, in the words of the screen. */
record CorrectionWords(Words words, Locale locale) {
  private static final int DECIMALS = 3;

  String proposal(Finding finding) {
    return finding
        .correction()
        .map(correction -> words.get("correction.proposed", proposed(finding, correction)))
        .orElseGet(() -> words.get("correction.none"));
  }

  private String proposed(Finding finding, Correction correction) {
    String animal = finding.animal().orElse("");
    String bone = finding.bone().map(words::said).orElse("");
    if (correction instanceof Correction.Value value) {
      return words.get(
          "correction.value",
          animal,
          bone,
          value.code().value(),
          number(value.is()),
          number(value.was()));
    }
    if (correction instanceof Correction.Name name) {
      return words.get("correction.name", animal, name.is(), name.was());
    }
    if (correction instanceof Correction.BoneFlag flag) {
      return words.get("correction.bone", animal, bone, flag(flag.flag()));
    }
    return words.get(
        "correction.animal", animal, flag(((Correction.AnimalFlag) correction).flag()));
  }

  private String number(double mm) {
    return new Numbers(locale).upTo(mm, DECIMALS);
  }

  private String flag(Flag flag) {
    return words.get("flag." + flag.name().toLowerCase(Locale.ROOT));
  }
}

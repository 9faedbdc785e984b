package org.comparanda.tray;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.comparanda.statistics.Outcome;
import org.comparanda.taxon.TaxonName;

/**
 * A call as people write it, read into name and qualifier: "Ovis aries", "cf. Ovis aries", "Ovis
 * cf. aries", "Ovis sp.", "Bovidae indet.", "Bovidae gen. et sp. indet.", "?Ovis aries".
 */
public record WrittenName(TaxonName taxon, Qualifier qualifier) {
  /** Reads it; not possible where no name is left or two qualifiers contradict each other. */
  public static Outcome<WrittenName> read(String text) {
    List<String> name = new ArrayList<>();
    List<Qualifier> qualifiers = new ArrayList<>();
    boolean genus = false;
    for (String word : List.of(text.replace("?", " ? ").strip().split("\\s+", -1))) {
      switch (word.toLowerCase(Locale.ROOT).replace(".", "")) {
        case "cf" -> qualifiers.add(Qualifier.CF);
        case "aff" -> qualifiers.add(Qualifier.AFF);
        case "sp", "spp" -> qualifiers.add(Qualifier.SP);
        case "indet" -> qualifiers.add(Qualifier.INDET);
        case "?" -> qualifiers.add(Qualifier.UNCERTAIN);
        case "gen" -> genus = true;
        case "et", "" -> {}
        default -> name.add(word);
      }
    }
    if (qualifiers.contains(Qualifier.INDET)) {
      boolean species = qualifiers.remove(Qualifier.SP);
      if (genus && species) {
        qualifiers.replaceAll(q -> q == Qualifier.INDET ? Qualifier.GEN_ET_SP_INDET : q);
      }
    }
    if (name.isEmpty() || qualifiers.size() > 1) {
      return Outcome.none(
          "\"" + text + "\" is no name with at most one of cf., aff., sp., indet. and ?.",
          "Write for example \"Ovis cf. aries\" or \"Bovidae indet.\"");
    }
    return Outcome.of(
        new WrittenName(
            new TaxonName(String.join(" ", name)),
            qualifiers.isEmpty() ? Qualifier.NONE : qualifiers.get(0)));
  }

  /** The name with its sign where open nomenclature puts it: "Ovis cf. aries", "Bovidae indet." */
  public String text() {
    String name = taxon.value();
    int blank = name.indexOf(' ');
    return switch (qualifier) {
      case NONE -> name;
      case CF, AFF ->
          blank < 0
              ? qualifier.sign() + " " + name
              : name.substring(0, blank) + " " + qualifier.sign() + name.substring(blank);
      case SP, INDET, GEN_ET_SP_INDET -> name + " " + qualifier.sign();
      case UNCERTAIN -> qualifier.sign() + name;
    };
  }
}

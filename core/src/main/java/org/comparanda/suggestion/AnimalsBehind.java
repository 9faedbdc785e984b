package org.comparanda.suggestion;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.AnimalId;
import org.comparanda.taxon.TaxonName;

/** The animals that an answer rests on, each with a print of what was compared of it. */
final class AnimalsBehind {
  private static final int SHOWN = 8;

  private AnimalsBehind() {}

  /** By catalogue number; none where nothing was fitted. Equal prints: equal taxon and values. */
  static Map<AnimalId, String> of(ElementRows element, Suggestion s) {
    Set<TaxonName> inFit = s.taxa().stream().map(TaxonFit::taxon).collect(Collectors.toSet());
    Map<AnimalId, String> prints = new TreeMap<>();
    for (AnimalRow animal : element.animals()) {
      boolean ownOut = s.basis().leftOut().filter(animal.animal()::equals).isEmpty();
      if (ownOut && inFit.contains(animal.taxon()) && has(animal, s)) {
        prints.put(animal.animal(), print(animal, s.measurements()));
      }
    }
    return prints;
  }

  private static boolean has(AnimalRow animal, Suggestion s) {
    return switch (s.basis().missing().way()) {
      case NOT_FITTED -> false;
      case EXACT_SUBSET ->
          animal.mean().has(s.measurements())
              || animal.bones().stream().anyMatch(b -> b.has(s.measurements()));
      case FILLED -> !animal.mean().partOf(s.measurements()).isEmpty();
    };
  }

  private static String print(AnimalRow animal, List<MeasurementCode> set) {
    StringBuilder text = new StringBuilder(animal.taxon().value());
    for (BoneRow bone : animal.bones()) {
      text.append('|').append(bone.side());
      bone.partOf(set).forEach(c -> text.append(' ').append(c).append(bone.values().get(c)));
    }
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256")
              .digest(text.toString().getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(digest).substring(0, SHOWN);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java has SHA-256.", e);
    }
  }
}

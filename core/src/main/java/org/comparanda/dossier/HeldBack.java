package org.comparanda.dossier;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.comparanda.tray.TrayBone;

/**
 * What an export keeps in the house, and what is left to go out.
 *
 * @param open the bones that go out
 * @param places bones whose recorded place is held back
 * @param restricted bones left out because they are restricted
 * @param stopped bones left out because they may be human
 * @param practice bones of the shelf's own animals, left out because they are no finds
 * @param openness what was opened, and by whom
 */
public record HeldBack(
    List<Dossier> open,
    long places,
    long restricted,
    long stopped,
    long practice,
    Openness openness) {
  public HeldBack {
    open = List.copyOf(open);
  }

  /** Sorts bones into those that go out and those that don't. */
  public static HeldBack of(List<Dossier> all, Openness openness) {
    Predicate<Dossier> stopped = d -> d.bone().standing() == TrayBone.Standing.STOPPED;
    Predicate<Dossier> practice = d -> d.bone().animal().isPresent();
    Predicate<Dossier> restricted = openness::keeps;
    List<Dossier> open = all.stream().filter(stopped.or(practice).or(restricted).negate()).toList();
    long places =
        open.stream()
            .filter(d -> !d.tray().provenance().isBlank() && !openness.placeGoesOut(d))
            .count();
    return new HeldBack(
        open,
        places,
        all.stream().filter(stopped.negate().and(practice.negate()).and(restricted)).count(),
        all.stream().filter(stopped).count(),
        all.stream().filter(stopped.negate().and(practice)).count(),
        openness);
  }

  /** What was held back, in words. */
  public String sentence() {
    List<String> parts = new ArrayList<>();
    part(parts, places, "the exact place of %d bones");
    part(parts, restricted, "%d restricted bones");
    part(parts, stopped, "%d bones set aside as possibly human");
    part(parts, practice, "%d practice bones of shelf animals");
    return parts.isEmpty()
        ? "nothing was held back" + openness.sentence()
        : "held back: " + String.join(", ", parts) + openness.sentence();
  }

  private static void part(List<String> parts, long count, String words) {
    if (count > 0) {
      parts.add(words.formatted(count));
    }
  }
}

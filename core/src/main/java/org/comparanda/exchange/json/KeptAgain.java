package org.comparanda.exchange.json;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.comparanda.measurement.Protocol;
import org.comparanda.reference.BoneInHand;
import org.comparanda.reference.Shelf;
import org.comparanda.suggestion.Comparison;
import org.comparanda.suggestion.ComparisonRules;
import org.comparanda.suggestion.Suggestion;
import org.comparanda.taxon.TaxonTree;
import org.comparanda.tray.KeptAnswer;

/**
 * Reckons kept answers again: the readings and rules are their own, shelf and program today's. Not
 * for several threads.
 */
public final class KeptAgain {
  private final Shelf shelf;
  private final Protocol protocol;
  private final TaxonTree tree;
  private final ProgramVersion program;
  private final Map<ComparisonRules, Comparison> comparisons = new HashMap<>();

  public KeptAgain(Shelf shelf, Protocol protocol, TaxonTree tree, ProgramVersion program) {
    this.shelf = shelf;
    this.protocol = protocol;
    this.tree = tree;
    this.program = program;
  }

  /**
   * A kept answer beside today's.
   *
   * @param circumstances whether shelf and program are still those of then, in words
   * @param changes what differs in the answer, in words; none where not a digit does
   */
  public record Checked(KeptAnswer answer, List<String> circumstances, List<String> changes) {
    public Checked {
      circumstances = List.copyOf(circumstances);
      changes = List.copyOf(changes);
    }

    public boolean same() {
      return changes.isEmpty();
    }
  }

  /** Reckons one again. */
  public Checked check(KeptAnswer answer) {
    return KeptAnswerText.read(answer.content())
        .fold(
            then -> check(answer, then),
            none -> new Checked(answer, List.of(), List.of("It can't be read: " + none.reason())));
  }

  private Checked check(KeptAnswer answer, KeptAnswerText then) {
    Comparison comparison =
        comparisons.computeIfAbsent(
            then.rules(), rules -> Comparison.of(shelf, protocol, tree, rules));
    BoneInHand bone = then.bone();
    Suggestion suggestion = comparison.suggest(bone);
    KeptAnswerText now =
        KeptAnswerText.of(
            program, then.rules(), bone, suggestion, comparison.animalsBehind(suggestion));
    List<String> circumstances = new ArrayList<>();
    circumstances.add(
        then.program().equals(program)
            ? "Reckoned by the same version of the program, " + program.version() + "."
            : "Kept by version "
                + then.program().version()
                + ", reckoned again by "
                + program.version()
                + ".");
    circumstances.add(
        answer.shelfVersion().equals(comparison.shelfVersion())
            ? "The shelf is the same."
            : "The shelf has changed, from "
                + answer.shelfVersion()
                + " to "
                + comparison.shelfVersion()
                + ".");
    return new Checked(answer, circumstances, then.changesTo(now));
  }
}

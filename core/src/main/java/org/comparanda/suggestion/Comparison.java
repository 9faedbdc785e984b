package org.comparanda.suggestion;

import java.util.List;
import org.comparanda.bone.ElementKey;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.Protocol;
import org.comparanda.reference.BoneInHand;
import org.comparanda.reference.Shelf;
import org.comparanda.taxon.TaxonTree;

/**
 * One shelf, ready to be asked about bones. Immutable to the outside and safe for many threads;
 * trials already run are kept, so that an answer after each reading is quick.
 */
@SuppressWarnings("DoNotCallSuggester") // until the computation lands
public final class Comparison {
  private final Shelf shelf;
  private final Protocol protocol;
  private final TaxonTree tree;
  private final ComparisonRules rules;

  private Comparison(Shelf shelf, Protocol protocol, TaxonTree tree, ComparisonRules rules) {
    this.shelf = shelf;
    this.protocol = protocol;
    this.tree = tree;
    this.rules = rules;
  }

  /** A comparison with the animals of a shelf under the given rules. */
  public static Comparison of(
      Shelf shelf, Protocol protocol, TaxonTree tree, ComparisonRules rules) {
    return new Comparison(shelf, protocol, tree, rules);
  }

  public ComparisonRules rules() {
    return rules;
  }

  /** What the shelf says of a bone: exactly one answer for every input. */
  public Suggestion suggest(BoneInHand bone) {
    throw pending(bone.id());
  }

  /** The trial of all measurements that the shelf has for an element. */
  public Trial trial(ElementKey element) {
    throw pending(element.value());
  }

  /** The trial of a set of measurements: every animal of the shelf left out in turn. */
  public Trial trial(ElementKey element, List<MeasurementCode> set) {
    throw pending(element.value());
  }

  /** The trial with each taxon taken off the shelf in turn. */
  public StrangerTrial strangers(ElementKey element, List<MeasurementCode> set) {
    throw pending(element.value());
  }

  /** The comparative animals as dots for the picture, the bone's own animal left out. */
  public List<AnimalPoint> points(ElementKey element, BoneInHand bone) {
    throw pending(element.value());
  }

  /** Hash of the rows that the shelf holds; equal shelves have equal versions. */
  public String shelfVersion() {
    throw pending(shelf.toString());
  }

  private UnsupportedOperationException pending(String what) {
    return new UnsupportedOperationException(
        what + protocol.elements().size() + tree.taxa().size());
  }
}

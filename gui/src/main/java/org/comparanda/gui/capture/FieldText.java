package org.comparanda.gui.capture;

import java.util.List;
import java.util.Optional;
import org.comparanda.capture.CaliperCard;
import org.comparanda.capture.CaliperText;
import org.comparanda.capture.CaliperValue;
import org.comparanda.capture.Errand;
import org.comparanda.capture.OtherSide;
import org.comparanda.capture.Passes;
import org.comparanda.capture.warning.Entry;
import org.comparanda.capture.warning.EntryChecks;
import org.comparanda.capture.warning.ShelfRanges;
import org.comparanda.capture.warning.Warning;
import org.comparanda.measurement.PartRule;

/**
 * What a text in the field would mean, and what would be odd about it.
 *
 * @param ranges what the shelf shows for the element in hand
 * @param partRules which part is never longer than which whole, for this element
 * @param card the caliper in hand
 * @param other the bone of the other side, where both are measured together
 */
record FieldText(
    ShelfRanges ranges,
    List<PartRule> partRules,
    Optional<CaliperCard> card,
    Optional<OtherSide> other) {
  FieldText {
    partRules = List.copyOf(partRules);
  }

  /** The value that a hand typed; empty while it is none. */
  static Optional<CaliperValue> value(String text) {
    return CaliperText.withoutCard()
        .typed(text)
        .fold(
            read -> read.values().stream().findFirst(), refused -> Optional.<CaliperValue>empty());
  }

  /** What is odd about a text, if it were the reading of the field that waits. */
  List<Warning> odd(Passes passes, String text) {
    boolean onTheWayToAnErrand = text.equals("0") || Errand.ofText(text).isPresent();
    return onTheWayToAnErrand
        ? List.of()
        : value(text).map(value -> odd(passes, value)).orElse(List.of());
  }

  /** What is odd about a value. */
  List<Warning> odd(Passes passes, CaliperValue value) {
    return Entry.of(passes, value, ranges, partRules, card)
        .map(entry -> beside(passes, entry))
        .map(EntryChecks::warnings)
        .orElse(List.of());
  }

  private Entry beside(Passes passes, Entry entry) {
    return passes
        .current()
        .flatMap(place -> other.map(o -> entry.withOtherSide(o, place)))
        .orElse(entry);
  }
}

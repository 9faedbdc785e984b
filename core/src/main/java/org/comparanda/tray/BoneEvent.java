package org.comparanda.tray;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.comparanda.measurement.PersonId;

/**
 * One thing that was said of a bone, on the dated strip of its history.
 *
 * @param words what was said, in one line
 */
public record BoneEvent(Instant at, PersonId person, String words) {
  /** The strip in the words of one language, oldest first. */
  public static List<BoneEvent> strip(
      List<Call> calls, List<ElementCall> elements, List<Stop> stops, CallWords words) {
    CallHistory history = new CallHistory(calls);
    List<BoneEvent> strip = new ArrayList<>();
    calls.forEach(c -> strip.add(new BoneEvent(c.at(), c.person(), words.of(c, history))));
    elements.forEach(e -> strip.add(new BoneEvent(e.at(), e.person(), words.of(e))));
    stops.forEach(s -> strip.add(new BoneEvent(s.at(), s.person(), words.of(s))));
    strip.sort(Comparator.comparing(BoneEvent::at));
    return List.copyOf(strip);
  }
}

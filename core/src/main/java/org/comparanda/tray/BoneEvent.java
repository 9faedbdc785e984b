package org.comparanda.tray;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.comparanda.measurement.PersonId;

/**
 * One thing that was said of a bone, on the dated strip of its history.
 *
 * @param words what was said, in one line
 */
public record BoneEvent(Instant at, PersonId person, String words) {
  /** The strip, oldest first. */
  public static List<BoneEvent> strip(
      List<Call> calls, List<ElementCall> elements, List<Stop> stops) {
    CallHistory history = new CallHistory(calls);
    List<BoneEvent> strip = new ArrayList<>();
    for (Call call : calls) {
      boolean taken = call.kind() != Call.Kind.WITHDRAWAL && !history.standing().contains(call);
      boolean holds = history.holding().filter(call::equals).isPresent();
      String kind = call.kind() == Call.Kind.CALL ? "called" : small(call.kind());
      strip.add(
          new BoneEvent(
              call.at(),
              call.person(),
              "call "
                  + call.id()
                  + ", "
                  + kind
                  + call.answers().map(id -> " on call " + id).orElse("")
                  + ": "
                  + call.written()
                  + (call.basisInWords().isBlank() ? "" : " (" + call.basisInWords() + ")")
                  + (call.sawSuggestion() ? "; suggestion seen before" : "; suggestion not seen")
                  + (taken ? "; taken back" : "")
                  + (holds ? "; holds" : "")));
    }
    for (ElementCall call : elements) {
      strip.add(
          new BoneEvent(
              call.at(),
              call.person(),
              "element: "
                  + small(call.side())
                  + " "
                  + call.element()
                  + ", "
                  + small(call.portion())
                  + (call.basis().isBlank() ? "" : " (" + call.basis() + ")")));
    }
    for (Stop stop : stops) {
      strip.add(
          new BoneEvent(
              stop.at(),
              stop.person(),
              (stop.kind() == Stop.Kind.SET_ASIDE ? "set aside as possibly human" : "opened again")
                  + (stop.reason().isBlank() ? "" : ": " + stop.reason())));
    }
    strip.sort(Comparator.comparing(BoneEvent::at));
    return List.copyOf(strip);
  }

  private static String small(Enum<?> word) {
    return word.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}

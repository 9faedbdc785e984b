package org.comparanda.gui.tray;

import java.util.Locale;
import java.util.Optional;
import org.comparanda.bone.Element;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Side;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.People;
import org.comparanda.measurement.Person;
import org.comparanda.measurement.PersonId;
import org.comparanda.measurement.Protocol;
import org.comparanda.tray.BoneEvent;
import org.comparanda.tray.Call;
import org.comparanda.tray.LotProgress;
import org.comparanda.tray.TrayBone;

/** Trays, bones and calls in words. */
final class TrayWords {
  private final Words words;
  private final Protocol protocol;
  private final People people;

  TrayWords(TrayRoom room) {
    words = room.words();
    protocol = room.protocol();
    people = room.people();
  }

  String get(String key, Object... places) {
    return words.get(key, places);
  }

  /** One of our enums: its kind, a dot, its name in small letters. */
  String word(String kind, Enum<?> value) {
    return words.get(kind + "." + value.name().toLowerCase(Locale.ROOT));
  }

  String what(TrayBone bone) {
    String side =
        bone.side() == Side.LEFT || bone.side() == Side.RIGHT
            ? word("side", bone.side()) + " "
            : "";
    return side + element(bone.element()) + ", " + word("portion", bone.portion());
  }

  String element(ElementKey key) {
    return protocol.element(key).map(Element::name).orElse(key.value());
  }

  String who(PersonId id) {
    return people.person(id).map(Person::name).filter(name -> !name.isBlank()).orElse(id.value());
  }

  String called(Optional<Call> call) {
    return call.map(Call::written).orElse("");
  }

  String event(BoneEvent event) {
    return event.at().toString().substring(0, 10)
        + "  "
        + who(event.person())
        + "  "
        + event.words();
  }

  LotLine lot(LotProgress progress) {
    double share = progress.bones() == 0 ? 0 : progress.called() / (double) progress.bones();
    String forecast =
        progress
            .forecast()
            .fold(
                f ->
                    progress.left() == 0
                        ? words.get("lot.done")
                        : words.get(
                            "lot.forecast",
                            Math.round(f.days().lower()),
                            Math.round(f.days().upper())),
                none -> words.get("lot.noforecast", progress.perDay().size()));
    return new LotLine(
        progress.lot(),
        share,
        words.get("lot.count", progress.called(), progress.bones()),
        forecast);
  }
}

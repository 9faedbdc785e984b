package org.comparanda.gui.tray;

import java.util.Locale;
import java.util.Optional;
import org.comparanda.bone.ElementKey;
import org.comparanda.gui.calling.BoneWords;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.PersonId;
import org.comparanda.tray.BoneEvent;
import org.comparanda.tray.Call;
import org.comparanda.tray.LotProgress;
import org.comparanda.tray.TrayBone;

/** Trays, bones and calls in words. */
final class TrayWords {
  private final Words words;
  private final BoneWords bones;

  TrayWords(TrayRoom room) {
    words = room.words();
    bones = new BoneWords(room.locale(), room.protocol(), room.people());
  }

  String get(String key, Object... places) {
    return words.get(key, places);
  }

  /** Why nothing was done and what to do, as core says it. */
  String refused(String reason, String remedy) {
    return words.get("said.refused", words.said(reason), words.said(remedy));
  }

  /** One of our enums: its kind, a dot, its name in small letters. */
  String word(String kind, Enum<?> value) {
    return words.get(kind + "." + value.name().toLowerCase(Locale.ROOT));
  }

  /** Bones and people in words. */
  BoneWords bones() {
    return bones;
  }

  String what(TrayBone bone) {
    return bones.what(bone);
  }

  String element(ElementKey key) {
    return bones.element(key);
  }

  String who(PersonId id) {
    return bones.who(id);
  }

  String called(Optional<Call> call) {
    return call.map(Call::written).orElse("");
  }

  String event(BoneEvent event) {
    return event.at().toString().substring(0, 10)
        + "  "
        + who(event.person())
        + "  "
        + words.said(event.words());
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

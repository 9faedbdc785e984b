package org.comparanda.storage;

import java.util.List;
import org.comparanda.daybook.DayBookEntry;
import org.comparanda.measurement.Reading;
import org.comparanda.reference.AnimalId;
import org.comparanda.tray.Call;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;

/** What the Day Book keeps of a row: a hash of all its fields, in a fixed order. */
final class Fingerprints {
  private Fingerprints() {}

  static String of(Reading r) {
    return DayBookEntry.fingerprint(
        List.of(
            String.valueOf(r.id()),
            r.bone().value(),
            r.element().value(),
            r.code().value(),
            r.kind().name(),
            r.asTyped(),
            r.length().map(length -> String.valueOf(length.mm())).orElse(""),
            r.person().value(),
            r.at().toString(),
            String.valueOf(r.pass()),
            String.valueOf(r.repeat()),
            r.instrument().orElse(""),
            r.pointsAt().map(String::valueOf).orElse(""),
            r.reason()));
  }

  static String of(Call c) {
    return DayBookEntry.fingerprint(
        List.of(
            String.valueOf(c.id()),
            c.bone().value(),
            c.taxon().value(),
            c.qualifier().name(),
            c.person().value(),
            c.at().toString(),
            c.basis(),
            String.valueOf(c.sawSuggestion())));
  }

  static String of(Tray t) {
    return DayBookEntry.fingerprint(
        List.of(
            t.id().value(),
            t.lot(),
            t.name(),
            t.age().name(),
            t.provenance(),
            t.hazards(),
            t.state().name()));
  }

  static String of(TrayBone b) {
    return DayBookEntry.fingerprint(
        List.of(
            b.id().value(),
            b.tray().value(),
            b.animal().map(AnimalId::value).orElse(""),
            b.element().value(),
            b.side().name(),
            b.portion().name(),
            b.state().proximal().name(),
            b.state().distal().name(),
            Flags.text(b.state().flags()),
            b.standing().name(),
            b.remarks()));
  }
}

package org.comparanda.gui.secondlook;

import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.comparanda.gui.calling.BoneWords;
import org.comparanda.gui.secondlook.Opened.Said;
import org.comparanda.gui.text.Numbers;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.PersonId;
import org.comparanda.secondlook.Agreement;
import org.comparanda.secondlook.Likeness;
import org.comparanda.secondlook.ManyLooks;
import org.comparanda.secondlook.TwoLooks;
import org.comparanda.taxon.TaxonName;
import org.comparanda.tray.Beside;
import org.comparanda.tray.Call;
import org.comparanda.tray.CallHistory;
import org.comparanda.tray.CallWords;
import org.comparanda.tray.ElementCall;
import org.comparanda.tray.TrayBone;

/** Looks in words. */
final class LookWords {
  private final SecondLookRoom room;
  private final Words words;
  private final BoneWords bones;
  private final CallWords calls;
  private final DateTimeFormatter times;

  LookWords(SecondLookRoom room) {
    this.room = room;
    words = room.words();
    bones = new BoneWords(room.locale(), room.protocol(), room.people());
    calls = CallWords.in(room.locale());
    times =
        DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT)
            .withLocale(room.locale())
            .withZone(room.clock().getZone());
  }

  /** Why nothing was done and what to do, as core says it. */
  String refused(String reason, String remedy) {
    return words.get("refused", words.said(reason), words.said(remedy));
  }

  String get(String key, Object... places) {
    return words.get(key, places);
  }

  /** One of our enums: its kind, a dot, its name in small letters. */
  String word(String kind, Enum<?> value) {
    return words.get(kind + "." + value.name().toLowerCase(Locale.ROOT));
  }

  BoneWords bones() {
    return bones;
  }

  Numbers numbers() {
    return new Numbers(room.locale());
  }

  String who(PersonId id) {
    return bones.who(id);
  }

  String when(Instant at) {
    return times.format(at);
  }

  /** How the first call and the looks stand to each other: the worst of them. */
  Likeness likeness(ManyLooks looks) {
    Agreement agreement = new Agreement(List.of(), room.tree());
    Call first = looks.calls().get(0);
    return looks.calls().stream()
        .skip(1)
        .map(look -> agreement.likeness(new TwoLooks(first, look, looks.why())))
        .max(java.util.Comparator.comparing(Likeness::kind))
        .orElseThrow();
  }

  String sentence(Likeness likeness) {
    String key = "likeness." + likeness.kind().name().toLowerCase(Locale.ROOT);
    return likeness
        .group()
        .map(group -> words.get(key + ".long", group.value()))
        .orElse(words.get("likeness.apart.long"));
  }

  Opened.Both both(
      TrayBone bone, String tray, ManyLooks looks, CallHistory history, Call.Kind settlesAs) {
    List<ElementCall> elements = room.trays().elementCallsOn(bone.id());
    List<Said> columns = new ArrayList<>();
    for (int i = 0; i < looks.calls().size(); i++) {
      Call call = looks.calls().get(i);
      String role = words.get("role." + Math.min(i, 2));
      columns.add(said(role, call, i == 0 ? bones.what(bone) : element(call, elements)));
    }
    Likeness likeness = likeness(looks);
    return new Opened.Both(
        bone.id(),
        tray,
        likeness.kind(),
        sentence(likeness),
        word("why", looks.why()),
        columns,
        history
            .resolution()
            .map(call -> said(word("settled", call.kind()), call, bones.what(bone))),
        settlesAs,
        bone.element(),
        bone.side(),
        bone.portion());
  }

  private String element(Call call, List<ElementCall> elements) {
    return elements.stream()
        .filter(e -> e.look().equals(Optional.of(call.id())))
        .findFirst()
        .map(e -> bones.what(e.element(), e.side(), e.portion()))
        .orElse(words.get("notsaid"));
  }

  private Said said(String role, Call call, String element) {
    String basis = calls.basis(call);
    return new Said(
        role,
        call.written(),
        element,
        basis.isBlank() ? words.get("notsaid") : basis,
        who(call.person()),
        when(call.at()),
        numbers(call));
  }

  private String numbers(Call call) {
    Beside beside = room.trays().beside(call);
    String named =
        beside.named().isEmpty()
            ? words.get("numbers.none")
            : beside.named().stream().map(TaxonName::value).collect(Collectors.joining(", "));
    String seen = words.get(call.sawSuggestion() ? "numbers.seen" : "numbers.notseen");
    return words.get("numbers", named, seen);
  }
}

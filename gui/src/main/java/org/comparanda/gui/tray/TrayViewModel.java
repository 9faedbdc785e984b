package org.comparanda.gui.tray;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.comparanda.bone.Element;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.Person;
import org.comparanda.measurement.PersonId;
import org.comparanda.tray.CallHistory;
import org.comparanda.tray.LotProgress;
import org.comparanda.tray.Scrap;
import org.comparanda.tray.Search;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;
import org.comparanda.tray.TrayId;

/** State of the Tray screen: lots, trays, the open tray, what was searched. */
public final class TrayViewModel {
  private static final int MOST_HITS = 200;
  private static final PersonId NOBODY = new PersonId("nobody");

  private final TrayRoom room;
  private final TrayWords said;
  private final Executor work;
  private final Executor ui;
  private final TrayChanges changes;
  private final BoneViewModel bone;

  private final ObservableList<LotLine> lots = FXCollections.observableArrayList();
  private final ObservableList<TrayLine> trays = FXCollections.observableArrayList();
  private final ObservableList<Person> people = FXCollections.observableArrayList();
  private final ObservableList<Search.Hit> hits = FXCollections.observableArrayList();
  private final ObservableList<String> counts = FXCollections.observableArrayList();
  private final ObjectProperty<Optional<OpenTray>> open =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Person> person = new SimpleObjectProperty<>(new Person(NOBODY, ""));
  private final BooleanProperty searching = new SimpleBooleanProperty();
  private final StringProperty message = new SimpleStringProperty("");
  private final Set<String> hazardsRead = new HashSet<>();
  private Optional<TrayId> askedTray = Optional.empty();
  private Optional<BoneId> askedBone = Optional.empty();
  private String asked = "";
  private Consumer<Search.Hit> elsewhere = hit -> {};

  public TrayViewModel(TrayRoom room, Executor work, Executor ui) {
    this.room = room;
    this.said = new TrayWords(room);
    this.work = work;
    this.ui = ui;
    changes = new TrayChanges(this, room);
    bone = new BoneViewModel(this, room);
  }

  /** Looks at the collection again. */
  public void refresh() {
    work.execute(
        () -> {
          List<LotLine> lotsNow =
              room.lots().all().stream()
                  .map(l -> LotProgress.of(l.id(), room.trays(), room.clock().getZone()))
                  .map(said::lot)
                  .toList();
          List<TrayLine> traysNow =
              room.trays().all().stream()
                  .map(this::line)
                  .sorted(Comparator.comparingInt(line -> line.tray().priority().rank()))
                  .toList();
          List<Person> peopleNow = room.people().all();
          Optional<OpenTray> openNow = askedTray.flatMap(id -> opened(id, traysNow));
          List<String> countsNow =
              openNow.map(o -> room.counts().apply(o.line().tray().lot())).orElse(List.of());
          ui.execute(
              () -> {
                lots.setAll(lotsNow);
                trays.setAll(traysNow);
                takePeople(peopleNow);
                counts.setAll(countsNow);
                open.set(openNow);
                bone.show(askedBone.flatMap(this::lineOf));
              });
        });
  }

  private void takePeople(List<Person> now) {
    if (people.equals(now)) {
      return;
    }
    PersonId kept = me();
    people.setAll(now); // a list bound to it forgets its choice
    person.set(
        now.stream()
            .filter(p -> p.id().equals(kept))
            .findFirst()
            .or(() -> now.stream().findFirst())
            .orElse(new Person(NOBODY, "")));
  }

  private TrayLine line(Tray tray) {
    List<TrayBone> bones = room.trays().bonesOf(tray.id());
    int called =
        (int)
            bones.stream()
                .filter(b -> new CallHistory(room.trays().callsOn(b.id())).holding().isPresent())
                .count();
    long pieces = room.scraps().of(tray.id()).stream().mapToLong(Scrap::pieces).sum();
    return new TrayLine(tray, bones.size(), called, pieces);
  }

  private Optional<OpenTray> opened(TrayId id, List<TrayLine> all) {
    return all.stream()
        .filter(line -> line.tray().id().equals(id))
        .findFirst()
        .map(
            line ->
                new OpenTray(
                    line,
                    room.lots().lot(line.tray().lot()),
                    room.trays().bonesOf(id).stream().map(this::boneLine).toList(),
                    room.numbering().apply(me()).ruleOf(id),
                    room.numbering().apply(me()).next(line.tray())));
  }

  private BoneLine boneLine(TrayBone b) {
    var holding = new CallHistory(room.trays().callsOn(b.id())).holding();
    return new BoneLine(
        b,
        said.what(b),
        said.called(holding),
        holding.map(call -> said.who(call.person())).orElse(""));
  }

  private Optional<BoneLine> lineOf(BoneId id) {
    return open.get().stream()
        .flatMap(o -> o.bones().stream())
        .filter(line -> line.bone().id().equals(id))
        .findFirst();
  }

  /** Opens a tray. */
  public void openTray(TrayId id) {
    if (askedTray.equals(Optional.of(id))) {
      return;
    }
    askedTray = Optional.of(id);
    askedBone = Optional.empty();
    message.set("");
    refresh();
  }

  /** Shows one bone of the open tray. */
  public void choose(Optional<BoneId> id) {
    askedBone = id;
    bone.show(id.flatMap(this::lineOf));
  }

  /** Opens what a hit leads to; a lot opens its first tray. */
  public void openHit(Search.Hit hit) {
    switch (hit.opens()) {
      case BONE ->
          room.trays()
              .bone(new BoneId(hit.key()))
              .ifPresent(
                  found -> {
                    openTray(found.tray());
                    choose(Optional.of(found.id()));
                  });
      case TRAY -> openTray(new TrayId(hit.key()));
      case LOT ->
          trays.stream()
              .filter(line -> line.tray().lot().equals(hit.key()))
              .findFirst()
              .ifPresent(line -> openTray(line.tray().id()));
      case ANIMAL, OLD_CARD, ARRIVAL -> elsewhere.accept(hit);
      case TAXON, PERSON, NOTHING ->
          message.set(
              said.get("hit.opens." + hit.opens().name().toLowerCase(Locale.ROOT), hit.text()));
    }
  }

  /** What happens to a hit that stands on another screen. */
  public void setElsewhere(Consumer<Search.Hit> elsewhere) {
    this.elsewhere = elsewhere;
  }

  /** Looks for words everywhere; none shows the trays again. */
  public void searchFor(String text) {
    searching.set(!text.isBlank());
    asked = text;
    work.execute(
        () -> {
          List<Search.Hit> found = room.search().find(text, MOST_HITS);
          ui.execute(
              () -> {
                if (text.equals(asked)) {
                  hits.setAll(found);
                }
              });
        });
  }

  /** Whether the hazards of the open lot stand before its bones; new words stand there anew. */
  public boolean hazardsFirst() {
    return open.get()
        .map(o -> o.line().tray())
        .filter(tray -> !tray.hazards().isBlank() && !hazardsRead.contains(told(tray)))
        .isPresent();
  }

  private static String told(Tray tray) {
    return tray.lot() + "\n" + tray.hazards();
  }

  /** The person has read the hazards of the open lot. */
  public void hazardsRead() {
    Optional<OpenTray> shown = open.get();
    shown.ifPresent(
        o -> {
          hazardsRead.add(told(o.line().tray()));
          open.set(Optional.empty());
          open.set(shown);
        });
  }

  /** Runs a change off the window's thread, says what came of it, and looks again. */
  void change(Changing changing) {
    work.execute(
        () -> {
          Done done = changing.run();
          ui.execute(
              () -> {
                message.set(done.words());
                done.then().run();
              });
          refresh();
        });
  }

  /** A change. */
  interface Changing {
    Done run();
  }

  /** What is to be said of a change, and done with the screen afterwards. */
  record Done(String words, Runnable then) {
    static Done said(String words) {
      return new Done(words, () -> {});
    }
  }

  /** The full list of elements. */
  List<Element> elements() {
    return room.protocol().elements();
  }

  TrayWords said() {
    return said;
  }

  PersonId me() {
    return person.get().id();
  }

  public TrayChanges changes() {
    return changes;
  }

  public BoneViewModel bone() {
    return bone;
  }

  public ObservableList<LotLine> lots() {
    return lots;
  }

  public ObservableList<TrayLine> trays() {
    return trays;
  }

  public ObservableList<Person> people() {
    return people;
  }

  public ObservableList<Search.Hit> hits() {
    return hits;
  }

  /** Whether words are being looked for. */
  public ReadOnlyBooleanProperty searchingProperty() {
    return searching;
  }

  /** Tallies of the open tray's lot, in lines. */
  public ObservableList<String> counts() {
    return counts;
  }

  public ReadOnlyObjectProperty<Optional<OpenTray>> openProperty() {
    return open;
  }

  /** Who sits here. */
  public ObjectProperty<Person> personProperty() {
    return person;
  }

  /** What was done last, or why it wasn't. */
  public StringProperty messageProperty() {
    return message;
  }
}

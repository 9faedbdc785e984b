package org.comparanda.gui.secondlook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.comparanda.bone.Element;
import org.comparanda.house.RuleName;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.Person;
import org.comparanda.measurement.PersonId;
import org.comparanda.secondlook.LookDesk;
import org.comparanda.secondlook.ManyLooks;
import org.comparanda.secondlook.Waiting;
import org.comparanda.statistics.Outcome;
import org.comparanda.tray.Call;
import org.comparanda.tray.CallHistory;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayId;

/** State of the Second Look: what waits for the person who sits here, and the bone that is open. */
public final class SecondLookViewModel {
  private final SecondLookRoom room;
  private final LookWords said;
  private final Executor work;
  private final Executor ui;
  private final TakingViewModel taking;
  private final AgreementViewModel agreement;

  private final ObservableList<Person> people = FXCollections.observableArrayList();
  private final ObjectProperty<Optional<Person>> person =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObservableList<QueueLine> drawn = FXCollections.observableArrayList();
  private final ObservableList<QueueLine> picked = FXCollections.observableArrayList();
  private final ObservableList<QueueLine> looked = FXCollections.observableArrayList();
  private final ObjectProperty<Optional<Opened>> open =
      new SimpleObjectProperty<>(Optional.empty());
  private final StringProperty message = new SimpleStringProperty("");
  private final StringProperty rule = new SimpleStringProperty("");

  public SecondLookViewModel(SecondLookRoom room, Executor work, Executor ui) {
    this.room = room;
    this.said = new LookWords(room);
    this.work = work;
    this.ui = ui;
    taking = new TakingViewModel(this, room);
    agreement = new AgreementViewModel(room, said);
  }

  /** What the lists show at one moment. */
  private record Snapshot(
      List<Person> people,
      Optional<Person> person,
      List<QueueLine> drawn,
      List<QueueLine> picked,
      List<QueueLine> looked,
      String rule,
      AgreementShown agreement) {}

  /** Looks at the collection again. */
  public void refresh() {
    Optional<PersonId> me = person.get().map(Person::id).or(room::sits);
    AgreementViewModel.Rank rank = agreement.rankProperty().get();
    work.execute(
        () -> {
          Snapshot now = snapshot(me, rank);
          ui.execute(() -> take(now));
        });
  }

  private Snapshot snapshot(Optional<PersonId> me, AgreementViewModel.Rank rank) {
    List<Person> all = room.people().all();
    Optional<Person> here =
        all.stream().filter(p -> me.filter(p.id()::equals).isPresent()).findFirst();
    LookDesk desk = room.desk().apply(me.orElse(new PersonId("nobody")));
    desk.bringUpToDate();
    List<Waiting> waiting = here.map(p -> desk.waitingFor(p.id())).orElse(List.of());
    Map<TrayId, String> trays =
        room.trays().all().stream().collect(Collectors.toMap(Tray::id, Tray::name));
    List<QueueLine> draw = new ArrayList<>();
    List<QueueLine> reason = new ArrayList<>();
    for (Waiting bone : waiting) {
      boolean targeted = bone.why().targeted();
      String says =
          targeted ? said.word("why", bone.why()) : said.get("look." + Math.min(bone.looks(), 1));
      (targeted ? reason : draw)
          .add(new QueueLine(bone.bone().id(), trays.getOrDefault(bone.bone().tray(), ""), says));
    }
    Set<BoneId> blind = waiting.stream().map(w -> w.bone().id()).collect(Collectors.toSet());
    List<ManyLooks> groups = desk.groups();
    return new Snapshot(
        all,
        here,
        draw,
        reason,
        here.isEmpty() ? List.of() : looked(groups, blind, trays),
        said.get(
            "rule",
            room.rules().now(RuleName.SECOND_LOOK_EVERY),
            said.numbers().written(room.rules().now(RuleName.SECOND_LOOK_TYPICALITY))),
        agreement.of(groups, rank));
  }

  private List<QueueLine> looked(
      List<ManyLooks> groups, Set<BoneId> blind, Map<TrayId, String> trays) {
    List<QueueLine> lines = new ArrayList<>();
    for (ManyLooks looks : groups) {
      BoneId bone = looks.calls().get(0).bone();
      if (!blind.contains(bone)) {
        boolean settled = history(bone).resolution().isPresent();
        String says =
            settled ? said.get("settled") : said.word("likeness", said.likeness(looks).kind());
        String tray = room.trays().bone(bone).map(b -> trays.getOrDefault(b.tray(), "")).orElse("");
        lines.add(new QueueLine(bone, tray, says));
      }
    }
    return lines;
  }

  CallHistory history(BoneId bone) {
    return new CallHistory(room.trays().callsOn(bone));
  }

  private void take(Snapshot now) {
    if (!people.equals(now.people())) {
      people.setAll(now.people());
    }
    person.set(now.person());
    drawn.setAll(now.drawn());
    picked.setAll(now.picked());
    looked.setAll(now.looked());
    rule.set(now.rule());
    agreement.take(now.agreement());
    boolean gone =
        open.get()
            .filter(o -> lines().stream().noneMatch(line -> line.bone().equals(o.bone())))
            .isPresent();
    if (gone) {
      open.set(Optional.empty());
    }
  }

  private List<QueueLine> lines() {
    List<QueueLine> all = new ArrayList<>(drawn);
    all.addAll(picked);
    all.addAll(looked);
    return all;
  }

  /** Another person sits here; what lay open is covered at once. */
  public void sit(Person next) {
    if (person.get().equals(Optional.of(next))) {
      return;
    }
    open.set(Optional.empty());
    looked.clear();
    message.set("");
    person.set(Optional.of(next));
    refresh();
  }

  /** Opens a bone: blind where it waits for this person, else with every call on it. */
  public void open(BoneId bone) {
    message.set("");
    taking.forget();
    Optional<QueueLine> waits =
        lines().stream()
            .filter(line -> line.bone().equals(bone) && !looked.contains(line))
            .findFirst();
    if (waits.isPresent()) {
      open.set(Optional.of(new Opened.Blind(bone, waits.get().tray())));
    } else {
      showBoth(bone);
    }
  }

  /** Shows all calls on a bone that this person may see. */
  void showBoth(BoneId bone) {
    PersonId me = me();
    work.execute(
        () -> {
          Optional<Opened> both = both(bone, me);
          ui.execute(() -> open.set(both));
        });
  }

  private Optional<Opened> both(BoneId bone, PersonId me) {
    boolean blind =
        room.desk().apply(me).waitingFor(me).stream().anyMatch(w -> w.bone().id().equals(bone));
    if (blind) {
      return Optional.empty();
    }
    return room.desk().apply(me).groups().stream()
        .filter(looks -> looks.calls().get(0).bone().equals(bone))
        .findFirst()
        .flatMap(
            looks ->
                room.trays()
                    .bone(bone)
                    .map(
                        b ->
                            said.both(
                                b, tray(b.tray()), looks, history(bone), taking.how(bone, me))));
  }

  private String tray(TrayId id) {
    return room.trays().all().stream()
        .filter(t -> t.id().equals(id))
        .map(Tray::name)
        .findFirst()
        .orElse("");
  }

  /** Puts the open bone back. */
  public void close() {
    open.set(Optional.empty());
    taking.forget();
  }

  /** Records something off the window's thread; shows all calls on the bone if it was taken. */
  void change(BoneId bone, Supplier<Outcome<Call>> recording, String key) {
    work.execute(
        () -> {
          Outcome<Call> made = recording.get();
          ui.execute(() -> after(bone, made, key));
        });
  }

  private void after(BoneId bone, Outcome<Call> made, String key) {
    message.set(
        made.fold(
            call -> said.get(key, bone.value(), call.written()),
            none -> said.refused(none.reason(), none.remedy())));
    if (made.value().isPresent()) {
      taking.forget();
      refresh();
      showBoth(bone);
    }
  }

  PersonId me() {
    return person.get().map(Person::id).orElse(new PersonId("nobody"));
  }

  LookWords said() {
    return said;
  }

  /** The full list of elements. */
  List<Element> elements() {
    return room.protocol().elements();
  }

  /** The look or the settling while it is typed. */
  public TakingViewModel taking() {
    return taking;
  }

  public AgreementViewModel agreement() {
    return agreement;
  }

  public ObservableList<Person> people() {
    return people;
  }

  /** Who sits here; empty until somebody said so. */
  public ReadOnlyObjectProperty<Optional<Person>> personProperty() {
    return person;
  }

  /** Bones that the every-nth draw picked. */
  public ObservableList<QueueLine> drawn() {
    return drawn;
  }

  /** Bones picked for a reason. */
  public ObservableList<QueueLine> picked() {
    return picked;
  }

  /** Bones that were looked at again and that this person needn't look at blind. */
  public ObservableList<QueueLine> looked() {
    return looked;
  }

  public ReadOnlyObjectProperty<Optional<Opened>> openProperty() {
    return open;
  }

  /** The rule that draws, in one sentence. */
  public StringProperty ruleProperty() {
    return rule;
  }

  /** What was done last, or why it wasn't. */
  public StringProperty messageProperty() {
    return message;
  }
}

package org.comparanda.gui.houserules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.stream.Collectors;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.comparanda.house.HouseRule;
import org.comparanda.house.Right;
import org.comparanda.house.RuleName;
import org.comparanda.house.RulesInForce;
import org.comparanda.measurement.Person;
import org.comparanda.measurement.PersonId;
import org.comparanda.statistics.Outcome;

/** State of the House Rules screen: what holds, the open rule, what it is to be set to. */
public final class HouseRulesViewModel {
  private final RulesRoom room;
  private final RuleWords said;
  private final Executor work;
  private final Executor ui;

  private final ObservableList<RuleLine> lines = FXCollections.observableArrayList();
  private final ObservableList<Person> people = FXCollections.observableArrayList();
  private final ObjectProperty<Optional<Person>> person =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Optional<RuleLine>> open =
      new SimpleObjectProperty<>(Optional.empty());
  private final StringProperty value = new SimpleStringProperty("");
  private final StringProperty why = new SimpleStringProperty("");
  private final StringProperty rights = new SimpleStringProperty("");
  private final StringProperty message = new SimpleStringProperty("");

  public HouseRulesViewModel(RulesRoom room, Executor work, Executor ui) {
    this.room = room;
    this.said = new RuleWords(room);
    this.work = work;
    this.ui = ui;
  }

  private record Snapshot(List<RuleLine> lines, List<Person> people, String rights) {}

  /** Looks at the collection again. */
  public void refresh() {
    work.execute(
        () -> {
          RulesInForce now = room.rules().inForce();
          List<HouseRule> all = room.rules().all();
          List<RuleLine> linesNow = new ArrayList<>();
          for (RuleName rule : RuleName.values()) {
            linesNow.add(said.line(rule, now.now(rule), all));
          }
          Snapshot snapshot = new Snapshot(linesNow, room.people().all(), whoMay());
          ui.execute(() -> take(snapshot));
        });
  }

  private String whoMay() {
    String keepers =
        room.rights().get().holders(Right.KEEPER).stream()
            .map(said::who)
            .sorted()
            .collect(Collectors.joining(", "));
    return keepers.isEmpty() ? said.get("rights.nobody") : said.get("rights.keepers", keepers);
  }

  private void take(Snapshot now) {
    Optional<RuleName> shown = open.get().map(RuleLine::rule);
    if (!people.equals(now.people())) {
      Optional<PersonId> kept = person.get().map(Person::id).or(room::sits);
      people.setAll(now.people());
      person.set(
          now.people().stream().filter(p -> kept.filter(p.id()::equals).isPresent()).findFirst());
    }
    rights.set(now.rights());
    lines.setAll(now.lines());
    open.set(
        now.lines().stream().filter(l -> shown.filter(l.rule()::equals).isPresent()).findFirst());
  }

  /** Opens a rule; its value stands ready to be changed. */
  public void open(RuleLine line) {
    boolean another = open.get().filter(l -> l.rule() == line.rule()).isEmpty();
    open.set(Optional.of(line));
    if (another) {
      boolean unset = line.rule() == RuleName.CONTACT_CARD && line.history().isEmpty();
      value.set(unset ? "" : line.value());
      why.set("");
      message.set("");
    }
  }

  /** Puts what holds until a rule is set into the field; it is set by {@link #set}. */
  public void asUntilSet() {
    open.get()
        .filter(l -> l.rule() != RuleName.CONTACT_CARD)
        .ifPresent(l -> value.set(l.untilSet()));
  }

  /** Sets the open rule from now on, or says what is missing. */
  public void set() {
    Optional<RuleLine> line = open.get();
    Optional<Person> by = person.get();
    if (line.isEmpty()) {
      return;
    }
    if (by.isEmpty()) {
      message.set(said.get("set.who"));
      return;
    }
    if (why.get().isBlank()) {
      message.set(said.get("set.why"));
      return;
    }
    HouseRule rule =
        new HouseRule(
            line.get().rule(),
            said.typed(line.get().rule(), value.get()),
            by.get().id(),
            room.clock().instant(),
            why.get().strip());
    work.execute(
        () -> {
          Outcome<HouseRule> made = room.rules().set(rule);
          ui.execute(() -> after(made, line.get()));
        });
  }

  private void after(Outcome<HouseRule> made, RuleLine line) {
    message.set(
        made.fold(
            rule -> said.get("set.done", line.name(), value.get().strip()),
            none -> said.refused(none.reason(), none.remedy())));
    if (made.value().isPresent()) {
      why.set("");
      refresh();
    }
  }

  /** Another person sits here. */
  public void sit(Person next) {
    person.set(Optional.of(next));
  }

  RuleWords said() {
    return said;
  }

  /** All rules, as they hold. */
  public ObservableList<RuleLine> lines() {
    return lines;
  }

  public ObservableList<Person> people() {
    return people;
  }

  public ReadOnlyObjectProperty<Optional<Person>> personProperty() {
    return person;
  }

  public ReadOnlyObjectProperty<Optional<RuleLine>> openProperty() {
    return open;
  }

  /** What the open rule is to be set to. */
  public StringProperty valueProperty() {
    return value;
  }

  public StringProperty whyProperty() {
    return why;
  }

  /** Who may set rules. */
  public StringProperty rightsProperty() {
    return rights;
  }

  /** What was done last, or why it wasn't. */
  public StringProperty messageProperty() {
    return message;
  }
}

package org.comparanda.gui.calling;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.PersonId;
import org.comparanda.reference.AnimalId;
import org.comparanda.statistics.Outcome;
import org.comparanda.tray.Call;
import org.comparanda.tray.Grounds;
import org.comparanda.tray.Trait;
import org.comparanda.tray.TraitAnswer;
import org.comparanda.tray.WrittenName;

/** A call by eye while it is typed. */
public final class CallFormViewModel {
  private final StringProperty name = new SimpleStringProperty("");
  private final StringProperty basis = new SimpleStringProperty("");
  private final StringProperty compared = new SimpleStringProperty("");
  private final StringProperty why = new SimpleStringProperty("");
  private final ObservableList<Trait> traits = FXCollections.observableArrayList();
  private final Map<String, TraitAnswer.Seen> seen = new TreeMap<>();

  /** Forgets what was typed and answered. */
  public void forget() {
    name.set("");
    basis.set("");
    compared.set("");
    why.set("");
    seen.clear();
  }

  /** Says which traits may be looked at. */
  public void offer(List<Trait> next) {
    traits.setAll(next);
  }

  /** Answers a trait of a look-alike pair; empty takes the answer back. */
  public void answer(Trait trait, Optional<TraitAnswer.Seen> answer) {
    answer.ifPresentOrElse(a -> seen.put(trait.key(), a), () -> seen.remove(trait.key()));
  }

  /** The call as typed, made without seeing the suggestion; not possible where the name is none. */
  public Outcome<Call> call(BoneId bone, PersonId person, Instant at) {
    return WrittenName.read(name.get())
        .then(
            written ->
                Outcome.of(
                    new Call(
                            0,
                            bone,
                            written.taxon(),
                            written.qualifier(),
                            person,
                            at,
                            basis.get().strip(),
                            false)
                        .withGrounds(grounds())));
  }

  private Grounds grounds() {
    List<AnimalId> animals = new ArrayList<>();
    for (String number : compared.get().split("[,;\\s]+", -1)) {
      if (!number.isBlank()) {
        animals.add(new AnimalId(number));
      }
    }
    return new Grounds(
        Grounds.How.BY_EYE,
        animals,
        why.get().strip(),
        seen.entrySet().stream().map(e -> new TraitAnswer(e.getKey(), e.getValue())).toList(),
        name.get().strip());
  }

  /** What may be looked at on this element. */
  public ObservableList<Trait> traits() {
    return traits;
  }

  /** The name, in open nomenclature. */
  public StringProperty nameProperty() {
    return name;
  }

  public StringProperty basisProperty() {
    return basis;
  }

  /** Catalogue numbers of the animals that were laid beside it. */
  public StringProperty comparedProperty() {
    return compared;
  }

  /** One line of why. */
  public StringProperty whyProperty() {
    return why;
  }
}

package org.comparanda.gui.tray;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.comparanda.gui.tray.TrayViewModel.Done;
import org.comparanda.house.Right;
import org.comparanda.house.Rights;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.PersonId;
import org.comparanda.statistics.Outcome;
import org.comparanda.tray.Keeping;
import org.comparanda.tray.Lot;
import org.comparanda.tray.LotNotes;
import org.comparanda.tray.NumberRule;
import org.comparanda.tray.Numbering;
import org.comparanda.tray.Priority;
import org.comparanda.tray.Scrap;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;
import org.comparanda.tray.TrayId;

/** What is changed on the open tray; each change says what came of it. */
public final class TrayChanges {
  private final TrayViewModel model;
  private final TrayRoom room;

  TrayChanges(TrayViewModel model, TrayRoom room) {
    this.model = model;
    this.room = room;
  }

  /** Moves the open tray on. */
  public void state(Tray.State state) {
    tray(
        tray -> tray.withState(state),
        tray -> model.said().get("said.state", tray.name(), model.said().word("state", state)));
  }

  /** Says who works on the open tray; nobody when empty. */
  public void assign(Optional<PersonId> person) {
    tray(
        tray -> tray.withAssignedTo(person),
        tray ->
            model
                .said()
                .get(
                    "said.assigned",
                    tray.name(),
                    person.map(model.said()::who).orElse(model.said().get("nobody"))));
  }

  /** Moves the open tray up or down; without a reason it stays. */
  public void priority(int rank, String reason, String requestedBy) {
    if (rank != Priority.ordinary().rank() && reason.isBlank()) {
      model.messageProperty().set(model.said().get("said.reason"));
      return;
    }
    Priority next = new Priority(rank, reason.strip(), requestedBy.strip());
    tray(
        tray -> tray.withPriority(next),
        tray -> model.said().get("said.priority", tray.name(), rank));
  }

  /** Sets by which rule the bones of the open tray are numbered from now on; keepers do. */
  public void numberRule(String typed) {
    Outcome<NumberRule> rule =
        room.rights()
            .get()
            .asked(model.me(), Right.KEEPER, model.said().get("number.refused"))
            .then(keeper -> NumberRule.read(typed));
    rule.value().ifPresentOrElse(this::numberBy, () -> model.messageProperty().set(why(rule)));
  }

  private static String why(Outcome<NumberRule> refused) {
    return refused.fold(rule -> "", none -> none.reason() + " " + none.remedy());
  }

  private void numberBy(NumberRule rule) {
    model
        .openProperty()
        .get()
        .map(open -> open.line().tray())
        .ifPresent(
            tray ->
                model.change(
                    () -> {
                      Numbering numbers = room.numbering().apply(model.me());
                      numbers.setRule(tray.id(), rule);
                      return Done.said(
                          model
                              .said()
                              .get(
                                  "said.rule",
                                  tray.name(),
                                  rule.pattern(),
                                  numbers.next(tray).value()));
                    }));
  }

  /** Records what holds for the open tray's lot, and what for the tray alone. */
  public void lot(Lot next, LotNotes own) {
    model
        .openProperty()
        .get()
        .ifPresent(open -> model.change(() -> Done.said(recorded(open, next, own))));
  }

  private String recorded(OpenTray open, Lot next, LotNotes own) {
    Rights rights = room.rights().get();
    boolean free = rights.holders(Right.KEEPER).isEmpty() || rights.holds(model.me(), Right.KEEPER);
    if (open.lot().places() != next.places() && !free) {
      return model.said().get("said.keepers", model.said().who(model.me()));
    }
    Tray tray = open.line().tray();
    if (!next.equals(open.lot())) {
      room.lotsBy().apply(model.me()).save(next);
    }
    if (!own.equals(tray.own())) {
      room.traysBy().apply(model.me()).save(tray.withOwn(own));
    }
    return model.said().get("said.lot", next.id());
  }

  private void tray(UnaryOperator<Tray> change, Function<Tray, String> words) {
    model
        .openProperty()
        .get()
        .ifPresent(
            open ->
                model.change(
                    () -> {
                      Tray changed = change.apply(open.line().tray());
                      room.traysBy().apply(model.me()).save(changed);
                      return Done.said(words.apply(changed));
                    }));
  }

  /**
   * Moves bones together, all or none.
   *
   * @param onto another tray; stays where it is when empty
   * @param goesTo box or shelf; as it was when empty
   * @param access whether they may leave the house; as it was when empty
   */
  public void move(
      List<BoneId> bones,
      Optional<TrayId> onto,
      Optional<String> goesTo,
      Optional<Keeping.Access> access) {
    if (bones.isEmpty() || (onto.isEmpty() && goesTo.isEmpty() && access.isEmpty())) {
      model.messageProperty().set(model.said().get("said.nothing"));
      return;
    }
    model.change(
        () -> {
          List<TrayBone> moved =
              bones.stream()
                  .flatMap(id -> room.trays().bone(id).stream())
                  .map(b -> moved(b, onto, goesTo, access))
                  .toList();
          room.traysBy().apply(model.me()).saveAll(moved);
          return Done.said(model.said().get("said.moved", moved.size()));
        });
  }

  private static TrayBone moved(
      TrayBone bone,
      Optional<TrayId> onto,
      Optional<String> goesTo,
      Optional<Keeping.Access> access) {
    Keeping kept = bone.keeping();
    return bone.withTray(onto.orElse(bone.tray()))
        .withKeeping(new Keeping(goesTo.orElse(kept.goesTo()), access.orElse(kept.access())));
  }

  /** Records pieces that nobody will name; says so when the numbers can't be read. */
  public void scrap(String pieces, String grams) {
    Optional<Long> count =
        pieces.strip().matches("[1-9][0-9]{0,8}")
            ? Optional.of(Long.valueOf(pieces.strip()))
            : Optional.empty();
    String mass = grams.strip().replace(',', '.');
    boolean sound = mass.isEmpty() || mass.matches("[0-9]{1,8}(\\.[0-9]{1,4})?");
    Optional<Double> weighed =
        sound && !mass.isEmpty() ? Optional.of(Double.valueOf(mass)) : Optional.empty();
    if (count.isEmpty() || !sound || weighed.filter(g -> g == 0).isPresent()) {
      model.messageProperty().set(model.said().get("said.noscrap"));
      return;
    }
    model
        .openProperty()
        .get()
        .ifPresent(
            open ->
                model.change(
                    () -> {
                      room.scraps()
                          .append(
                              new Scrap(
                                  0,
                                  open.line().tray().id(),
                                  count.get(),
                                  weighed,
                                  model.me(),
                                  room.clock().instant(),
                                  ""));
                      return Done.said(model.said().get("said.scrap", count.get()));
                    }));
  }
}

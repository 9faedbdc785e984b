package org.comparanda.gui.tray;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import org.comparanda.gui.control.Field;
import org.comparanda.gui.control.Pick;
import org.comparanda.measurement.Person;
import org.comparanda.tray.Priority;
import org.comparanda.tray.Tray;

/** Where the open tray stands, with whom, how soon it is wanted; scrap. */
final class TrayStandingPane extends FlowPane {
  TrayStandingPane(TrayViewModel model, OpenTray open) {
    TrayWords words = model.said();
    Tray tray = open.line().tray();
    getStyleClass().add("tray-line");
    Pick<Tray.State> state =
        new Pick<>(
            "tray-state",
            words.get("column.state"),
            List.of(Tray.State.values()),
            s -> words.word("state", s));
    state.box().setValue(tray.state());
    state.box().valueProperty().addListener((o, was, is) -> model.changes().state(is));

    List<Optional<Person>> people = new ArrayList<>(List.of(Optional.empty()));
    model.people().forEach(p -> people.add(Optional.of(p)));
    Pick<Optional<Person>> with =
        new Pick<>(
            "tray-with",
            words.get("column.with"),
            people,
            p -> p.map(Person::id).map(words::who).orElse(words.get("nobody")));
    with.box()
        .setValue(
            model.people().stream()
                .filter(p -> tray.assignedTo().equals(Optional.of(p.id())))
                .findFirst());
    with.box()
        .valueProperty()
        .addListener((o, was, is) -> model.changes().assign(is.map(Person::id)));

    Priority now = tray.priority();
    Pick<Integer> rank =
        new Pick<>(
            "tray-rank",
            words.get("priority"),
            List.of(1, 2, 3, 4, 5),
            r -> words.get("priority." + r));
    rank.box().setValue(now.rank());
    Field reason = new Field("tray-reason", words.get("priority.reason"));
    reason.field().setText(now.reason());
    Field requester = new Field("tray-requester", words.get("priority.for"));
    requester.field().setText(now.requestedBy());
    Button set = new Button(words.get("priority.set"));
    set.setId("set-priority");
    set.setOnAction(
        event ->
            model.changes().priority(rank.chosen().orElse(3), reason.text(), requester.text()));

    Field pieces = new Field("scrap-pieces", words.get("scrap.pieces"));
    Field grams = new Field("scrap-grams", words.get("scrap.grams"));
    Button scrap = new Button(words.get("scrap.record", open.line().pieces()));
    scrap.setId("record-scrap");
    scrap.setOnAction(event -> model.changes().scrap(pieces.text(), grams.text()));
    Field rule = new Field("number-rule", words.get("number.rule", open.next().value()));
    rule.field().setText(open.rule().pattern());
    rule.field().setOnAction(event -> model.changes().numberRule(rule.text()));
    Button number = new Button(words.get("number.set"));
    number.setId("set-number-rule");
    number.setOnAction(event -> model.changes().numberRule(rule.text()));
    getChildren()
        .addAll(state, with, rank, reason, requester, set, pieces, grams, scrap, rule, number);
  }
}

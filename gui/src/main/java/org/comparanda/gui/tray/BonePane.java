package org.comparanda.gui.tray;

import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.comparanda.bone.Element;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.tray.Trait;
import org.comparanda.tray.TraitAnswer;
import org.comparanda.tray.TrayBone;

/** The chosen bone: call by eye, element by eye, traits, history, STOP. */
final class BonePane extends VBox {
  private final TrayViewModel model;
  private final TrayWords words;
  private final VBox content = new VBox();

  BonePane(TrayViewModel model) {
    this.model = model;
    this.words = model.said();
    getStyleClass().addAll("card", "bone-card");
    content.getStyleClass().add("bone-content");
    ScrollPane scroll = new ScrollPane(content);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.getStyleClass().add("plain-scroll");
    VBox.setVgrow(scroll, javafx.scene.layout.Priority.ALWAYS);
    getChildren().add(scroll);
    model.bone().shownProperty().addListener((o, was, is) -> show(is));
    model.bone().history().addListener((javafx.beans.Observable o) -> show(shown()));
    show(shown());
  }

  private Optional<BoneLine> shown() {
    return model.bone().shownProperty().get();
  }

  private void show(Optional<BoneLine> shown) {
    if (shown.isEmpty()) {
      Label none = new Label(words.get("bone.none"));
      none.getStyleClass().add("note");
      none.setWrapText(true);
      content.getChildren().setAll(none);
      return;
    }
    TrayBone bone = shown.get().bone();
    Label number = new Label(bone.id().value());
    number.getStyleClass().add("reading");
    Label what = new Label(shown.get().what());
    content.getChildren().setAll(number, what);
    if (bone.standing() == TrayBone.Standing.STOPPED) {
      Label stopped = new Label(words.get("bone.stopped.long"));
      stopped.setWrapText(true);
      stopped.getStyleClass().add("warning");
      content.getChildren().add(stopped);
    } else {
      content.getChildren().addAll(stop(), call(), element(bone));
    }
    content.getChildren().add(history());
  }

  /** Asks once before it locks the bone. */
  private Button stop() {
    BoneViewModel bone = model.bone();
    Button stop = new Button(words.get("stop"));
    stop.setId("tray-stop");
    stop.getStyleClass().setAll("button", "stop");
    stop.setOnAction(
        event -> {
          if (stop.getStyleClass().contains("asked")) {
            bone.stop();
          } else {
            stop.getStyleClass().add("asked");
            stop.setText(words.get("stop.again"));
          }
        });
    return stop;
  }

  private VBox call() {
    BoneViewModel bone = model.bone();
    Field name = new Field("call-name", words.get("call.name")).bind(bone.nameProperty());
    name.field().setPromptText(words.get("call.example"));
    Field basis = new Field("call-basis", words.get("call.basis")).bind(bone.basisProperty());
    Field beside = new Field("call-beside", words.get("call.beside")).bind(bone.comparedProperty());
    Field why = new Field("call-why", words.get("call.why")).bind(bone.whyProperty());
    Button record = new Button(words.get("call.record"));
    record.setId("record-call");
    record.getStyleClass().setAll("button", "record");
    record.setOnAction(event -> bone.record());
    name.field().setOnAction(event -> bone.record());
    why.field().setOnAction(event -> bone.record());
    VBox call = new VBox(name, beside, basis);
    bone.traits().forEach(trait -> call.getChildren().add(trait(trait)));
    call.getChildren().addAll(why, record);
    call.getStyleClass().add("call-card");
    return call;
  }

  private Node trait(Trait trait) {
    Label question = new Label(trait.look() + " " + trait.question());
    question.setWrapText(true);
    Label source = new Label(words.get("trait.for", trait.yes().value(), trait.source()));
    source.setWrapText(true);
    source.getStyleClass().add("note");
    Pick<TraitAnswer.Seen> answer =
        new Pick<>(
            "trait-" + trait.key(),
            words.get("trait"),
            List.of(TraitAnswer.Seen.values()),
            seen -> words.word("seen", seen));
    answer
        .box()
        .valueProperty()
        .addListener((o, was, is) -> model.bone().answer(trait, Optional.ofNullable(is)));
    return new VBox(question, source, answer);
  }

  private FlowPane element(TrayBone bone) {
    Pick<Element> element =
        new Pick<>("eye-element", words.get("element"), model.elements(), Element::name);
    model.elements().stream()
        .filter(e -> e.key().equals(bone.element()))
        .findFirst()
        .ifPresent(element.box()::setValue);
    Pick<Side> side =
        new Pick<>(
            "eye-side", words.get("side"), List.of(Side.values()), s -> words.word("side", s));
    side.box().setValue(bone.side());
    Pick<Portion> portion =
        new Pick<>(
            "eye-portion",
            words.get("portion"),
            List.of(Portion.values()),
            p -> words.word("portion", p));
    portion.box().setValue(bone.portion());
    Button record = new Button(words.get("element.record"));
    record.setId("record-element");
    record.setOnAction(
        event ->
            element
                .chosen()
                .ifPresent(
                    e ->
                        model
                            .bone()
                            .recordElement(
                                e.key(),
                                side.chosen().orElse(bone.side()),
                                portion.chosen().orElse(bone.portion()))));
    FlowPane line = new FlowPane(element, side, portion, record);
    line.getStyleClass().add("tray-line");
    return line;
  }

  private Node history() {
    VBox strip = new VBox();
    strip.setId("history");
    strip.getStyleClass().add("strip");
    Label title = new Label(words.get("history"));
    title.getStyleClass().add("strong");
    strip.getChildren().add(title);
    for (String line : model.bone().history()) {
      Label said = new Label(line);
      said.setWrapText(true);
      strip.getChildren().add(said);
    }
    if (model.bone().history().isEmpty()) {
      Label none = new Label(words.get("history.none"));
      none.getStyleClass().add("note");
      strip.getChildren().add(none);
    }
    return strip;
  }
}

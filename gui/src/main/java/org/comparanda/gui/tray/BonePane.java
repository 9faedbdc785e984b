package org.comparanda.gui.tray;

import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.comparanda.gui.calling.CallFields;
import org.comparanda.gui.calling.ElementFields;
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
    CallFields fields = new CallFields(bone.form(), words.bones(), "call.why", bone::record);
    Button record = new Button(words.get("call.record"));
    record.setId("record-call");
    record.getStyleClass().setAll("button", "record");
    record.setOnAction(event -> bone.record());
    fields.getChildren().add(record);
    return fields;
  }

  private FlowPane element(TrayBone bone) {
    ElementFields fields = new ElementFields(model.elements(), words.bones());
    fields.show(bone.element(), bone.side(), bone.portion());
    Button record = new Button(words.get("element.record"));
    record.setId("record-element");
    record.setOnAction(
        event ->
            fields
                .element()
                .ifPresent(
                    element ->
                        model
                            .bone()
                            .recordElement(
                                element,
                                fields.side().orElse(bone.side()),
                                fields.portion().orElse(bone.portion()))));
    fields.getChildren().add(record);
    return fields;
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

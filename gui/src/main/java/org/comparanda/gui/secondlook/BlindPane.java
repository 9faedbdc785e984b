package org.comparanda.gui.secondlook;

import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.comparanda.gui.calling.CallFields;
import org.comparanda.gui.calling.ElementFields;
import org.comparanda.gui.control.WrappedLabel;

/** A look to be taken: the bone's number and where it lies, and what the person says it is. */
final class BlindPane extends VBox {
  BlindPane(SecondLookViewModel model, Opened blind) {
    LookWords words = model.said();
    TakingViewModel taking = model.taking();
    setId("blind");
    getStyleClass().add("open-content");
    Label number = new Label(blind.bone().value());
    number.setId("blind-bone");
    number.getStyleClass().add("answer");
    Label where = new WrappedLabel(words.get("blind.where", ((Opened.Blind) blind).tray()));
    Label rule = new WrappedLabel(words.get("blind.rule"));
    rule.getStyleClass().add("note");
    ElementFields element = new ElementFields(model.elements(), words.bones());
    element.setOnElement(taking::offer);
    Runnable record = () -> taking.record(element.element(), element.side(), element.portion());
    CallFields call = new CallFields(taking.form(), words.bones(), "call.why", record).withoutWhy();
    CheckBox saw = new CheckBox(words.get("blind.saw"));
    saw.setId("saw-before");
    saw.setWrapText(true);
    saw.selectedProperty().bindBidirectional(taking.sawBeforeProperty());
    Button button = new Button(words.get("blind.record"));
    button.setId("record-look");
    button.getStyleClass().setAll("button", "record");
    button.setOnAction(event -> record.run());
    Button back = new Button(words.get("blind.back"));
    back.setId("put-back");
    back.getStyleClass().setAll("quiet");
    back.setOnAction(event -> model.close());
    HBox actions = new HBox(button, back);
    actions.getStyleClass().add("actions");
    getChildren().addAll(number, where, rule, element, call, saw, actions);
  }
}

package org.comparanda.gui.houserules;

import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.comparanda.gui.control.Field;
import org.comparanda.gui.control.PlainScroll;
import org.comparanda.gui.control.WrappedLabel;
import org.comparanda.house.RuleName;

/** The open rule: what it does, what it says, setting it, every setting so far. */
final class RulePane extends VBox {
  private final HouseRulesViewModel model;
  private final RuleWords words;
  private final VBox content = new VBox();
  private final Label message = new Label();

  RulePane(HouseRulesViewModel model) {
    this.model = model;
    this.words = model.said();
    getStyleClass().addAll("card", "open-rule");
    content.getStyleClass().add("rule-content");
    message.setId("message");
    message.setWrapText(true);
    message.setMinHeight(USE_PREF_SIZE);
    message.getStyleClass().add("strong");
    message.textProperty().bind(model.messageProperty());
    message.managedProperty().bind(model.messageProperty().isNotEmpty());
    PlainScroll scroll = new PlainScroll(content);
    scroll.setFocusTraversable(false);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().add(scroll);
    model.openProperty().addListener((o, was, is) -> show(is));
    show(Optional.empty());
  }

  private void show(Optional<RuleLine> open) {
    if (open.isEmpty()) {
      content.getChildren().setAll(new WrappedLabel(words.get("open.none"), "answer"));
      return;
    }
    RuleLine rule = open.get();
    Field value = new Field("rule-value", words.get("set.to")).bind(model.valueProperty());
    Field why = new Field("rule-why", words.get("set.because")).bind(model.whyProperty());
    value.field().setOnAction(event -> why.field().requestFocus());
    why.field().setOnAction(event -> model.set());
    Button set = new Button(words.get("set"));
    set.setId("set-rule");
    set.getStyleClass().setAll("button", "record");
    set.setOnAction(event -> model.set());
    Button back = new Button(words.get("set.default", rule.untilSet()));
    back.setId("as-until-set");
    back.getStyleClass().setAll("quiet");
    back.setOnAction(event -> model.asUntilSet());
    back.setVisible(rule.rule() != RuleName.CONTACT_CARD);
    HBox actions = new HBox(set, back);
    actions.getStyleClass().add("actions");
    content
        .getChildren()
        .setAll(
            new WrappedLabel(rule.name(), "answer"),
            new WrappedLabel(rule.does(), "plain"),
            new WrappedLabel(words.get("now", rule.value()), "strong"),
            new WrappedLabel(words.allowed(rule.rule()), "note"),
            value,
            why,
            actions,
            message,
            new WrappedLabel(words.get("history"), "strong"));
    if (rule.history().isEmpty()) {
      content.getChildren().add(new WrappedLabel(words.get("history.none"), "note"));
    }
    rule.history().forEach(past -> content.getChildren().add(new WrappedLabel(past, "plain")));
  }
}

package org.comparanda.gui.secondlook;

import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.comparanda.gui.control.PlainScroll;

/** The open bone: how to begin, a look to be taken blind, or all calls side by side. */
final class OpenPane extends VBox {
  private final SecondLookViewModel model;
  private final LookWords words;
  private final VBox content = new VBox();

  /**
   * @param back takes the focus after a bone was put back
   */
  OpenPane(SecondLookViewModel model, Runnable back) {
    this.model = model;
    this.words = model.said();
    getStyleClass().addAll("card", "open-bone");
    HBox.setHgrow(this, Priority.ALWAYS);
    content.getStyleClass().add("open-content");
    PlainScroll scroll = new PlainScroll(content);
    scroll.setFocusTraversable(false);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().add(scroll);
    model
        .openProperty()
        .addListener(
            (o, was, is) -> {
              show(is);
              boolean taken = was.filter(Opened.Blind.class::isInstance).isPresent();
              if (taken && is.filter(Opened.Both.class::isInstance).isPresent()) {
                focusFirst();
              }
            });
    addEventHandler(
        KeyEvent.KEY_PRESSED,
        event -> {
          if (event.getCode() == KeyCode.ESCAPE) {
            event.consume();
            model.close();
            back.run();
          }
        });
    model
        .personProperty()
        .addListener(
            (o, was, is) -> {
              if (model.openProperty().get().isEmpty()) {
                show(Optional.empty());
              }
            });
    show(Optional.empty());
  }

  /** Takes the focus into the open bone. */
  void focusFirst() {
    applyCss(); // a scroll pane has its content in the scene only from then on
    layout();
    Stream.of("#eye-element", "#put-back")
        .map(this::lookup)
        .filter(Objects::nonNull)
        .findFirst()
        .ifPresent(Node::requestFocus);
  }

  private void show(Optional<Opened> open) {
    if (open.isEmpty()) {
      Label begin =
          new Label(
              words.get(model.personProperty().get().isEmpty() ? "open.nobody" : "open.none"));
      begin.getStyleClass().add("answer");
      begin.setWrapText(true);
      Label how = new Label(words.get("open.how"));
      how.setWrapText(true);
      content.getChildren().setAll(begin, how);
    } else if (open.get() instanceof Opened.Both both) {
      content.getChildren().setAll(new BothPane(model, both));
    } else {
      content.getChildren().setAll(new BlindPane(model, open.get()));
    }
  }
}

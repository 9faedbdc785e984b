package org.comparanda.gui.control;

import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** What is dangerous about a lot, to be read before its first bone is shown. */
public final class HazardsCard extends VBox {
  private final Button read = new Button();

  /**
   * Builds the card.
   *
   * @param title says that this comes first
   * @param hazards as recorded
   * @param then what to do
   * @param answer what the person says who has read it
   */
  public HazardsCard(String title, String hazards, String then, String answer, Runnable onRead) {
    setId("hazards");
    getStyleClass().addAll("card", "hazards-card");
    Label head = new WrappedLabel(title);
    head.getStyleClass().add("title");
    Label says = new WrappedLabel(hazards);
    says.getStyleClass().addAll("reading", "warning");
    read.setText(answer);
    read.setId("hazards-read");
    read.getStyleClass().setAll("button", "record");
    read.setDefaultButton(true);
    read.setOnAction(event -> onRead.run());
    getChildren().addAll(head, says, new WrappedLabel(then), read);
  }

  /** The button, to be focused where the card comes up by itself. */
  public Button button() {
    return read;
  }
}

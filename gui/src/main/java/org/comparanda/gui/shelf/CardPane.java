package org.comparanda.gui.shelf;

import java.util.List;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.comparanda.gui.text.Words;

/** One animal: who it is, and every bone with its readings and state. */
final class CardPane extends VBox {
  private final Words words;
  private final List<Button> buttons;

  CardPane(ShelfViewModel model, Words words, List<Button> buttons) {
    this.words = words;
    this.buttons = List.copyOf(buttons);
    setId("animal-card");
    getStyleClass().addAll("card", "animal-card");
    model.cardProperty().addListener((o, was, is) -> show(is));
    show(model.cardProperty().get());
  }

  private void show(Optional<AnimalCard> card) {
    getChildren().clear();
    if (card.isEmpty()) {
      getChildren().add(styled(words.get("card.none"), "grey"));
      return;
    }
    Label number = styled(card.get().number(), "reading");
    Label taxon = styled(card.get().taxon(), "taxon");
    GridPane facts = new GridPane();
    facts.getStyleClass().add("facts");
    for (int i = 0; i < card.get().facts().size(); i++) {
      AnimalCard.Fact fact = card.get().facts().get(i);
      facts.add(styled(fact.label(), "note"), 2 * (i % 2), i / 2);
      Label text = new Label(fact.text());
      text.setWrapText(true);
      facts.add(text, 2 * (i % 2) + 1, i / 2);
    }
    VBox bones = new VBox();
    bones.getStyleClass().add("bones");
    card.get().bones().forEach(bone -> bones.getChildren().add(line(bone)));
    ScrollPane scroll = new ScrollPane(bones);
    scroll.setFitToWidth(true);
    Region spring = new Region();
    HBox.setHgrow(spring, Priority.ALWAYS);
    HBox head = new HBox(10, number, taxon, spring);
    head.getChildren().addAll(buttons);
    getChildren().addAll(head, facts, scroll);
    VBox.setVgrow(scroll, javafx.scene.layout.Priority.ALWAYS);
  }

  private static VBox line(AnimalCard.BoneLine bone) {
    Label readings = new Label(bone.readings());
    readings.setWrapText(true);
    VBox line = new VBox(styled(bone.name(), "strong"), readings);
    if (!bone.state().isEmpty()) {
      line.getChildren().add(styled(bone.state(), "note"));
    }
    return line;
  }

  private static Label styled(String text, String style) {
    Label label = new Label(text);
    label.getStyleClass().add(style);
    label.setMinWidth(USE_PREF_SIZE);
    return label;
  }
}

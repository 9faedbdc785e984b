package org.comparanda.gui.shelf.skeleton;

import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.comparanda.bone.Element;
import org.comparanda.gui.control.PlainScroll;
import org.comparanda.gui.shelf.keeping.Written;
import org.comparanda.gui.text.Words;

/** The elements in the order of the protocol, with what the card has of each. */
final class ElementList extends VBox {
  private final SkeletonViewModel model;
  private final Words words;
  private final VBox elements = new VBox();

  ElementList(SkeletonViewModel model) {
    this.model = model;
    words = model.room().words();
    elements.getStyleClass().add("skeleton-elements");
    getChildren()
        .addAll(Written.label(words.get("skeleton.elements"), "strong"), new PlainScroll(elements));
    setVgrow(getChildren().get(1), Priority.ALWAYS);
    getStyleClass().addAll("card", "stock-left", "skeleton-list");
    model.elementProperty().addListener((o, was, is) -> show());
    model.cardProperty().addListener((o, was, is) -> show());
    show();
  }

  private void show() {
    elements.getChildren().setAll(model.elements().stream().map(this::button).toList());
  }

  private Button button(Element one) {
    String onCard = onCard(one);
    String name = model.room().keeper().element(one.key());
    Button button = new Button(onCard.isEmpty() ? name : name + "\n" + onCard);
    button.setWrapText(true);
    button.setId("element-" + one.key());
    button.getStyleClass().setAll("skeleton-element");
    if (model.elementProperty().get().filter(one::equals).isPresent()) {
      button.getStyleClass().add("skeleton-element-on");
    }
    button.setMaxWidth(Double.MAX_VALUE);
    button.setOnAction(event -> model.choose(one));
    return button;
  }

  /** The sides of which the card has values. */
  private String onCard(Element one) {
    List<String> sides =
        model.cardProperty().get().stream()
            .flatMap(card -> card.animal().bones().stream())
            .filter(b -> b.element().equals(one.key()) && !b.values().isEmpty())
            .map(b -> words.get("side." + b.side().name().toLowerCase(java.util.Locale.ROOT)))
            .distinct()
            .toList();
    return sides.isEmpty() ? "" : words.get("skeleton.on.card", String.join(", ", sides));
  }
}

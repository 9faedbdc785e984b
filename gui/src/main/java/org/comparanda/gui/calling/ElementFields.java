package org.comparanda.gui.calling;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.layout.FlowPane;
import org.comparanda.bone.Element;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.gui.control.Pick;

/** Which element, side and portion a bone is, by eye. */
public final class ElementFields extends FlowPane {
  private final Pick<Element> element;
  private final Pick<Side> side;
  private final Pick<Portion> portion;

  public ElementFields(List<Element> elements, BoneWords words) {
    getStyleClass().add("tray-line");
    element = new Pick<>("eye-element", words.get("element"), elements, words::element);
    side =
        new Pick<>(
            "eye-side", words.get("side"), List.of(Side.values()), s -> words.word("side", s));
    portion =
        new Pick<>(
            "eye-portion",
            words.get("portion"),
            List.of(Portion.values()),
            p -> words.word("portion", p));
    getChildren().addAll(element, side, portion);
  }

  /** Shows what a bone is said to be. */
  public void show(ElementKey key, Side shownSide, Portion shownPortion) {
    element.box().getItems().stream()
        .filter(e -> e.key().equals(key))
        .findFirst()
        .ifPresent(element.box()::setValue);
    side.box().setValue(shownSide);
    portion.box().setValue(shownPortion);
  }

  /** What follows when another element is chosen. */
  public void setOnElement(Consumer<Optional<ElementKey>> then) {
    element.box().valueProperty().addListener((o, was, is) -> then.accept(element()));
  }

  public Optional<ElementKey> element() {
    return element.chosen().map(Element::key);
  }

  public Optional<Side> side() {
    return side.chosen();
  }

  public Optional<Portion> portion() {
    return portion.chosen();
  }
}

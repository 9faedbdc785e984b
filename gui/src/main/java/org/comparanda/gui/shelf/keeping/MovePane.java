package org.comparanda.gui.shelf.keeping;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.comparanda.bone.Element;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.gui.control.Choice;
import org.comparanda.gui.text.Words;
import org.comparanda.register.AnimalCard;
import org.comparanda.register.BonePlace;

/** Moves a bone to where it belongs: which one, to which element, side and portion. */
public final class MovePane extends VBox {
  private final Choice<Optional<BonePlace>> from;

  /**
   * @param card the card whose bone is moved; empty while none is open
   */
  public MovePane(MoveViewModel model, Supplier<Optional<AnimalCard>> card) {
    Words words = model.room().words();
    setId("bone-move");
    getStyleClass().add("bone-move");
    from =
        new Choice<>(
            "move-from",
            words.get("move.from"),
            List.of(),
            place -> place.map(model::named).orElse(""));
    from.bind(model.fromProperty());
    from.box().valueProperty().addListener((o, was, is) -> chosen(model, is));
    List<Optional<Element>> elements = model.elements().stream().map(Optional::of).toList();
    Choice<Optional<Element>> element =
        new Choice<>(
                "move-element",
                words.get("move.to"),
                elements,
                e -> e.map(one -> model.room().element(one.key())).orElse(""))
            .bind(model.elementProperty());
    Choice<Side> side =
        new Choice<>(
                "move-side",
                words.get("move.side"),
                Arrays.asList(Side.values()),
                s -> words.get("side." + lower(s)))
            .bind(model.sideProperty());
    Choice<Portion> portion =
        new Choice<>(
                "move-portion",
                words.get("move.portion"),
                Arrays.asList(Portion.values()),
                p -> words.get("portion." + lower(p)))
            .bind(model.portionProperty());
    FlowPane row =
        new FlowPane(
            from,
            element,
            side,
            portion,
            Written.button(
                words.get("move.do"), "move-do", () -> card.get().ifPresent(model::move)));
    row.getStyleClass().add("bone-choices");
    getChildren()
        .addAll(
            Written.label(words.get("move.title"), "strong"),
            Written.wrapped(words.get("move.how"), "note"),
            row,
            Written.told(model.sentenceProperty(), "move-sentence", "strong"));
  }

  /** The bones that can be moved. */
  public void offer(List<BonePlace> places) {
    from.box().getItems().setAll(places.stream().map(Optional::of).toList());
  }

  /** Where the keyboard begins. */
  public void focus() {
    from.box().requestFocus();
  }

  private static void chosen(MoveViewModel model, Optional<BonePlace> is) {
    if (is != null && is.isPresent()) {
      model.show(is);
    }
  }

  private static String lower(Enum<?> word) {
    return word.name().toLowerCase(Locale.ROOT);
  }
}

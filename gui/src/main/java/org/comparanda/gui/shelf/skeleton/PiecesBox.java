package org.comparanda.gui.shelf.skeleton;

import java.util.List;
import java.util.Locale;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.comparanda.bone.Portion;
import org.comparanda.gui.shelf.keeping.Written;
import org.comparanda.gui.text.Words;

/** The pieces of the side in hand, and the button for another one. */
final class PiecesBox extends VBox {
  private final SkeletonViewModel model;
  private final Words words;
  private final Label over = Written.label("", "note");
  private final HBox row = new HBox();

  PiecesBox(SkeletonViewModel model) {
    this.model = model;
    words = model.room().words();
    row.getStyleClass().add("page-tabs");
    getChildren().addAll(over, row);
    model.piecesProperty().addListener((o, was, is) -> show());
    model.cardProperty().addListener((o, was, is) -> show());
    model.inHand().sideProperty().addListener((o, was, is) -> show());
    model.inHand().rows().addListener((ListChangeListener<SkeletonRow>) change -> show());
    show();
  }

  private void show() {
    String side = model.inHand().sideProperty().get().name().toLowerCase(Locale.ROOT);
    over.setText(words.get("skeleton.pieces", words.get("side." + side)));
    row.getChildren().clear();
    List<Portion> parts = model.parts();
    boolean pieces = parts.size() > 1 || parts.stream().anyMatch(part -> part != Portion.WHOLE);
    if (pieces) {
      parts.forEach(part -> row.getChildren().add(piece(part)));
    }
    row.getChildren()
        .add(
            Written.button(
                words.get("skeleton.piece.another"),
                "piece-another",
                model::anotherPiece,
                "quiet"));
    setVisible(pieces);
    setManaged(pieces);
  }

  private ToggleButton piece(Portion part) {
    ToggleButton button = new ToggleButton(model.room().reading().words().get("portion." + part));
    button.setId("piece-" + part.name().toLowerCase(Locale.ROOT));
    button.getStyleClass().setAll("page-tab");
    boolean meant =
        model.bones().filter(b -> b.part(model.inHand().sideProperty().get()) == part).isPresent();
    button.setSelected(meant);
    button.setOnAction(
        event -> {
          button.setSelected(true);
          model.choose(part);
        });
    return button;
  }
}

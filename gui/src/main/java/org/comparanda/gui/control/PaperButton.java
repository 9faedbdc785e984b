package org.comparanda.gui.control;

import java.util.List;
import javafx.beans.property.ObjectProperty;
import javafx.scene.control.Button;
import org.comparanda.slips.Paper;

/** Says which paper a page is made for; each press takes the next. */
public final class PaperButton extends Button {
  /** The button, whose paper all screens share. */
  public PaperButton(ObjectProperty<Paper> paper, String label) {
    setId("paper");
    getStyleClass().setAll("button", "quiet");
    setAccessibleText(label);
    textProperty().bind(paper.map(PaperButton::name));
    setOnAction(event -> paper.set(next(paper.get())));
  }

  private static Paper next(Paper now) {
    List<Paper> all = List.of(Paper.values());
    return all.get((all.indexOf(now) + 1) % all.size());
  }

  private static String name(Paper paper) {
    return switch (paper) {
      case A4 -> "A4";
      case LETTER -> "Letter";
    };
  }
}

package org.comparanda.gui.bench;

import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.comparanda.gui.control.falling.FallingLine;
import org.comparanda.gui.control.falling.FallingPicture;
import org.comparanda.gui.text.Words;

/** The falling line on its card; rows beyond the height scroll. */
final class FallingCard extends StackPane {
  private final FallingLine line = new FallingLine();

  FallingCard(BenchViewModel bench, Words words) {
    getStyleClass().addAll("card", "falling-card");
    line.setId("falling-line");
    line.pictureProperty().bind(bench.pictureProperty());
    ScrollPane scroll = new ScrollPane(line);
    scroll.setFitToWidth(true);
    scroll.setFitToHeight(true);
    scroll.setFocusTraversable(false);
    scroll.getStyleClass().add("plain-scroll");
    Label nothing = new Label(words.get("picture.none"));
    nothing.getStyleClass().add("grey");
    nothing.setWrapText(true);
    nothing
        .visibleProperty()
        .bind(bench.pictureProperty().map(picture -> picture.rows().isEmpty()));
    scroll.visibleProperty().bind(nothing.visibleProperty().not());
    Label greyed = new Label(words.get("picture.greyed"));
    greyed.getStyleClass().add("note");
    greyed.setWrapText(true);
    greyed.visibleProperty().bind(bench.pictureProperty().map(FallingCard::allInDrawer));
    greyed.managedProperty().bind(greyed.visibleProperty());
    VBox shown = new VBox(greyed, scroll);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().addAll(shown, nothing);
  }

  private static boolean allInDrawer(FallingPicture picture) {
    return picture.rows().stream()
        .anyMatch(row -> row.presence() == FallingPicture.Presence.IN_DRAWER);
  }

  /** The line itself. */
  FallingLine line() {
    return line;
  }
}

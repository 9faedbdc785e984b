package org.comparanda.gui.bench;

import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Optional;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.comparanda.gui.control.FilePlace;
import org.comparanda.gui.control.PlainScroll;
import org.comparanda.gui.control.WrappedLabel;
import org.comparanda.gui.control.falling.FallingLine;
import org.comparanda.gui.control.falling.FallingPicture;
import org.comparanda.gui.control.falling.FallingPrint;
import org.comparanda.gui.control.plot.FigureExport.Format;
import org.comparanda.gui.text.Words;

/** The falling line on its card; rows beyond the height scroll. */
final class FallingCard extends StackPane {
  private final BenchViewModel bench;
  private final Words words;
  private final FallingLine line = new FallingLine();
  private final Button save = new Button();
  private final StringProperty said = new SimpleStringProperty("");

  FallingCard(BenchViewModel bench, Words words) {
    this.bench = bench;
    this.words = words;
    getStyleClass().addAll("card", "falling-card");
    line.setId("falling-line");
    line.pictureProperty().bind(bench.pictureProperty());
    PlainScroll scroll = new PlainScroll(line);
    scroll.setFitToHeight(true);
    scroll.setAccessibleText(words.get("picture.spoken"));
    scroll.setFocusTraversable(false);
    follow(scroll);
    Label nothing = new Label(words.get("picture.none"));
    nothing.getStyleClass().add("grey");
    nothing.setWrapText(true);
    nothing
        .visibleProperty()
        .bind(bench.pictureProperty().map(picture -> picture.rows().isEmpty()));
    scroll.visibleProperty().bind(nothing.visibleProperty().not());
    Label greyed = new WrappedLabel(words.get("picture.greyed"), "note");
    greyed.visibleProperty().bind(bench.pictureProperty().map(FallingCard::allInDrawer));
    greyed.managedProperty().bind(greyed.visibleProperty());
    VBox shown = new VBox(greyed, scroll);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    Label saved = new Label();
    saved.getStyleClass().add("note");
    saved.textProperty().bind(said);
    bench.pictureProperty().addListener((o, was, is) -> said.set(""));
    save.setText(words.get("picture.save"));
    save.setId("save-picture");
    save.getStyleClass().setAll("button", "why");
    HBox foot = new HBox(saved, save);
    foot.getStyleClass().add("picture-foot");
    foot.visibleProperty().bind(scroll.visibleProperty());
    foot.setPickOnBounds(false);
    foot.setMaxHeight(USE_PREF_SIZE);
    StackPane.setAlignment(foot, Pos.BOTTOM_RIGHT);
    getChildren().addAll(shown, nothing, foot);
  }

  /** More rows than fit are gone through by arrows, and the picture keeps its headings in view. */
  private void follow(PlainScroll scroll) {
    Runnable now =
        () -> {
          double high = scroll.getViewportBounds().getHeight();
          double beyond = Math.max(0, line.getHeight() - high);
          scroll.setFocusTraversable(beyond > 1);
          line.inView(scroll.getVvalue() * beyond, high);
        };
    scroll.vvalueProperty().subscribe(now);
    scroll.viewportBoundsProperty().subscribe(now);
    line.heightProperty().subscribe(now);
  }

  /**
   * Saves the picture by button.
   *
   * @param files asks where to
   * @param note stands under the picture: whose data they are
   */
  void setOnSave(FilePlace files, String note) {
    save.setOnAction(event -> save(files, note));
  }

  /** The button that saves the picture. */
  Button saver() {
    return save;
  }

  /** SVG and PNG beside each other, whichever name was chosen. */
  private void save(FilePlace files, String note) {
    Optional<FallingPrint> print = bench.print(note);
    if (print.isPresent()) {
      files
          .choose(
              words.get(
                  "picture.file", bench.boneProperty().get().map(b -> b.id().value()).orElse("")))
          .ifPresent(chosen -> said.set(written(print.get(), chosen)));
    }
  }

  private String written(FallingPrint print, Path chosen) {
    String name = String.valueOf(chosen.getFileName()).replaceFirst("\\.(svg|png)$", "");
    Path svg = chosen.resolveSibling(name + ".svg");
    Path png = chosen.resolveSibling(name + ".png");
    try {
      print.write(Format.SVG, svg);
      print.write(Format.PNG, png);
      return words.get("picture.saved", svg.getFileName(), png.getFileName());
    } catch (UncheckedIOException e) {
      return words.get("picture.notsaved", svg);
    }
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

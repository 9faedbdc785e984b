package org.comparanda.gui.capture;

import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.comparanda.gui.control.outline.BoneDrawing;
import org.comparanda.gui.control.outline.BoneSketch;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.Measurement;

/** What to measure now: drawing with jaws, code, definition, common mistakes. */
public final class OutlineCard extends BorderPane {
  private static final double NARROW_EM = 22;
  private static final double LEAST_EM = 12;
  private static final double JAWS_EM = 8;
  private static final double MOST_PART = 0.62;

  private final ReadingsViewModel readings;
  private final Supplier<Optional<BoneSketch>> sketch;
  private final Words words;
  private final Label code = new Label();
  private final Label name = new Label();
  private final Label definition = wrapped("definition");
  private final Label mistakes = wrapped("note");
  private final Label caption = wrapped("note");
  private final BoneDrawing drawing = new BoneDrawing();
  private final VBox under = new VBox();
  private final HBox title = new HBox(code, name);
  private final VBox explained = new Beside(definition, mistakes);

  /**
   * @param bone changes with the bone in hand
   * @param sketch its drawing; empty while there is no bone
   */
  public OutlineCard(
      ReadingsViewModel readings,
      ObservableValue<?> bone,
      Supplier<Optional<BoneSketch>> sketch,
      Words words) {
    this.readings = readings;
    this.sketch = sketch;
    this.words = words;
    getStyleClass().addAll("card", "outline-card");
    code.getStyleClass().add("title");
    code.setMinWidth(USE_PREF_SIZE);
    name.getStyleClass().add("title");
    name.setWrapText(true);
    HBox.setHgrow(name, Priority.ALWAYS);
    explained.getStyleClass().add("explained");
    title.getStyleClass().add("outline-title");
    setTop(title);
    setCenter(drawing);
    readings.currentProperty().addListener((o, was, is) -> show());
    readings.fieldProperty().addListener((o, was, is) -> drawOnly());
    bone.addListener((o, was, is) -> show());
    visibleProperty().addListener((o, was, is) -> show());
    widthProperty().addListener((o, was, is) -> drawOnly());
    heightProperty().addListener((o, was, is) -> drawOnly());
    show();
  }

  /** The drawing, over which a pointer may rest. */
  public BoneDrawing drawing() {
    return drawing;
  }

  private void show() {
    if (!isVisible()) {
      return;
    }
    Optional<Measurement> now = readings.currentProperty().get();
    code.setText(now.map(m -> m.code().value()).orElse(""));
    name.setText(
        now.map(Measurement::name)
            .orElse(readings.passes().isPresent() ? words.get("nothing.due") : ""));
    definition.setText(now.map(Measurement::definition).orElse(""));
    mistakes.setText(
        now.filter(m -> !m.mistakes().isEmpty())
            .map(m -> words.get("mistakes", String.join(" ", m.mistakes())))
            .orElse(""));
    drawOnly();
  }

  private void drawOnly() {
    if (!isVisible()) {
      return;
    }
    Optional<BoneSketch> drawn = sketch.get();
    drawing.sketchProperty().set(drawn);
    caption.setText(drawn.map(BoneSketch::caption).orElse(""));
    boolean narrow = getWidth() > 0 && getWidth() < NARROW_EM * em();
    boolean wide =
        narrow || drawn.filter(k -> k.box().width() > 0.8 * k.box().height()).isPresent();
    if (wide && getBottom() != under) {
      setRight(null);
      explained.setPrefWidth(USE_COMPUTED_SIZE);
      under.getChildren().setAll(caption, explained);
      setBottom(under);
    } else if (!wide && getRight() != explained) {
      under.getChildren().clear();
      setRight(explained);
      setBottom(caption);
    }
    if (!wide) {
      explained.setPrefWidth(besideDrawing(drawn));
    }
  }

  /** The words take what a drawing as high as this card leaves, so that they need fewer lines. */
  private double besideDrawing(Optional<BoneSketch> drawn) {
    double room = getWidth() - snappedLeftInset() - snappedRightInset();
    double high = getHeight() - title.getHeight() - caption.getHeight();
    double drawingWide =
        drawn.map(k -> high * k.box().width() / k.box().height()).orElse(0.0) + JAWS_EM * em();
    return Math.max(LEAST_EM * em(), Math.min(room - drawingWide, MOST_PART * room));
  }

  private double em() {
    return definition.getFont().getSize();
  }

  private static Label wrapped(String style) {
    Label label = new Label();
    label.setWrapText(true);
    label.setMinHeight(USE_PREF_SIZE);
    label.getStyleClass().add(style);
    HBox.setHgrow(label, Priority.ALWAYS);
    return label;
  }

  /** Texts beside the drawing: their card is asked how high it must be before it has a width. */
  private static final class Beside extends VBox {
    Beside(Label... texts) {
      super(texts);
    }

    @Override
    protected double computeMinHeight(double width) {
      return super.computeMinHeight(width < 0 ? prefWidth(-1) : width);
    }
  }
}

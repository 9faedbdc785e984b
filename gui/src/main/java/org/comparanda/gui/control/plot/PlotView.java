package org.comparanda.gui.control.plot;

import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Cursor;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.Tooltip;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.text.Text;

/**
 * A figure on the screen, as large as its place. A point says who it is when the pointer is over
 * it, and a click on it is passed on. The colours follow the brightness of its background, which
 * the style class {@code plot} gives it.
 */
public final class PlotView extends Region {
  private final Canvas canvas = new Canvas();
  private final Text probe = new Text();
  private final Tooltip tip = new Tooltip();
  private final ObjectProperty<Optional<Figure>> figure =
      new SimpleObjectProperty<>(Optional.empty());
  private Optional<FigureDrawing> drawing = Optional.empty();
  private Consumer<String> onPoint = id -> {};

  public PlotView() {
    probe.setManaged(false);
    probe.setVisible(false);
    getChildren().addAll(probe, canvas);
    getStyleClass().add("plot");
    setMinSize(320, 200);
    setPrefSize(720, 440);
    figure.addListener((o, was, is) -> requestLayout());
    backgroundProperty().addListener((o, was, is) -> requestLayout());
    probe.fontProperty().addListener((o, was, is) -> requestLayout());
    canvas.setOnMouseMoved(this::hover);
    canvas.setOnMouseExited(e -> tip.hide());
    canvas.setOnMouseClicked(e -> pointUnder(e).ifPresent(p -> onPoint.accept(p.id())));
  }

  /** What is shown; nothing at first. */
  public ObjectProperty<Optional<Figure>> figureProperty() {
    return figure;
  }

  /** What happens when a point is clicked: its id is handed over. */
  public void setOnPoint(Consumer<String> action) {
    onPoint = action;
  }

  /** What the point at a place in this view says, as the pointer would show it. */
  public Optional<String> tipAt(double x, double y) {
    return drawing.flatMap(d -> d.pointAt(new Xy(x, y))).map(Series.Point::tip);
  }

  @Override
  protected void layoutChildren() {
    canvas.setWidth(getWidth());
    canvas.setHeight(getHeight());
    var graphics = canvas.getGraphicsContext2D();
    graphics.clearRect(0, 0, getWidth(), getHeight());
    drawing =
        figure.get().map(f -> FigureDrawing.of(f, palette(), getWidth(), getHeight(), text()));
    drawing.ifPresent(d -> d.draw(new CanvasPen(graphics, probe.getFont().getFamily())));
  }

  private double text() {
    return probe.getFont().getSize();
  }

  private Palette palette() {
    return Optional.ofNullable(getBackground())
        .flatMap(ground -> ground.getFills().stream().findFirst())
        .filter(fill -> fill.getFill() instanceof Color)
        .map(fill -> Palette.onGround(((Color) fill.getFill()).getBrightness()))
        .orElse(Palette.LIGHT);
  }

  private void hover(MouseEvent event) {
    Optional<Series.Point> point = pointUnder(event);
    canvas.setCursor(point.isPresent() ? Cursor.HAND : Cursor.DEFAULT);
    if (point.isEmpty()) {
      tip.hide();
      return;
    }
    tip.setText(point.get().tip());
    tip.show(canvas, event.getScreenX() + 14, event.getScreenY() + 10);
  }

  private Optional<Series.Point> pointUnder(MouseEvent event) {
    return drawing.flatMap(d -> d.pointAt(new Xy(event.getX(), event.getY())));
  }
}

package org.comparanda.gui.control.plot;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.geometry.Point2D;
import javafx.scene.Cursor;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.shape.Circle;
import javafx.scene.text.Text;

/**
 * A figure on the screen, as large as its place. A point says who it is when the pointer is over
 * it, and a click on it is passed on; from the keyboard the arrows go from point to point, and
 * Enter is the click. The colours follow the brightness of its background, which the style class
 * {@code plot} gives it.
 */
public final class PlotView extends Region {
  private static final int NOBODY = -1;

  private final Canvas canvas = new Canvas();
  private final Text probe = new Text();
  private final Tooltip tip = new Tooltip();
  private final ObjectProperty<Optional<Figure>> figure =
      new SimpleObjectProperty<>(Optional.empty());
  private Optional<FigureDrawing> drawing = Optional.empty();
  private final Circle mark = new Circle();
  private Consumer<String> onPoint = id -> {};
  private int marked = NOBODY;

  public PlotView() {
    probe.setManaged(false);
    probe.setVisible(false);
    mark.setManaged(false);
    mark.setVisible(false);
    mark.setMouseTransparent(true);
    mark.getStyleClass().add("plot-mark");
    getChildren().addAll(probe, canvas, mark);
    getStyleClass().add("plot");
    setMinSize(320, 200);
    setPrefSize(720, 440);
    figure.addListener(
        (o, was, is) -> {
          unmark();
          requestLayout();
        });
    setOnKeyPressed(this::key);
    focusedProperty().addListener((o, was, is) -> unmark());
    widthProperty().addListener((o, was, is) -> unmark());
    heightProperty().addListener((o, was, is) -> unmark());
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
    setFocusTraversable(true);
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

  private void key(KeyEvent event) {
    switch (event.getCode()) {
      case RIGHT, DOWN -> step(1);
      case LEFT, UP -> step(-1);
      case ENTER -> {
        if (marked != NOBODY) {
          onPoint.accept(points().get(marked).id());
        }
      }
      default -> {
        return;
      }
    }
    event.consume();
  }

  /** To the next point along x. */
  private void step(int by) {
    List<Series.Point> points = points();
    if (points.isEmpty() || drawing.isEmpty()) {
      return;
    }
    marked = marked == NOBODY ? 0 : Math.floorMod(marked + by, points.size());
    Series.Point point = points.get(marked);
    Xy place = drawing.get().placeOf(point);
    mark.setCenterX(place.x());
    mark.setCenterY(place.y());
    mark.setRadius(0.8 * text());
    mark.setVisible(true);
    setAccessibleHelp(point.tip());
    Point2D at = localToScreen(place.x(), place.y());
    tip.setText(point.tip());
    if (at != null) {
      tip.show(this, at.getX() + 14, at.getY() + 10);
    }
  }

  private void unmark() {
    marked = NOBODY;
    mark.setVisible(false);
    tip.hide();
  }

  private List<Series.Point> points() {
    return figure.get().stream()
        .flatMap(f -> f.series().stream())
        .flatMap(s -> s.points().stream())
        .sorted(Comparator.comparingDouble(p -> p.at().x()))
        .toList();
  }

  private Optional<Series.Point> pointUnder(MouseEvent event) {
    return drawing.flatMap(d -> d.pointAt(new Xy(event.getX(), event.getY())));
  }
}

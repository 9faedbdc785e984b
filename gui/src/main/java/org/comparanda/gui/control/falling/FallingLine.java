package org.comparanda.gui.control.falling;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javafx.animation.AnimationTimer;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.Tooltip;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.text.Text;
import org.comparanda.gui.control.falling.FallingPicture.Dot;
import org.comparanda.gui.control.falling.Frame.ColumnPlace;
import org.comparanda.gui.control.falling.Frame.RowPlace;
import org.comparanda.gui.control.falling.Swarm.Spot;
import org.comparanda.gui.control.plot.CanvasPen;
import org.comparanda.gui.control.plot.Palette;
import org.comparanda.gui.control.plot.TextWidth;
import org.comparanda.gui.control.plot.Xy;

/**
 * The falling line on the screen. It moves from one picture to the next in less than a fifth of a
 * second, or at once when motion is off. A dot says who it is under the pointer; a click hands its
 * id on.
 */
public final class FallingLine extends Region {
  private static final double MOTION_NANOS = 170e6;

  private final Canvas canvas = new Canvas();
  private final Text probe = new Text();
  private final Tooltip tip = new Tooltip();
  private final ObjectProperty<FallingPicture> picture =
      new SimpleObjectProperty<>(FallingPicture.empty());
  private final BooleanProperty motion = new SimpleBooleanProperty(true);
  private final Motion timer = new Motion();
  private Frame shown = new Frame(java.util.Map.of(), java.util.Map.of());
  private Optional<AtRest> atRest = Optional.empty();
  private String family = "";
  private TextWidth widths = TextWidth.onScreen(family);
  private Optional<InView> view = Optional.empty();
  private Consumer<String> onAnimal = id -> {};

  public FallingLine() {
    getStyleClass().add("falling-line");
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    probe.setManaged(false);
    probe.setVisible(false);
    getChildren().addAll(probe, canvas);
    picture.addListener((o, was, is) -> change());
    backgroundProperty().addListener((o, was, is) -> requestLayout());
    probe.fontProperty().addListener((o, was, is) -> requestLayout());
    canvas.setOnMouseMoved(this::hover);
    canvas.setOnMouseExited(event -> tip.hide());
    canvas.setOnMouseClicked(
        event -> dotAt(event.getX(), event.getY()).ifPresent(d -> onAnimal.accept(d.id())));
  }

  /** What is shown. */
  public ObjectProperty<FallingPicture> pictureProperty() {
    return picture;
  }

  /** Whether it moves from picture to picture. */
  public BooleanProperty motionProperty() {
    return motion;
  }

  /** What happens when an animal's dot is clicked. */
  public void setOnAnimal(Consumer<String> action) {
    onAnimal = action;
  }

  /**
   * Says which part of it is in view where it scrolls, so that headings and scale stay.
   *
   * @param from how far it is scrolled down, px
   * @param height of the part in view, px
   */
  public void inView(double from, double height) {
    view = Optional.of(new InView(from, from + height));
    requestLayout();
  }

  /** The animal whose dot lies at a place of this control; in a crowd one of them. */
  public Optional<Dot> dotAt(double x, double y) {
    FallingDrawing drawing = drawing();
    double reach = drawing.plan().dot() + 2.5;
    if (!drawing.view().shows(y, drawing.plan())) {
      return Optional.empty();
    }
    for (RowPlace r : shown.rows().values()) {
      for (ColumnPlace c : shown.columns().values()) {
        for (Spot spot : r.swarm().in(c.column().key())) {
          if (near(drawing.place(r, c, spot), x, y, reach)) {
            return Optional.of(said(r.row().dots(c.column().key()).get(spot.dot()), spot));
          }
        }
      }
    }
    return Optional.empty();
  }

  private Dot said(Dot dot, Spot spot) {
    return spot.animals() == 1
        ? dot
        : new Dot(
            dot.value(),
            dot.id(),
            dot.tip() + "\n" + picture.get().captions().others(spot.animals() - 1));
  }

  private static boolean near(Xy at, double x, double y, double reach) {
    return Math.hypot(at.x() - x, at.y() - y) <= reach;
  }

  private void change() {
    setAccessibleText(spoken());
    if (motion.get() && getScene() != null && getWidth() > 0) {
      timer.begin();
    } else {
      timer.stop();
    }
    requestLayout();
    requestParentLayout();
  }

  private String spoken() {
    FallingPicture now = picture.get();
    return now.rows().stream()
        .map(
            r ->
                r.name()
                    + r.fit()
                        .map(
                            f ->
                                ", "
                                    + now.captions().share()
                                    + " "
                                    + f.shareText()
                                    + ", "
                                    + now.captions().typical()
                                    + " "
                                    + f.typicalText())
                        .orElse(""))
        .collect(Collectors.joining("; "));
  }

  @Override
  protected double computePrefHeight(double width) {
    return plan().leastHeight();
  }

  @Override
  protected double computeMinHeight(double width) {
    return plan().leastHeight();
  }

  @Override
  protected double computeMinWidth(double height) {
    return plan().leastWidth();
  }

  @Override
  protected void layoutChildren() {
    if (!timer.running()) {
      shown = atRest(plan());
      paint();
    }
  }

  private void paint() {
    if (canvas.getWidth() != getWidth() || canvas.getHeight() != getHeight()) {
      canvas.setWidth(getWidth());
      canvas.setHeight(getHeight());
    }
    var graphics = canvas.getGraphicsContext2D();
    graphics.clearRect(0, 0, getWidth(), getHeight());
    drawing().draw(shown, new CanvasPen(graphics, probe.getFont().getFamily()));
  }

  private FallingDrawing drawing() {
    Plan plan = plan();
    return new FallingDrawing(plan, palette(), view.orElseGet(() -> InView.all(plan)));
  }

  private Plan plan() {
    if (!family.equals(probe.getFont().getFamily())) {
      family = probe.getFont().getFamily();
      widths = TextWidth.kept(TextWidth.onScreen(family));
    }
    double text = probe.getFont().getSize();
    return new Plan(picture.get(), getWidth(), getHeight(), text, widths);
  }

  private record AtRest(Plan plan, Frame frame) {}

  /** Where everything comes to rest, reckoned once for a plan: the motion asks at every step. */
  private Frame atRest(Plan plan) {
    AtRest now =
        atRest.filter(r -> r.plan().equals(plan)).orElseGet(() -> new AtRest(plan, plan.frame()));
    atRest = Optional.of(now);
    return now.frame();
  }

  private Palette palette() {
    return Optional.ofNullable(getBackground())
        .flatMap(ground -> ground.getFills().stream().findFirst())
        .filter(fill -> fill.getFill() instanceof Color)
        .map(fill -> Palette.onGround(((Color) fill.getFill()).getBrightness()))
        .orElse(Palette.LIGHT);
  }

  private void hover(MouseEvent event) {
    Optional<Dot> dot = dotAt(event.getX(), event.getY());
    canvas.setCursor(dot.isPresent() ? Cursor.HAND : Cursor.DEFAULT);
    if (dot.isEmpty()) {
      tip.hide();
      return;
    }
    tip.setText(dot.get().tip());
    tip.show(canvas, event.getScreenX() + 14, event.getScreenY() + 10);
  }

  /** Runs from the frame shown to the one planned, slowing towards the end. */
  private final class Motion extends AnimationTimer {
    private Frame from = shown;
    private long begun = -1;
    private boolean running;

    void begin() {
      from = shown;
      begun = -1;
      running = true;
      start();
    }

    boolean running() {
      return running;
    }

    @Override
    public void handle(long now) {
      begun = begun < 0 ? now : begun;
      double part = Math.min(1, (now - begun) / MOTION_NANOS);
      Plan plan = plan();
      shown = from.towards(atRest(plan), 1 - Math.pow(1 - part, 3), plan.floor());
      paint();
      if (part >= 1) {
        stop();
      }
    }

    @Override
    public void stop() {
      super.stop();
      running = false;
      requestLayout();
    }
  }
}

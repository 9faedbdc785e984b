package org.comparanda.gui.control.outline;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.geometry.Point2D;
import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import javafx.scene.Group;
import javafx.scene.layout.Region;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.SVGPath;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;
import javafx.scene.transform.Scale;
import javafx.scene.transform.Translate;
import org.comparanda.gui.control.outline.BoneSketch.Box;
import org.comparanda.gui.control.outline.BoneSketch.Jaws;

/**
 * Draws a sketch as large as its place allows. Colours come from the style classes {@code bone},
 * {@code bone-missing}, {@code bone-line}, {@code jaws}.
 */
public final class BoneDrawing extends Region {
  private static final double MARGIN_EM = 2.1; // room for the jaws
  private static final double BARE_EM = 0.5;
  private static final double SIDE_EM = 1.2;

  private final ObjectProperty<Optional<BoneSketch>> sketch =
      new SimpleObjectProperty<>(Optional.empty());
  private final Text probe = new Text();
  private Optional<Drawn> drawn = Optional.empty();

  public BoneDrawing() {
    getStyleClass().add("bone-drawing");
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setMinSize(90, 90);
    probe.setVisible(false);
    sketch.addListener((o, was, is) -> requestLayout());
    sketch.addListener((o, was, is) -> setAccessibleText(is.map(BoneSketch::caption).orElse("")));
  }

  /** What is drawn; nothing at first. */
  public ObjectProperty<Optional<BoneSketch>> sketchProperty() {
    return sketch;
  }

  @Override
  protected void layoutChildren() {
    Optional<Drawn> now =
        Optional.of(new Drawn(sketch.get(), getWidth(), getHeight(), probe.getFont().getSize()));
    if (!now.equals(drawn)) {
      drawn = now;
      getChildren().setAll(probe);
      sketch.get().ifPresent(this::draw);
      applyCss();
    }
  }

  private void draw(BoneSketch s) {
    double em = probe.getFont().getSize();
    double before = SIDE_EM * em + room(s, -1);
    double after = SIDE_EM * em + room(s, 1);
    double wide = Math.max(1, getWidth() - before - after);
    double margin = s.jaws().isPresent() ? MARGIN_EM : BARE_EM;
    double high = Math.max(1, getHeight() - 2 * margin * em);
    double scale = Math.min(wide / s.box().width(), high / s.box().height());
    double left = before + (wide - scale * s.box().width()) / 2 - scale * s.box().x();
    double top = (getHeight() - scale * s.box().height()) / 2 - scale * s.box().y();
    Group bone = new Group();
    bone.getTransforms().addAll(new Translate(left, top), new Scale(scale, scale));
    bone.getChildren().add(path(s.edge(), "bone", 1.6 / scale));
    s.lines().forEach(line -> bone.getChildren().add(path(line, "bone-line", 0.9 / scale)));
    for (Box gone : s.missing()) {
      bone.getChildren().add(missing(s, gone, scale));
    }
    getChildren().add(bone);
    s.jaws().ifPresent(j -> jaws(j, s.box(), new Place(left, top, scale)));
  }

  /** What jaws and label need beside the bone: -1 left of it, 1 right of it. */
  private double room(BoneSketch s, int side) {
    return s.jaws()
        .filter(j -> beside(JawsPlan.of(j, s.box()), side))
        .map(j -> width(j.label()) + 1.6 * probe.getFont().getSize())
        .orElse(0.0);
  }

  private static boolean beside(JawsPlan plan, int side) {
    return plan.inPlace() ? side > 0 : side * plan.aside().getX() > 1e-9;
  }

  private double width(String words) {
    Text text = new Text(words);
    text.setFont(probe.getFont());
    return text.getLayoutBounds().getWidth();
  }

  private static SVGPath path(String data, String style, double stroke) {
    SVGPath path = new SVGPath();
    path.setContent(data);
    path.getStyleClass().add(style);
    path.setStrokeWidth(stroke);
    return path;
  }

  private static SVGPath missing(BoneSketch s, Box gone, double scale) {
    SVGPath part = path(s.edge(), "bone-missing", 1.4 / scale);
    part.getStrokeDashArray().setAll(4 / scale, 3 / scale);
    part.setClip(new Rectangle(gone.x() - 3, gone.y(), gone.width() + 6, gone.height()));
    return part;
  }

  private void jaws(Jaws jaws, Box box, Place place) {
    JawsPlan plan = JawsPlan.of(jaws, box);
    double em = probe.getFont().getSize();
    Point2D from = place.of(plan.lineFrom());
    Point2D to = place.of(plan.lineTo());
    Point2D square = new Point2D(-plan.across().getY(), plan.across().getX());
    Point2D out = plan.inPlace() ? square : plan.aside().normalize();
    double past = plan.inPlace() ? 1.1 * em : 0.55 * em;
    jaw(place.of(plan.touchFrom()), from.add(out.multiply(past)), out, plan.across(), -1);
    jaw(place.of(plan.touchTo()), to.add(out.multiply(past)), out, plan.across(), 1);
    Line dimension = new Line(from.getX(), from.getY(), to.getX(), to.getY());
    dimension.getStyleClass().add("jaws");
    getChildren().add(dimension);
    getChildren().add(label(jaws.label(), plan, from, to, out, em));
  }

  /** One jaw: a blade that touches the bone with its straight inner edge. */
  private void jaw(Point2D touch, Point2D back, Point2D out, Point2D across, int side) {
    double em = probe.getFont().getSize();
    Point2D tip = touch.subtract(out.multiply(0.7 * em));
    Point2D thick = across.multiply(side * 0.5 * em);
    Polygon blade = new Polygon();
    for (Point2D p : List.of(tip, back, back.add(thick), touch.add(thick.multiply(0.7)))) {
      blade.getPoints().addAll(p.getX(), p.getY());
    }
    blade.getStyleClass().add("jaw");
    getChildren().add(blade);
  }

  private Text label(
      String words, JawsPlan plan, Point2D from, Point2D to, Point2D out, double em) {
    Text text = new Text(words);
    text.getStyleClass().add("jaws-label");
    text.setTextOrigin(VPos.CENTER);
    text.setTextAlignment(TextAlignment.CENTER);
    text.applyCss();
    getChildren().add(text);
    text.applyCss();
    double width = text.getLayoutBounds().getWidth();
    getChildren().remove(text);
    boolean level = Math.abs(plan.across().getX()) > Math.abs(plan.across().getY());
    Point2D at;
    if (plan.inPlace()) {
      Point2D end = from.getX() > to.getX() ? from : to;
      at = end.add(1.1 * em + width / 2, 0);
    } else if (level) {
      at = from.midpoint(to).add(out.multiply(1.15 * em));
    } else {
      at = from.midpoint(to).add(out.multiply(0.7 * em + width / 2));
    }
    double x = Math.max(2, Math.min(getWidth() - width - 2, at.getX() - width / 2));
    text.setX(x);
    text.setY(at.getY());
    return text;
  }

  /** What was drawn last, and how large; the same again needs no new shapes. */
  private record Drawn(Optional<BoneSketch> sketch, double width, double height, double em) {}

  /** From the drawing's coordinates to those of this control. */
  private record Place(double left, double top, double scale) {
    Point2D of(Point2D p) {
      return new Point2D(left + scale * p.getX(), top + scale * p.getY());
    }
  }
}

package org.comparanda.gui.pictures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.Cell;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.Background;
import javafx.scene.layout.BackgroundFill;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.paint.LinearGradient;
import javafx.scene.paint.Paint;
import javafx.scene.shape.Shape;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import javafx.stage.Stage;
import javafx.stage.Window;

/**
 * What a person can see and reach of a scene, and what is wrong with it: controls without a name,
 * text that is cut, text and marks that hardly stand out, colours that are not ours. Each fault is
 * one line of text.
 */
record Seen(Scene scene) {
  private static final double TEXT = 4.5; // W3C, WCAG 2.1, criterion 1.4.3
  private static final double MARK = 3; // W3C, WCAG 2.1, criterion 1.4.11

  /** The window's content, and that of each list or dialog that is open over it. */
  static List<Seen> all() {
    return Window.getWindows().stream()
        .filter(w -> w.isShowing() && !(w instanceof Tooltip))
        .map(w -> new Seen(w.getScene()))
        .toList();
  }

  /** Closes what is open over a window. */
  static void closeAllBut(Stage stage) {
    List.copyOf(Window.getWindows()).stream().filter(w -> w != stage).forEach(Window::hide);
  }

  /** All nodes that are visible, from the root down. */
  List<Node> nodes() {
    List<Node> all = new ArrayList<>();
    collect(scene.getRoot(), all);
    return all;
  }

  private static void collect(Node node, List<Node> all) {
    if (node.isVisible() && node.getOpacity() > 0) {
      all.add(node);
      if (node instanceof Parent parent) {
        parent.getChildrenUnmodifiable().forEach(child -> collect(child, all));
      }
    }
  }

  /** What Tab can reach. */
  List<Node> reachable() {
    return nodes().stream().filter(n -> n.isFocusTraversable() && !n.isDisabled()).toList();
  }

  List<String> unnamed() {
    List<Label> labels = all(Label.class).toList();
    return reachable().stream()
        .filter(Control.class::isInstance)
        .filter(n -> name(n, labels).isBlank())
        .map(Seen::said)
        .toList();
  }

  private static String name(Node node, List<Label> labels) {
    if (node.getAccessibleText() != null) {
      return node.getAccessibleText();
    }
    if (node.getParent() instanceof Cell<?> cell && cell.getText() != null) {
      return cell.getText();
    }
    String own =
        node instanceof Labeled labeled && labeled.getText() != null ? labeled.getText() : "";
    return labels.stream()
        .filter(l -> node.equals(l.getLabelFor()))
        .map(Label::getText)
        .findFirst()
        .orElse(own);
  }

  /** Cut text, cells of tables included: dots at its end, no room for its lines, off the window. */
  List<String> cut() {
    Stream<String> shortened =
        all(Labeled.class)
            .filter(l -> l.getText() != null && !l.getText().isBlank())
            .filter(l -> shortened(l))
            .map(l -> "cut short: " + said(l));
    Stream<String> low =
        all(TextFlow.class)
            .filter(t -> t.getHeight() < t.prefHeight(t.getWidth()) - 1)
            .map(t -> "too low: " + said(t));
    Stream<String> outside =
        all(Text.class)
            .filter(t -> !t.getText().isBlank() && leaves(t))
            .map(t -> "outside the window: " + t.getText());
    Stream<String> wide =
        all(Text.class)
            .filter(t -> t.getParent() instanceof Cell<?> cell && reachesOver(t, cell))
            .map(t -> "wider than its cell: " + t.getText());
    return Stream.of(shortened, low, outside, wide).flatMap(s -> s).toList();
  }

  private static boolean shortened(Labeled labeled) {
    return labeled.lookup(".text") instanceof Text text
        && labeled.equals(text.getParent())
        && !text.getText().equals(labeled.getText());
  }

  private static boolean reachesOver(Text text, Cell<?> cell) {
    return !text.getText().isBlank()
        && (text.getLayoutBounds().getWidth() > cell.getWidth() - 2
            || text.getLayoutBounds().getHeight() > cell.getHeight() + 1);
  }

  private boolean leaves(Text text) {
    if (scrolls(text)) {
      return false;
    }
    Bounds at = text.localToScene(text.getLayoutBounds());
    return at.getMinX() < -1
        || at.getMinY() < -1
        || at.getMaxX() > scene.getWidth() + 1
        || at.getMaxY() > scene.getHeight() + 1;
  }

  private static boolean scrolls(Node node) {
    for (Node up = node; up != null; up = up.getParent()) {
      if (up instanceof ScrollPane || up.getStyleClass().contains("virtual-flow")) {
        return true;
      }
    }
    return false;
  }

  List<String> faint() {
    Stream<String> texts =
        all(Text.class)
            .filter(t -> !t.getText().isBlank() && !t.isDisabled())
            .flatMap(t -> weak(t, t.getFill(), TEXT, "\"" + t.getText() + "\"").stream());
    Stream<String> edges =
        all(Shape.class)
            .filter(s -> !(s instanceof Text) && s.getStroke() != null && s.getOpacity() == 1)
            .flatMap(s -> weak(s, s.getStroke(), MARK, "line " + s.getStyleClass()).stream());
    Stream<String> signs =
        all(Region.class)
            .filter(r -> r.getStyleClass().contains("arrow") || r.getStyleClass().contains("mark"))
            .filter(r -> !r.isDisabled() && !unticked(r))
            .flatMap(
                r ->
                    top(r.getBackground()).stream()
                        .flatMap(c -> weak(r, c, MARK, "sign of " + said(r.getParent())).stream()));
    return Stream.of(texts, edges, signs).flatMap(s -> s).distinct().toList();
  }

  /** The sign of a box that is not ticked is there, and is not to be seen. */
  private static boolean unticked(Region sign) {
    return sign.getParent() != null
        && sign.getParent().getParent() instanceof CheckBox box
        && !box.isSelected();
  }

  private static Optional<String> weak(Node node, Paint paint, double bar, String what) {
    Color ground = ground(node.getParent());
    Color ink = over(solid(paint), ground);
    double ratio = contrast(ink, ground);
    return ratio >= bar
        ? Optional.empty()
        : Optional.of("%s: %s on %s, %.2f".formatted(what, ink, ground, ratio));
  }

  /** Marks painted on a canvas that hardly stand out, in the pixels as they are seen. */
  List<String> painted() {
    return all(Canvas.class)
        .filter(c -> c.getWidth() > 1 && c.getHeight() > 1)
        .flatMap(
            c ->
                Painted.on(c, ground(c.getParent())).withoutEdge().stream()
                    .map(fault -> fault + " in " + said(c.getParent())))
        .toList();
  }

  /** Blues of the theme beneath ours; the taxa's own colours are painted, not styled. */
  List<String> foreignBlue() {
    Stream<String> grounds =
        all(Region.class)
            .flatMap(
                r ->
                    top(r.getBackground()).stream()
                        .filter(Seen::blue)
                        .map(c -> "ground " + c + " of " + said(r)));
    Stream<String> edges =
        all(Region.class)
            .filter(r -> r.getBorder() != null)
            .flatMap(
                r ->
                    r.getBorder().getStrokes().stream()
                        .map(s -> solid(s.getTopStroke()))
                        .filter(Seen::blue)
                        .map(c -> "edge " + c + " of " + said(r)));
    return Stream.concat(grounds, edges).toList();
  }

  private static boolean blue(Color c) {
    return c.getOpacity() > 0.05
        && c.getHue() > 195
        && c.getHue() < 250
        && c.getSaturation() > 0.3
        && c.getBrightness() > 0.3;
  }

  private <T> Stream<T> all(Class<T> kind) {
    return nodes().stream().filter(kind::isInstance).map(kind::cast);
  }

  /** What lies under a node: the grounds of those around it, one over the other. */
  private static Color ground(Node node) {
    if (node == null) {
      return Color.WHITE;
    }
    Color under = ground(node.getParent());
    return node instanceof Region region
        ? top(region.getBackground()).map(c -> over(c, under)).orElse(under)
        : under;
  }

  private static Optional<Color> top(Background background) {
    if (background == null) {
      return Optional.empty();
    }
    List<BackgroundFill> fills = background.getFills();
    return fills.stream()
        .map(f -> solid(f.getFill()))
        .reduce((lower, upper) -> upper.getOpacity() > 0 ? upper : lower);
  }

  private static Color solid(Paint paint) {
    return paint instanceof Color color
        ? color
        : paint instanceof LinearGradient gradient
            ? gradient.getStops().get(0).getColor()
            : Color.TRANSPARENT;
  }

  private static Color over(Color upper, Color lower) {
    double a = upper.getOpacity();
    return Color.color(
        upper.getRed() * a + lower.getRed() * (1 - a),
        upper.getGreen() * a + lower.getGreen() * (1 - a),
        upper.getBlue() * a + lower.getBlue() * (1 - a));
  }

  static double contrast(Color one, Color other) {
    double a = luminance(one);
    double b = luminance(other);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  private static double luminance(Color c) {
    return 0.2126 * linear(c.getRed())
        + 0.7152 * linear(c.getGreen())
        + 0.0722 * linear(c.getBlue());
  }

  private static double linear(double c) {
    return c <= 0.03928 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
  }

  static String said(Node node) {
    String text = node instanceof Labeled l ? " \"" + l.getText() + "\"" : "";
    String flow = node instanceof TextFlow f ? " \"" + f.getAccessibleText() + "\"" : "";
    return node.getClass().getSimpleName()
        + "#"
        + node.getId()
        + node.getStyleClass()
        + text
        + flow;
  }
}

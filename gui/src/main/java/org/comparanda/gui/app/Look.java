package org.comparanda.gui.app;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Objects;
import javafx.application.Application;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Scene;
import javafx.scene.text.Font;
import org.comparanda.slips.Paper;

/** How the window looks, theme, size of the text, motion; and how pages do: their paper. */
public final class Look {
  /**
   * Families in order of liking; JavaFX takes one name only, so the first that is there is taken.
   */
  private static final List<String> FAMILIES =
      List.of(
          "Inter",
          "Segoe UI",
          "SF Pro Text",
          "Helvetica Neue",
          "Noto Sans",
          "Ubuntu",
          "Cantarell",
          "Liberation Sans",
          "DejaVu Sans");

  private static final int TEXT_PX = 13;

  private final ObjectProperty<Theme> theme = new SimpleObjectProperty<>(Theme.LIGHT);
  private final IntegerProperty textPercent = new SimpleIntegerProperty(100);
  private final BooleanProperty motion = new SimpleBooleanProperty(true);
  private final ObjectProperty<Paper> paper = new SimpleObjectProperty<>(Paper.A4);

  /** The theme in use. */
  public ObjectProperty<Theme> themeProperty() {
    return theme;
  }

  /** Size of the text, 100 to 200 %. */
  public IntegerProperty textPercentProperty() {
    return textPercent;
  }

  /** Whether pictures move into place; off for people whom motion disturbs. */
  public BooleanProperty motionProperty() {
    return motion;
  }

  /** The paper that slips and lists are made for. */
  public ObjectProperty<Paper> paperProperty() {
    return paper;
  }

  /** Sets the text larger or smaller by a step, between 100 and 200 %. */
  public void enlarge(int percentPoints) {
    textPercent.set(Math.max(100, Math.min(200, textPercent.get() + percentPoints)));
  }

  /** Dresses a scene now and whenever the look changes. */
  public void dress(Scene scene) {
    Runnable now = () -> apply(scene);
    theme.addListener((o, was, is) -> now.run());
    textPercent.addListener((o, was, is) -> now.run());
    now.run();
  }

  private void apply(Scene scene) {
    Application.setUserAgentStylesheet(theme.get().base());
    scene.getStylesheets().setAll(sheet(theme.get().tokens()), sheet("comparanda.css"), type());
  }

  private static String sheet(String file) {
    return Objects.requireNonNull(Look.class.getResource(file), file).toExternalForm();
  }

  private String type() {
    String css =
        ".root { -fx-font-family: \"%s\"; -fx-font-size: %dpx; }"
            .formatted(family(), TEXT_PX * textPercent.get() / 100);
    return "data:text/css;base64,"
        + Base64.getEncoder().encodeToString(css.getBytes(StandardCharsets.UTF_8));
  }

  private static String family() {
    List<String> here = Font.getFamilies();
    return FAMILIES.stream().filter(here::contains).findFirst().orElse("System");
  }
}

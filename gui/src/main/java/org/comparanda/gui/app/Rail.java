package org.comparanda.gui.app;

import java.util.List;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.comparanda.gui.text.Words;

/** The slim rail at the left: the screens' names, and at its foot how the window looks. */
final class Rail extends VBox {
  private final ToggleGroup group = new ToggleGroup();
  private final Label simulated = new Label();
  private final Button words = new Button();

  Rail(List<Screen> screens, Look look, Words words, Consumer<Screen> open) {
    getStyleClass().add("rail");
    Label name = new Label(words.get("program"));
    name.getStyleClass().add("rail-name");
    getChildren().add(name);
    for (int i = 0; i < screens.size(); i++) {
      getChildren().add(item(screens.get(i), i + 1, words, open));
    }
    this.words.setId("words");
    this.words.setText(words.get("words"));
    this.words.setAccessibleHelp(words.get("words.help"));
    this.words.getStyleClass().setAll("rail-small");
    Region spring = new Region();
    VBox.setVgrow(spring, Priority.ALWAYS);
    simulated.setText(words.get("demo.note"));
    simulated.setId("demo-note");
    simulated.getStyleClass().add("demo-note");
    simulated.setWrapText(true);
    simulated.setMinHeight(USE_PREF_SIZE);
    getChildren()
        .addAll(
            spring,
            simulated,
            this.words,
            theme(look, words),
            motion(look, words),
            textSize(look, words));
  }

  /** What the button for the words of the screen does. */
  void setOnWords(Runnable action) {
    words.setOnAction(event -> action.run());
  }

  /** Says that the data are simulated, or says nothing. */
  void demoNote(Simulated data) {
    simulated.setVisible(data == Simulated.SIMULATED);
    simulated.setManaged(data == Simulated.SIMULATED);
  }

  /** Marks the button of a screen as the open one. */
  void mark(Screen screen) {
    group.getToggles().stream()
        .filter(t -> screen.key().equals(t.getUserData()))
        .forEach(group::selectToggle);
  }

  private ToggleButton item(Screen screen, int number, Words words, Consumer<Screen> open) {
    ToggleButton item = new ToggleButton(words.get("screen." + screen.key()));
    item.setId("rail-" + screen.key());
    item.setUserData(screen.key());
    item.setToggleGroup(group);
    item.getStyleClass().setAll("rail-item");
    item.setMaxWidth(Double.MAX_VALUE);
    item.setAccessibleHelp(words.get("rail.shortcut", number));
    item.setOnAction(
        event -> {
          item.setSelected(true);
          open.accept(screen);
        });
    return item;
  }

  private static Button theme(Look look, Words words) {
    Button theme = new Button();
    theme.setId("theme");
    theme.getStyleClass().setAll("rail-small");
    Runnable label =
        () ->
            theme.setText(
                words.get(
                    look.themeProperty().get() == Theme.LIGHT ? "theme.dark" : "theme.light"));
    look.themeProperty().addListener((o, was, is) -> label.run());
    label.run();
    theme.setOnAction(event -> look.themeProperty().set(look.themeProperty().get().other()));
    return theme;
  }

  private static ToggleButton motion(Look look, Words words) {
    ToggleButton motion = new ToggleButton();
    motion.setId("motion");
    motion.getStyleClass().setAll("rail-small");
    motion.selectedProperty().bindBidirectional(look.motionProperty());
    motion
        .textProperty()
        .bind(look.motionProperty().map(on -> words.get(on ? "motion.on" : "motion.off")));
    return motion;
  }

  private static HBox textSize(Look look, Words words) {
    Button smaller = small("text-smaller", "A\u2212", words.get("text.smaller"));
    smaller.setOnAction(event -> look.enlarge(-25));
    Button larger = small("text-larger", "A+", words.get("text.larger"));
    larger.setOnAction(event -> look.enlarge(25));
    Label size = new Label();
    size.getStyleClass().add("note");
    size.textProperty()
        .bind(
            javafx.beans.binding.Bindings.createStringBinding(
                () -> words.get("text.size", look.textPercentProperty().get()),
                look.textPercentProperty()));
    HBox row = new HBox(smaller, size, larger);
    row.getStyleClass().add("rail-size");
    return row;
  }

  private static Button small(String id, String text, String spoken) {
    Button button = new Button(text);
    button.setId(id);
    button.setAccessibleText(spoken);
    button.getStyleClass().setAll("rail-small");
    return button;
  }
}

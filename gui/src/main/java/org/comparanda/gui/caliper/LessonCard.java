package org.comparanda.gui.caliper;

import java.util.Arrays;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import org.comparanda.capture.CaliperCard;
import org.comparanda.capture.CardLesson;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.LengthUnit;

/** Five places for test readings, what they taught, and what only a person knows. */
public final class LessonCard extends VBox implements Listening.Ear {
  private final LessonViewModel lesson;
  private final Words words;
  private final Consumer<CaliperCard> saved;
  private final HBox places = new HBox();
  private final Button hears = new Button();

  /**
   * @param nanos a clock that only goes forward
   * @param saved takes the card when it is stored
   */
  public LessonCard(
      LessonViewModel lesson, Words words, LongSupplier nanos, Consumer<CaliperCard> saved) {
    this.lesson = lesson;
    this.words = words;
    this.saved = saved;
    setId("lesson");
    getStyleClass().add("lesson");
    hears.setId("lesson-hears");
    hears.setText(words.get("lesson.hears"));
    hears.getStyleClass().setAll("lesson-hears");
    hears.setMaxWidth(Double.MAX_VALUE);
    new Listening(hears, nanos, this);
    places.getStyleClass().add("lesson-places");
    Label message = wrapped("strong");
    message.setId("lesson-message");
    message.textProperty().bind(lesson.messageProperty());
    Button save = new Button(words.get("lesson.save"));
    save.setId("lesson-save");
    save.getStyleClass().setAll("record");
    save.disableProperty().bind(lesson.learnedProperty().map(card -> card.isEmpty()));
    save.setOnAction(event -> lesson.save().ifPresent(saved));
    Button again = new Button(words.get("lesson.again"));
    again.setId("lesson-again");
    again.getStyleClass().setAll("tray-button", "lesson-again");
    again.setOnAction(
        event -> {
          lesson.again();
          hears.requestFocus();
        });
    HBox buttons = new HBox(save, again);
    buttons.getStyleClass().add("stop-buttons");
    getChildren().addAll(hears, places, message, fields(), buttons);
    lesson.bursts().addListener((ListChangeListener<String>) change -> showPlaces());
    showPlaces();
  }

  /** Where the caliper is heard. */
  public Button hears() {
    return hears;
  }

  private FlowPane fields() {
    ComboBox<LengthUnit> unit = new ComboBox<>();
    unit.setId("lesson-unit");
    unit.getItems().setAll(Arrays.asList(LengthUnit.values()));
    unit.setConverter(symbols());
    unit.valueProperty().bindBidirectional(lesson.unitProperty());
    CheckBox checked = new CheckBox(words.get("lesson.checked"));
    checked.setId("lesson-checked");
    checked.selectedProperty().bindBidirectional(lesson.checkedTodayProperty());
    FlowPane all =
        new FlowPane(
            under("lesson.name.label", text("lesson-name", lesson.nameProperty())),
            under("lesson.serial", text("lesson-serial", lesson.serialProperty())),
            under("lesson.unit", unit),
            under("lesson.reach.label", text("lesson-reach", lesson.reachProperty())),
            under("lesson.gauge", checked));
    all.getStyleClass().add("lesson-fields");
    return all;
  }

  private static TextField text(String id, javafx.beans.property.StringProperty property) {
    TextField field = new TextField();
    field.setId(id);
    field.setPrefColumnCount(11);
    field.textProperty().bindBidirectional(property);
    return field;
  }

  private VBox under(String key, Node field) {
    Label label = new Label(words.get(key));
    label.getStyleClass().add("note");
    label.setLabelFor(field);
    field.setAccessibleText(words.get(key));
    VBox box = new VBox(label, field);
    box.getStyleClass().add("choice");
    return box;
  }

  private static StringConverter<LengthUnit> symbols() {
    return new StringConverter<>() {
      @Override
      public String toString(LengthUnit unit) {
        return unit == null ? "" : unit.symbol();
      }

      @Override
      public LengthUnit fromString(String typed) {
        throw new UnsupportedOperationException("This list is chosen from, not typed into.");
      }
    };
  }

  private void showPlaces() {
    places.getChildren().clear();
    for (int i = 0; i < CardLesson.READINGS; i++) {
      boolean filled = i < lesson.bursts().size();
      Label place = new Label(filled ? lesson.bursts().get(i).strip() : Integer.toString(i + 1));
      place.getStyleClass().addAll("lesson-place", filled ? "lesson-filled" : "lesson-waits");
      places.getChildren().add(place);
    }
  }

  @Override
  public void hand(char character) {
    if (character == '\n' && lesson.learnedProperty().get().isPresent()) {
      lesson.save().ifPresent(saved);
    } else {
      lesson.hand();
    }
  }

  @Override
  public void burst(String text) {
    lesson.burst(text);
  }

  private static Label wrapped(String style) {
    Label label = new Label();
    label.setWrapText(true);
    label.setMinHeight(Region.USE_PREF_SIZE);
    label.getStyleClass().add(style);
    return label;
  }
}

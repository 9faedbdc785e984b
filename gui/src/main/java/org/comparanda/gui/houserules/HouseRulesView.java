package org.comparanda.gui.houserules;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import javafx.beans.property.SimpleStringProperty;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.comparanda.gui.control.Pick;
import org.comparanda.gui.control.PlainScroll;
import org.comparanda.gui.control.ReadableColumns;
import org.comparanda.measurement.Person;

/** House Rules: all that hold at the left, the open one at the right. */
public final class HouseRulesView extends BorderPane {
  private final HouseRulesViewModel model;
  private final RuleWords words;
  private final Label rights = new Label();

  /**
   * Builds the view; it looks at the collection each time it comes into the window.
   *
   * @param note what is said beside the title (simulated demo data), may be empty
   */
  public HouseRulesView(HouseRulesViewModel model, String note) {
    this.model = model;
    this.words = model.said();
    setId("houserules-screen");
    getStyleClass().addAll("screen", "houserules");
    getStylesheets()
        .add(
            Objects.requireNonNull(HouseRulesView.class.getResource("houserules.css"))
                .toExternalForm());
    setTop(header(note));
    HBox halves = new HBox(list(), new RulePane(model));
    halves.getStyleClass().add("halves");
    PlainScroll scroll = new PlainScroll(halves);
    scroll.setFitToHeight(true);
    scroll.setFocusTraversable(false);
    setCenter(scroll);
    parentProperty()
        .addListener(
            (o, was, is) -> {
              if (is != null) {
                model.refresh();
              }
            });
  }

  private HBox header(String note) {
    Label title = new Label(words.get("title"));
    title.getStyleClass().add("title");
    Label says = new Label(note);
    says.getStyleClass().add("note");
    Region spring = new Region();
    HBox.setHgrow(spring, Priority.ALWAYS);
    Pick<Person> person = new Pick<>("me", words.get("me"), List.of(), p -> words.who(p.id()));
    person.box().setPromptText(words.get("me.prompt"));
    person.follow(model.people(), model.personProperty(), model::sit);
    HBox header = new HBox(title, says, spring, person);
    header.getStyleClass().add("header");
    return header;
  }

  private VBox list() {
    TableView<RuleLine> table = new TableView<>(model.lines());
    table.setId("rules");
    table.setAccessibleText(words.get("title"));
    column(table, "name", 195, RuleLine::name);
    column(table, "value", 100, RuleLine::value);
    column(table, "untilset", 75, RuleLine::untilSet);
    column(table, "unit", 125, RuleLine::unit);
    column(table, "who", 165, HouseRulesView::who);
    ReadableColumns.of(table);
    VBox.setVgrow(table, Priority.ALWAYS);
    table
        .getSelectionModel()
        .selectedItemProperty()
        .addListener((o, was, is) -> Optional.ofNullable(is).ifPresent(model::open));
    model
        .openProperty()
        .addListener((o, was, is) -> is.ifPresent(line -> table.getSelectionModel().select(line)));
    rights.textProperty().bind(model.rightsProperty());
    rights.setId("rights");
    rights.setWrapText(true);
    rights.setMinHeight(USE_PREF_SIZE);
    rights.getStyleClass().add("note");
    VBox list = new VBox(table, rights);
    list.getStyleClass().addAll("card", "list");
    HBox.setHgrow(list, Priority.ALWAYS);
    return list;
  }

  private static String who(RuleLine line) {
    return line.when().isEmpty() ? line.who() : line.who() + ", " + line.when();
  }

  private void column(
      TableView<RuleLine> table, String key, double width, Function<RuleLine, String> text) {
    TableColumn<RuleLine, String> column = new TableColumn<>(words.get("column." + key));
    column.setCellValueFactory(cell -> new SimpleStringProperty(text.apply(cell.getValue())));
    column.setPrefWidth(width);
    column.setSortable(false);
    table.getColumns().add(column);
  }
}

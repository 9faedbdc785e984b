package org.comparanda.gui.shelf;

import java.util.function.Function;
import javafx.beans.property.SimpleStringProperty;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.comparanda.exchange.table.TableProblem;
import org.comparanda.gui.control.ColumnWidth;
import org.comparanda.gui.control.ReadableColumns;
import org.comparanda.gui.control.WrappedCell;
import org.comparanda.gui.shelf.ImportState.Stage;
import org.comparanda.gui.text.Words;

/** An import: what is wrong with the table, all of it, or the button that adds it. */
final class ImportPane extends VBox {
  private final Words words;
  private final Label sentence = new Label();
  private final TableView<TableProblem> problems = new TableView<>();
  private final Button add = new Button();
  private final Button fromStart = new Button();
  private final Button onceMore = new Button();
  private final Label begun = new Label();
  private final Button leave = new Button();
  private final Button stop = new Button();
  private final ImportChoices choices;
  private final MappingPane mapping;

  ImportPane(ShelfViewModel model, Words words) {
    this.words = words;
    setId("import");
    getStyleClass().addAll("card", "import");
    sentence.setId("import-sentence");
    sentence.getStyleClass().add("answer");
    sentence.setWrapText(true);
    sentence.setMinHeight(USE_PREF_SIZE);
    problems.setId("problems");
    problems.setAccessibleText(words.get("problem.message"));
    column("row", 60, p -> p.row().map(String::valueOf).orElse(""));
    column("column", 130, p -> p.column().orElse(""));
    column("value", 150, p -> p.value().orElse(""));
    column("message", 330, p -> words.said(p.message()));
    column("remedy", 400, p -> words.said(p.remedy()));
    ReadableColumns.of(problems);
    add.setId("import-add");
    add.getStyleClass().setAll("button", "record");
    add.setOnAction(event -> model.addSound());
    begun.setId("import-begun");
    begun.setWrapText(true);
    begun.setMinHeight(USE_PREF_SIZE);
    begun.managedProperty().bind(begun.visibleProperty());
    fromStart.setId("import-from-start");
    fromStart.setText(words.get("import.from_start"));
    fromStart.setOnAction(event -> model.addFromStart());
    fromStart.visibleProperty().bind(begun.visibleProperty());
    fromStart.managedProperty().bind(begun.visibleProperty());
    onceMore.setId("import-once-more");
    onceMore.setText(words.get("import.once_more"));
    onceMore.setOnAction(event -> model.importOnceMore());
    onceMore.managedProperty().bind(onceMore.visibleProperty());
    leave.setId("import-leave");
    leave.setOnAction(event -> model.leaveImport());
    stop.setId("import-stop");
    stop.setText(words.get("import.stop"));
    stop.setOnAction(event -> model.stopImport());
    choices = new ImportChoices(model, words);
    mapping = new MappingPane(model, words);
    VBox.setVgrow(mapping, Priority.ALWAYS);
    HBox buttons = new HBox(add, fromStart, onceMore, stop, leave);
    buttons.getStyleClass().add("buttons");
    VBox.setVgrow(problems, Priority.ALWAYS);
    getChildren().addAll(sentence, begun, mapping, choices, problems, buttons);
    model.importProperty().addListener((o, was, is) -> show(is));
    show(model.importProperty().get());
  }

  private void show(ImportState state) {
    boolean none = state.stage() == Stage.NONE;
    setVisible(!none);
    setManaged(!none);
    sentence.setText(state.sentence());
    problems.getItems().setAll(state.problems());
    problems.setVisible(state.stage() == Stage.REFUSED && !state.problems().isEmpty());
    problems.setManaged(state.stage() != Stage.MAPPING);
    mapping.show(state.mapping());
    begun.setText(state.begun().orElse(""));
    begun.setVisible(state.begun().isPresent());
    add.setText(words.get(state.begun().isPresent() ? "import.go_on" : "import.add"));
    add.setVisible(state.stage() == Stage.SOUND);
    add.setManaged(add.isVisible());
    onceMore.setVisible(state.stage() == Stage.KNOWN);
    leave.setText(words.get(state.stage() == Stage.SOUND ? "import.leave" : "import.close"));
    leave.setDisable(state.running());
    stop.setVisible(state.running());
    stop.setManaged(state.running());
    choices.show(state);
  }

  private void column(String key, double width, Function<TableProblem, String> text) {
    TableColumn<TableProblem, String> column = new TableColumn<>(words.get("problem." + key));
    column.setCellValueFactory(cell -> new SimpleStringProperty(text.apply(cell.getValue())));
    column.setCellFactory(c -> new WrappedCell<>());
    column.prefWidthProperty().bind(ColumnWidth.of(leave.fontProperty(), width));
    column.setSortable(false);
    problems.getColumns().add(column);
  }
}

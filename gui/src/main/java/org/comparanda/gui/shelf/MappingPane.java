package org.comparanda.gui.shelf;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.property.SimpleStringProperty;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.Spinner;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.comparanda.exchange.table.ColumnGuess;
import org.comparanda.exchange.table.ReservedColumn;
import org.comparanda.exchange.table.TableOptions.Unknown;
import org.comparanda.exchange.table.TablePreview;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.LengthUnit;

/** The first rows of a table; over each column what it seems to be, for the person to say. */
final class MappingPane extends VBox {
  private static final int MOST_ROWS = 999;
  private static final double COLUMN_EM = 12.2;

  private final Words words;
  private boolean asking;
  private final TableView<List<String>> rows = new TableView<>();
  private final CheckBox register = new CheckBox();
  private final ComboBox<String> saved = new ComboBox<>();
  private final TextField name = new TextField();
  private final Spinner<Integer> headerRow = new Spinner<>(1, MOST_ROWS, 1);
  private final List<Head> heads = new ArrayList<>();

  MappingPane(ShelfViewModel model, Words words) {
    this.words = words;
    setId("mapping");
    getStyleClass().add("mapping");
    rows.setId("mapping-rows");
    rows.setAccessibleText(words.get("mapping.rows"));
    rows.setPlaceholder(new Label());
    VBox.setVgrow(rows, Priority.ALWAYS);
    register.setId("mapping-register");
    register.setText(words.get("import.register"));
    Button go = new Button(words.get("mapping.try"));
    go.setId("mapping-try");
    go.setDefaultButton(true);
    go.setOnAction(event -> model.tryMapped(choices(), unknown()));
    saved.setId("mapping-saved");
    saved.setPromptText(words.get("mapping.saved"));
    saved.setAccessibleText(words.get("mapping.saved"));
    saved.setOnAction(event -> Optional.ofNullable(saved.getValue()).ifPresent(model::trySaved));
    name.setId("mapping-name");
    name.setPromptText(words.get("mapping.name"));
    name.setAccessibleText(words.get("mapping.name"));
    Button keep = new Button(words.get("mapping.save"));
    keep.setId("mapping-save");
    keep.disableProperty().bind(name.textProperty().isEmpty());
    keep.setOnAction(
        event -> {
          model.saveMapping(name.getText().strip(), choices(), unknown());
          if (!saved.getItems().contains(name.getText().strip())) {
            saved.getItems().add(name.getText().strip());
          }
          name.clear();
        });
    Button delete = new Button(words.get("mapping.delete"));
    delete.setId("mapping-delete");
    delete.getStyleClass().setAll("button", "quiet");
    delete
        .disableProperty()
        .bind(
            Bindings.createBooleanBinding(
                () -> !saved.getItems().contains(name.getText().strip()),
                name.textProperty(),
                saved.getItems()));
    delete.setOnAction(
        event -> {
          model.forgetMapping(name.getText().strip());
          saved.getItems().remove(name.getText().strip());
          name.clear();
        });
    saved.visibleProperty().bind(Bindings.isNotEmpty(saved.getItems()));
    saved.managedProperty().bind(saved.visibleProperty());
    delete.visibleProperty().bind(saved.visibleProperty());
    delete.managedProperty().bind(saved.visibleProperty());
    headerRow.setId("mapping-header-row");
    headerRow.setPrefWidth(90);
    headerRow
        .valueProperty()
        .addListener(
            (o, was, is) -> {
              if (!asking) {
                model.tryHeaderRow(is);
              }
            });
    Label headerLabel = new Label(words.get("mapping.header_row"));
    headerLabel.setLabelFor(headerRow);
    FlowPane line =
        new FlowPane(10, 8, go, headerLabel, headerRow, register, saved, name, keep, delete);
    getChildren().addAll(rows, line);
  }

  /** What stands over one column. */
  private record Head(ColumnGuess guess, ComboBox<String> role, ComboBox<String> unit) {
    ColumnChoice choice(String aside, String isNew) {
      String said = isNew.equals(role.getValue()) ? guess.name() : role.getValue();
      return new ColumnChoice(
          guess.header(),
          Optional.ofNullable(said).filter(r -> !r.equals(aside)),
          LengthUnit.ofSymbol(String.valueOf(unit.getValue())).filter(u -> unit.isVisible()));
    }
  }

  private List<ColumnChoice> choices() {
    return heads.stream()
        .map(h -> h.choice(words.get("mapping.aside"), words.get("mapping.new")))
        .toList();
  }

  private Unknown unknown() {
    return register.isSelected() ? Unknown.REGISTER : Unknown.REFUSE;
  }

  void show(Optional<MappingQuestion> question) {
    setVisible(question.isPresent());
    setManaged(question.isPresent());
    if (question.isEmpty()) {
      return;
    }
    TablePreview preview = question.get().preview();
    asking = true;
    headerRow.getValueFactory().setValue((int) preview.headerRow());
    asking = false;
    saved.getItems().setAll(question.get().saved());
    register.setSelected(false);
    heads.clear();
    rows.getColumns().clear();
    for (int i = 0; i < preview.columns().size(); i++) {
      rows.getColumns().add(column(i, preview));
    }
    rows.getItems().setAll(preview.rows());
  }

  private TableColumn<List<String>, String> column(int place, TablePreview preview) {
    ColumnGuess guess = preview.columns().get(place);
    ComboBox<String> role = new ComboBox<>();
    role.setId("role-" + place);
    role.setAccessibleText(words.get("mapping.role.of", guess.header()));
    role.getItems().add(words.get("mapping.aside"));
    if (guess.role().isEmpty() && preview.holdsNumbers(place)) {
      role.getItems().add(words.get("mapping.new"));
    }
    role.getItems().addAll(preview.roles());
    role.setValue(guess.role().orElse(words.get("mapping.aside")));
    ComboBox<String> unit = new ComboBox<>();
    unit.setId("unit-" + place);
    unit.setAccessibleText(words.get("mapping.unit.of", guess.header()));
    for (LengthUnit each : LengthUnit.values()) {
      unit.getItems().add(each.symbol());
    }
    unit.setPromptText(words.get("mapping.unit"));
    guess.unit().ifPresent(u -> unit.setValue(u.symbol()));
    unit.setVisible(isLength(role.getValue()));
    role.setOnAction(
        event -> {
          unit.setVisible(isLength(role.getValue()));
          if (words.get("mapping.new").equals(role.getValue())) {
            register.setSelected(true);
          }
        });
    Label header = new Label(guess.header());
    header.getStyleClass().add("strong");
    Label why = new Label(words.get("mapping.why." + guess.why().name().toLowerCase(Locale.ROOT)));
    why.getStyleClass().add("note");
    VBox head = new VBox(header, role, unit, why);
    head.getStyleClass().add("head");
    heads.add(new Head(guess, role, unit));
    TableColumn<List<String>, String> column = new TableColumn<>();
    column.setGraphic(head);
    column.setSortable(false);
    column.prefWidthProperty().bind(header.fontProperty().map(f -> COLUMN_EM * f.getSize()));
    column.setCellValueFactory(
        cell ->
            new SimpleStringProperty(
                place < cell.getValue().size() ? cell.getValue().get(place) : ""));
    return column;
  }

  /** Whether a unit of length is to be said: of measurements and of the body's length. */
  private boolean isLength(String role) {
    return role != null
        && !role.equals(words.get("mapping.aside"))
        && (role.equals(ReservedColumn.BODY_LENGTH.header())
            || Arrays.stream(ReservedColumn.values()).noneMatch(c -> c.header().equals(role)));
  }
}

package org.comparanda.gui.tray;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.beans.property.SimpleStringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.control.Label;
import javafx.scene.control.SelectionMode;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.comparanda.gui.control.ColumnWidth;
import org.comparanda.gui.control.ReadableColumns;
import org.comparanda.measurement.BoneId;
import org.comparanda.tray.Keeping;
import org.comparanda.tray.TrayBone;

/** The bones of the open tray; several chosen ones move together, one is called. */
final class BonesPane extends HBox {
  private final TrayViewModel model;
  private final TrayWords words;
  private final TableView<BoneLine> table = new TableView<>();
  private final Label textSize = new Label(); // empty; its font says how large the text is
  private final ObservableList<BoneLine> lines = FXCollections.observableArrayList();

  BonesPane(TrayViewModel model) {
    this.model = model;
    this.words = model.said();
    getStyleClass().add("bones-page");
    columns();
    VBox.setVgrow(table, Priority.ALWAYS);
    VBox list = new VBox(table, textSize, new MovePane(model, this::chosen));
    textSize.setManaged(false);
    list.getStyleClass().addAll("card", "bone-list");
    HBox.setHgrow(list, Priority.ALWAYS);
    getChildren().addAll(list, new BonePane(model));
    model.openProperty().addListener((o, was, is) -> take(is));
    take(model.openProperty().get());
  }

  private void columns() {
    table.setId("bones");
    table.setItems(lines);
    table.setAccessibleText(words.get("page.bones"));
    table.setPlaceholder(new Label(words.get("bones.none")));
    table.getSelectionModel().setSelectionMode(SelectionMode.MULTIPLE);
    column("bone", 62, line -> line.bone().id().value());
    column("what", 160, BoneLine::what);
    column("call", 124, this::called);
    column("goesto", 80, line -> line.bone().keeping().goesTo());
    ReadableColumns.of(table);
    table
        .getSelectionModel()
        .selectedItemProperty()
        .addListener(
            (o, was, is) -> model.choose(Optional.ofNullable(is).map(line -> line.bone().id())));
  }

  private String called(BoneLine line) {
    if (line.bone().standing() == TrayBone.Standing.STOPPED) {
      return words.get("bone.stopped");
    }
    String restricted =
        line.bone().keeping().access() == Keeping.Access.RESTRICTED
            ? " (" + words.get("access.restricted") + ")"
            : "";
    return (line.call().isEmpty() ? words.get("bone.notcalled") : line.call()) + restricted;
  }

  private void column(String key, double width, Function<BoneLine, String> text) {
    TableColumn<BoneLine, String> column = new TableColumn<>(words.get("column." + key));
    column.setCellValueFactory(cell -> new SimpleStringProperty(text.apply(cell.getValue())));
    column.prefWidthProperty().bind(ColumnWidth.of(textSize.fontProperty(), width));
    table.getColumns().add(column);
  }

  private List<BoneId> chosen() {
    return table.getSelectionModel().getSelectedItems().stream()
        .map(line -> line.bone().id())
        .toList();
  }

  private void take(Optional<OpenTray> open) {
    Optional<BoneId> before = model.bone().shownProperty().get().map(line -> line.bone().id());
    List<BoneLine> now = open.map(OpenTray::bones).orElse(List.of());
    if (now.equals(lines)) {
      return;
    }
    lines.setAll(now);
    now.stream()
        .filter(line -> before.equals(Optional.of(line.bone().id())))
        .findFirst()
        .ifPresent(line -> table.getSelectionModel().select(line));
  }
}

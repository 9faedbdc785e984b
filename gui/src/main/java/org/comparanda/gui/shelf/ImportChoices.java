package org.comparanda.gui.shelf;

import java.util.LinkedHashMap;
import java.util.Map;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import org.comparanda.exchange.table.TableOptions.Unknown;
import org.comparanda.exchange.table.TableProblem.Answer.SayUnit;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.LengthUnit;

/** What a person can say about a refused table without touching it: units, and new names. */
final class ImportChoices extends FlowPane {
  private final ShelfViewModel model;
  private final Words words;
  private final CheckBox register = new CheckBox();
  private final Button again = new Button();
  private final Map<String, ChoiceBox<LengthUnit>> units = new LinkedHashMap<>();

  ImportChoices(ShelfViewModel model, Words words) {
    super(12, 8);
    this.model = model;
    this.words = words;
    setId("import-choices");
    register.setId("import-register");
    register.setText(words.get("import.register"));
    again.setId("import-again");
    again.setText(words.get("import.again"));
    again.setOnAction(
        event -> {
          Map<String, LengthUnit> said = new LinkedHashMap<>();
          units.forEach((code, choice) -> said.put(code, choice.getValue()));
          model.tryAgain(said, register.isSelected() ? Unknown.REGISTER : Unknown.REFUSE);
        });
  }

  void show(ImportState state) {
    getChildren().clear();
    units.clear();
    for (SayUnit question : state.unitQuestions()) {
      String code = question.code().value();
      ChoiceBox<LengthUnit> choice = new ChoiceBox<>();
      choice.setId("import-unit-" + code);
      choice.getItems().setAll(LengthUnit.values());
      choice.setValue(question.looksLike());
      units.put(code, choice);
      Label label = new Label(words.get("import.unit", code));
      label.setLabelFor(choice);
      getChildren().addAll(label, choice);
    }
    if (!state.sheets().isEmpty()) {
      ComboBox<String> sheets = new ComboBox<>();
      sheets.setId("import-sheet");
      sheets.getItems().setAll(state.sheets());
      sheets.setPromptText(words.get("import.sheet"));
      sheets.setOnAction(event -> model.trySheet(sheets.getValue()));
      getChildren().add(sheets);
    }
    register.setSelected(false);
    if (state.namesAreUnknown()) {
      getChildren().add(register);
    }
    boolean any = !getChildren().isEmpty();
    if (any && state.sheets().isEmpty()) {
      getChildren().add(again);
    }
    setVisible(any);
    setManaged(any);
  }
}

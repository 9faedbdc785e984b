package org.comparanda.gui.secondlook;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import org.comparanda.gui.calling.CallFields;
import org.comparanda.gui.calling.ElementFields;
import org.comparanda.gui.control.WrappedLabel;
import org.comparanda.gui.secondlook.Opened.Said;
import org.comparanda.secondlook.Likeness;

/** All calls on a bone side by side, and how they are settled. */
final class BothPane extends VBox {
  private final SecondLookViewModel model;
  private final LookWords words;

  BothPane(SecondLookViewModel model, Opened.Both both) {
    this.model = model;
    this.words = model.said();
    setId("both");
    getStyleClass().add("open-content");
    Label number =
        new Label(both.bone().value() + (both.tray().isEmpty() ? "" : ", " + both.tray()));
    number.getStyleClass().add("reading");
    Label sentence = new WrappedLabel(both.sentence());
    sentence.setId("likeness");
    sentence.getStyleClass().add("answer");
    Label why = new WrappedLabel(words.get("both.why", both.why()));
    why.getStyleClass().add("note");
    List<Said> columns = new ArrayList<>(both.columns());
    both.settled().ifPresent(columns::add);
    getChildren().addAll(number, sentence, why, table(columns));
    if (both.settled().isEmpty() && both.likeness() == Likeness.Kind.AGREE) {
      getChildren().add(new WrappedLabel(words.get("both.agree")));
    } else if (both.settled().isEmpty()) {
      getChildren().add(settling(both));
    } else {
      getChildren().add(new WrappedLabel(words.get("both.settled")));
    }
    Button close = new Button(words.get("both.close"));
    close.setId("put-back");
    close.getStyleClass().setAll("quiet");
    close.setOnAction(event -> model.close());
    getChildren().add(close);
  }

  private GridPane table(List<Said> columns) {
    GridPane table = new GridPane();
    table.setId("side-by-side");
    table.getStyleClass().add("side-by-side");
    ColumnConstraints heads = new ColumnConstraints();
    heads.setMinWidth(GridPane.USE_PREF_SIZE);
    table.getColumnConstraints().add(heads);
    for (Said ignored : columns) {
      ColumnConstraints equal = new ColumnConstraints();
      equal.setPercentWidth(84.0 / columns.size());
      table.getColumnConstraints().add(equal);
    }
    row(table, 0, "", columns, Said::role, "strong");
    row(table, 1, "row.call", columns, Said::name, "reading");
    row(table, 2, "row.element", columns, Said::element, "plain");
    row(table, 3, "row.basis", columns, Said::basis, "plain");
    row(table, 4, "row.who", columns, Said::who, "plain");
    row(table, 5, "row.when", columns, Said::when, "plain");
    row(table, 6, "row.numbers", columns, Said::numbers, "note");
    return table;
  }

  private void row(
      GridPane table,
      int at,
      String key,
      List<Said> columns,
      Function<Said, String> text,
      String style) {
    Label head = new Label(key.isEmpty() ? "" : words.get(key));
    head.getStyleClass().add("note");
    table.add(head, 0, at);
    for (int i = 0; i < columns.size(); i++) {
      Label cell = new WrappedLabel(text.apply(columns.get(i)));
      cell.getStyleClass().add(style);
      table.add(cell, i + 1, at);
    }
  }

  private VBox settling(Opened.Both both) {
    TakingViewModel taking = model.taking();
    Label title = new Label(words.get("settle"));
    title.getStyleClass().add("strong");
    String kind = "settle." + both.settlesAs().name().toLowerCase(Locale.ROOT);
    Label as = new WrappedLabel(words.get(kind, words.who(model.me())));
    as.getStyleClass().add("note");
    ElementFields element = new ElementFields(model.elements(), words.bones());
    element.show(both.element(), both.side(), both.portion());
    Runnable settle = () -> taking.settle(element.element(), element.side(), element.portion());
    CallFields call = new CallFields(taking.form(), words.bones(), "call.why.settled", settle);
    Button button = new Button(words.get("settle.record"));
    button.setId("record-settled");
    button.getStyleClass().setAll("button", "record");
    button.setOnAction(event -> settle.run());
    VBox form = new VBox(title, as, element, call, button);
    form.getStyleClass().addAll("settling", both.likeness().name().toLowerCase(Locale.ROOT));
    return form;
  }
}

package org.comparanda.gui.capture;

import java.util.List;
import java.util.function.Supplier;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.comparanda.gui.control.WrappedLabel;
import org.comparanda.gui.text.Words;

/** All keys in the window, in two columns; a button writes them as a page to be printed. */
public final class KeysCard extends VBox {
  private static final int A_COLUMN = 2;

  /**
   * @param page writes the page and says where it lies
   * @param close follows when the table is left
   */
  public KeysCard(Words words, Supplier<String> page, Runnable close) {
    setId("keys");
    getStyleClass().addAll("card", "stop-card", "keys-card");
    Label title = new Label(words.get("keys.title"));
    title.getStyleClass().add("answer");
    Label said = new WrappedLabel("", "notice");
    said.setId("keys-said");
    said.managedProperty().bind(said.textProperty().isNotEmpty());
    Button leave = button(words.get("keys.close"), "keys-close", "record");
    leave.setOnAction(event -> close.run());
    Button save = button(words.get("keys.save"), "keys-save", "quiet");
    save.setOnAction(event -> said.setText(words.get("keys.saved", page.get())));
    HBox buttons = new HBox(leave, save);
    buttons.getStyleClass().add("stop-buttons");
    getChildren().addAll(title, table(new KeyTable(words).rows()), said, buttons);
    addEventFilter(
        KeyEvent.KEY_PRESSED,
        event -> {
          if (event.getCode() == KeyCode.ESCAPE) {
            event.consume();
            close.run();
          }
        });
  }

  private static GridPane table(List<KeyTable.Row> rows) {
    GridPane table = new GridPane();
    table.getStyleClass().add("keys-table");
    int half = (rows.size() + 1) / 2;
    for (int i = 0; i < rows.size(); i++) {
      Label key = new Label(rows.get(i).key());
      key.getStyleClass().add("key");
      key.setMinWidth(USE_PREF_SIZE);
      table.add(key, A_COLUMN * (i / half), i % half);
      table.add(new WrappedLabel(rows.get(i).does(), "note"), A_COLUMN * (i / half) + 1, i % half);
    }
    return table;
  }

  private static Button button(String text, String id, String style) {
    Button button = new Button(text);
    button.setId(id);
    button.getStyleClass().setAll(style);
    return button;
  }
}

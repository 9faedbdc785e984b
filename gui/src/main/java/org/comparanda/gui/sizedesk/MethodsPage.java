package org.comparanda.gui.sizedesk;

import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.comparanda.gui.control.Prose;
import org.comparanda.gui.text.Words;

/** The paragraph for a paper, with a button that copies it. */
final class MethodsPage extends VBox {
  MethodsPage(SizeDeskViewModel model, Words words) {
    getStyleClass().add("diagnostics");
    Prose text = new Prose();
    text.setId("methods");
    text.setAccessibleText(words.get("page.methods"));
    text.setEditable(false);
    text.textProperty().bind(model.shownProperty().map(SizeShown::methods));
    VBox.setVgrow(text, Priority.ALWAYS);
    Label copied = new Label();
    copied.getStyleClass().add("note");
    model.shownProperty().addListener((o, was, is) -> copied.setText(""));
    Button copy = new Button(words.get("copy"));
    copy.setId("copy");
    copy.setOnAction(
        event -> {
          ClipboardContent content = new ClipboardContent();
          content.putString(text.getText());
          Clipboard.getSystemClipboard().setContent(content);
          copied.setText(words.get("copied"));
        });
    HBox row = new HBox(copy, copied);
    row.getStyleClass().add("tools");
    getChildren().addAll(text, row);
  }
}

package org.comparanda.gui.app;

import java.util.List;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.comparanda.gui.text.Glossary;
import org.comparanda.gui.text.Words;

/** The words of the open screen with what they mean, at the foot of the window. */
final class WordsPane extends BorderPane {
  private static final double MARGIN = 40;

  private final ObservableList<Glossary.Term> shown = FXCollections.observableArrayList();
  private final ListView<Glossary.Term> list = new ListView<>(shown);

  /**
   * @param close follows when it is left
   */
  WordsPane(Words words, Runnable close) {
    setId("words-pane");
    getStyleClass().addAll("words-pane");
    Label title = new Label(words.get("words.title"));
    title.getStyleClass().add("strong");
    Label how = new Label(words.get("words.how"));
    how.getStyleClass().add("note");
    Button leave = new Button(words.get("words.close"));
    leave.setId("words-close");
    leave.setOnAction(event -> close.run());
    Region spring = new Region();
    HBox.setHgrow(spring, Priority.ALWAYS);
    HBox head = new HBox(title, how, spring, leave);
    head.getStyleClass().add("words-head");
    list.setId("words-list");
    list.setAccessibleText(words.get("words.title"));
    list.setPlaceholder(new Label(words.get("words.none")));
    list.setCellFactory(view -> new TermCell());
    setTop(head);
    setCenter(list);
    addEventFilter(
        KeyEvent.KEY_PRESSED,
        event -> {
          if (event.getCode() == KeyCode.ESCAPE) {
            event.consume();
            close.run();
          }
        });
  }

  /** Shows these words and takes the focus; the first is chosen. */
  void show(List<Glossary.Term> terms) {
    shown.setAll(terms);
    list.getSelectionModel().selectFirst();
    list.scrollTo(0);
    list.requestFocus();
  }

  /** The words that are listed. */
  List<Glossary.Term> shown() {
    return List.copyOf(shown);
  }

  /** A word over its meaning, which wraps. */
  private final class TermCell extends ListCell<Glossary.Term> {
    private final Label word = new Label();
    private final Label meaning = new Label();
    private final VBox lines = new VBox(word, meaning);

    TermCell() {
      word.getStyleClass().add("strong");
      meaning.setWrapText(true);
      meaning.setMinHeight(Region.USE_PREF_SIZE);
      lines.prefWidthProperty().bind(list.widthProperty().subtract(MARGIN));
      lines.setMaxWidth(Region.USE_PREF_SIZE);
    }

    @Override
    protected void updateItem(Glossary.Term term, boolean empty) {
      super.updateItem(term, empty);
      setText(null);
      if (empty || term == null) {
        setGraphic(null);
        return;
      }
      word.setText(term.word());
      meaning.setText(term.meaning());
      setAccessibleText(term.word() + ": " + term.meaning());
      setGraphic(lines);
    }
  }
}

package org.comparanda.gui.sizedesk;

import javafx.beans.Observable;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.comparanda.gui.text.Words;

/** A bone whose taxon is not decided: the candidates with their shares, and the mixture. */
final class UndecidedPage extends ScrollPane {
  private final UndecidedViewModel model;
  private final Words words;
  private final GridPane rows = new GridPane();

  UndecidedPage(SizeDeskViewModel desk, Words words) {
    this.model = desk.undecided();
    this.words = words;
    setId("undecided");
    getStyleClass().add("plain-scroll");
    setFitToWidth(true);
    rows.getStyleClass().add("facts");
    Button equal = new Button(words.get("undecided.equal"));
    equal.setId("undecided-equal");
    equal.setOnAction(event -> model.equalShares());
    Label help = new Label(words.get("undecided.help"));
    help.getStyleClass().add("note");
    help.setWrapText(true);
    HBox head = new HBox(equal);
    ObservableValue<AnswerText> answer = model.answerProperty();
    VBox content =
        new VBox(
            help,
            head,
            Fields.sentence(
                "undecided-answer", "equation-answer", answer.map(AnswerText::sentence)),
            Fields.sentence("undecided-detail", "grey", answer.map(AnswerText::detail)),
            rows);
    content.getStyleClass().add("diagnostics");
    setContent(content);
    Pages.follow(this, model::open, model::close);
    model.rows().addListener((Observable o) -> show());
    show();
  }

  private void show() {
    rows.getChildren().clear();
    heading("undecided.taxon", 0);
    heading("undecided.animals", 1);
    heading("undecided.share", 2);
    heading("undecided.own", 3);
    for (int i = 0; i < model.rows().size(); i++) {
      ShareRow row = model.rows().get(i);
      Label taxon = new Label(row.taxon().value());
      taxon.getStyleClass().add("taxon");
      TextField share = new TextField();
      share.setId("share-" + i);
      share.getStyleClass().add("share");
      share.setAccessibleText(words.get("undecided.share.of", row.taxon()));
      share.textProperty().bindBidirectional(row.shareProperty());
      Fields.typed(share, model::mix);
      Label own = new Label();
      own.setWrapText(true);
      own.textProperty().bind(row.estimateProperty());
      rows.addRow(i + 1, taxon, new Label(Integer.toString(row.animals())), share, own);
    }
  }

  private void heading(String key, int column) {
    Label heading = new Label(words.get(key));
    heading.getStyleClass().add("note");
    heading.setMinWidth(USE_PREF_SIZE);
    rows.add(heading, column, 0);
  }
}

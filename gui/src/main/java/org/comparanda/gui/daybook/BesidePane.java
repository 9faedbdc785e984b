package org.comparanda.gui.daybook;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.TextField;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.comparanda.gui.control.Field;
import org.comparanda.gui.control.PlainScroll;
import org.comparanda.gui.control.WrappedLabel;

/** The head hash, the proof, and the open entry. */
final class BesidePane extends VBox {
  private final DayBookViewModel model;
  private final BookWords words;
  private final VBox entry = new VBox();

  BesidePane(DayBookViewModel model) {
    this.model = model;
    this.words = model.said();
    getStyleClass().add("beside");
    entry.getStyleClass().add("entry");
    PlainScroll scroll = new PlainScroll(entry);
    scroll.setFocusTraversable(false);
    VBox card = new VBox(scroll);
    card.getStyleClass().add("card");
    VBox.setVgrow(card, Priority.ALWAYS);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().addAll(head(), proof(), card);
    model.openProperty().addListener((o, was, is) -> show(is));
    show(Optional.empty());
  }

  private VBox head() {
    TextField head = new TextField();
    head.setId("head");
    head.setEditable(false);
    head.setAccessibleText(words.get("head"));
    head.getStyleClass().add("hash");
    head.textProperty().bind(model.headProperty());
    HBox.setHgrow(head, Priority.ALWAYS);
    Button copy = new Button(words.get("head.copy"));
    copy.setId("copy-head");
    copy.setOnAction(
        event -> {
          ClipboardContent content = new ClipboardContent();
          content.putString(model.headProperty().get());
          Clipboard.getSystemClipboard().setContent(content);
        });
    HBox line = new HBox(head, copy);
    line.getStyleClass().add("line");
    VBox card = new VBox(strong("head"), new WrappedLabel(words.get("head.note"), "note"), line);
    card.getStyleClass().addAll("card", "side-card");
    return card;
  }

  private VBox proof() {
    ProofViewModel proof = model.proof();
    Field typed = new Field("proof-head", words.get("proof.head")).bind(proof.typedProperty());
    typed.field().getStyleClass().add("hash");
    typed.field().setOnAction(event -> proof.prove());
    Button prove = new Button(words.get("proof"));
    prove.setId("prove");
    prove.getStyleClass().setAll("button", "record");
    prove.setOnAction(event -> proof.prove());
    prove.disableProperty().bind(proof.stateProperty().map(s -> s == ProofViewModel.State.RUNNING));
    ProgressBar bar = new ProgressBar();
    bar.setId("proof-done");
    bar.setMaxWidth(Double.MAX_VALUE);
    bar.progressProperty().bind(proof.doneProperty());
    bar.visibleProperty().bind(proof.stateProperty().map(s -> s == ProofViewModel.State.RUNNING));
    bar.managedProperty().bind(bar.visibleProperty());
    Label verdict = new Label();
    verdict.setId("verdict");
    verdict.setWrapText(true);
    verdict.setMinHeight(USE_PREF_SIZE);
    verdict.getStyleClass().add("verdict");
    verdict.textProperty().bind(proof.verdictProperty());
    verdict.managedProperty().bind(proof.verdictProperty().isNotEmpty());
    proof.stateProperty().addListener((o, was, is) -> dress(verdict, is));
    VBox card =
        new VBox(
            strong("proof"),
            new WrappedLabel(words.get("proof.note"), "note"),
            typed,
            prove,
            bar,
            verdict);
    card.getStyleClass().addAll("card", "side-card");
    return card;
  }

  private static void dress(Label verdict, ProofViewModel.State now) {
    for (ProofViewModel.State state : ProofViewModel.State.values()) {
      String name = state.name().toLowerCase(Locale.ROOT).replace('_', '-');
      verdict.pseudoClassStateChanged(PseudoClass.getPseudoClass(name), state == now);
    }
  }

  private void show(Optional<EntryOpen> open) {
    if (open.isEmpty()) {
      entry
          .getChildren()
          .setAll(strong("entry"), new WrappedLabel(words.get("entry.none"), "note"));
      return;
    }
    EntryLine line = open.get().line();
    GridPane facts = grid();
    fact(facts, words.get("column.when"), line.when());
    fact(facts, words.get("column.who"), line.who().isEmpty() ? words.get("who.none") : line.who());
    fact(facts, words.get("column.said"), line.said().isEmpty() ? "–" : line.said());
    fact(
        facts,
        words.get("entry.chain"),
        words.get("entry.place", line.entry().number(), line.entry().bench()));
    fact(facts, words.get("entry.hash"), line.entry().hash());
    GridPane row = grid();
    row.setId("row-as-kept"); // columns have one name in every language
    for (Map.Entry<String, String> cell : open.get().row().entrySet()) {
      fact(row, cell.getKey(), cell.getValue());
    }
    Label what = new Label(line.what());
    what.getStyleClass().add("reading");
    what.setWrapText(true);
    entry
        .getChildren()
        .setAll(
            what,
            facts,
            strong("row"),
            open.get().row().isEmpty() ? new WrappedLabel(words.get("row.gone"), "note") : row);
  }

  private static GridPane grid() {
    GridPane grid = new GridPane();
    grid.getStyleClass().add("facts");
    ColumnConstraints head = new ColumnConstraints();
    head.setMinWidth(USE_PREF_SIZE);
    ColumnConstraints rest = new ColumnConstraints();
    rest.setHgrow(Priority.ALWAYS);
    grid.getColumnConstraints().addAll(head, rest);
    return grid;
  }

  private static void fact(GridPane grid, String name, String value) {
    Label head = new Label(name);
    head.getStyleClass().add("note");
    Label says = new Label(value);
    says.setWrapText(true);
    says.setMinHeight(USE_PREF_SIZE);
    grid.addRow(grid.getRowCount(), head, says);
  }

  private Label strong(String key) {
    Label label = new Label(words.get(key));
    label.getStyleClass().add("strong");
    return label;
  }
}

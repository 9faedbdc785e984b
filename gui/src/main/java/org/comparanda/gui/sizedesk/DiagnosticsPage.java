package org.comparanda.gui.sizedesk;

import java.util.List;
import java.util.Optional;
import javafx.beans.Observable;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.RowConstraints;
import javafx.scene.layout.VBox;
import org.comparanda.gui.control.plot.Figure;
import org.comparanda.gui.control.plot.PlotView;
import org.comparanda.gui.text.Words;

/** Whether the line can be trusted: what was looked at in words, and three pictures. */
final class DiagnosticsPage extends GridPane {
  private static final List<String> TITLES =
      List.of("diagnostic.residuals", "diagnostic.influence", "diagnostic.heldout");
  private final Words words;
  private final TrustViewModel trust;
  private final VBox checks = new VBox();

  DiagnosticsPage(SizeDeskViewModel model, Words words) {
    this.words = words;
    this.trust = model.trust();
    setId("diagnostics");
    getStyleClass().addAll("diagnostics", "diagnostics-grid");
    for (int i = 0; i < 2; i++) {
      ColumnConstraints column = new ColumnConstraints();
      column.setPercentWidth(50);
      getColumnConstraints().add(column);
      RowConstraints row = new RowConstraints();
      row.setVgrow(Priority.ALWAYS);
      row.setPercentHeight(50);
      getRowConstraints().add(row);
    }
    checks.setId("checks");
    checks.getStyleClass().add("checks");
    trust.lines().addListener((Observable o) -> tell());
    model.shownProperty().addListener((o, was, is) -> show(is.diagnostics()));
    Pages.follow(this, trust::open, trust::close);
    show(model.shownProperty().get().diagnostics());
    tell();
  }

  private void tell() {
    checks.getChildren().clear();
    if (trust.lines().isEmpty()) {
      checks.getChildren().add(text(words.get("trust.waiting"), "note"));
    }
    for (CheckLine line : trust.lines()) {
      checks.getChildren().addAll(text(line.what(), "note"), found(line));
    }
  }

  private Label found(CheckLine line) {
    String mark = line.weight() == CheckLine.Weight.CARE ? words.get("trust.care") + " " : "";
    return text(
        mark + line.found(), line.weight() == CheckLine.Weight.CARE ? "check-care" : "check-found");
  }

  private static Label text(String text, String style) {
    Label label = new Label(text);
    label.getStyleClass().add(style);
    label.setWrapText(true);
    label.setMinHeight(USE_PREF_SIZE);
    return label;
  }

  private void show(List<Figure> figures) {
    getChildren().clear();
    ScrollPane said = new ScrollPane(checks);
    said.setFitToWidth(true);
    said.getStyleClass().add("plain-scroll");
    said.setAccessibleText(words.get("page.diagnostics"));
    add(said, 0, 0);
    if (figures.isEmpty()) {
      setColumnSpan(said, 2);
      setRowSpan(said, 2);
      return;
    }
    add(pane(figures, 0), 1, 0);
    add(pane(figures, 1), 0, 1);
    add(pane(figures, 2), 1, 1);
  }

  private Node pane(List<Figure> figures, int which) {
    Label title = new Label(words.get(TITLES.get(which)));
    title.getStyleClass().add("strong");
    PlotView plot = new PlotView();
    plot.setMinSize(200, 120);
    plot.setPrefSize(420, 220);
    plot.setAccessibleText(title.getText());
    plot.figureProperty().set(Optional.of(figures.get(which)));
    VBox.setVgrow(plot, Priority.ALWAYS);
    return new VBox(title, plot);
  }
}

package org.comparanda.gui.sizedesk;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.comparanda.gui.control.plot.Figure;
import org.comparanda.gui.control.plot.PlotView;
import org.comparanda.gui.text.Words;

/** Three pictures of how far the line can be trusted. */
final class DiagnosticsPage extends VBox {
  private static final List<String> TITLES =
      List.of("diagnostic.residuals", "diagnostic.influence", "diagnostic.heldout");
  private final Words words;

  DiagnosticsPage(SizeDeskViewModel model, Words words) {
    this.words = words;
    setId("diagnostics");
    getStyleClass().add("diagnostics");
    model.shownProperty().addListener((o, was, is) -> show(is.diagnostics()));
    show(model.shownProperty().get().diagnostics());
  }

  private void show(List<Figure> figures) {
    getChildren().clear();
    if (figures.isEmpty()) {
      Label none = new Label(words.get("diagnostic.none"));
      none.setWrapText(true);
      getChildren().add(none);
      return;
    }
    VBox wide = pane(figures, 0);
    HBox pair = new HBox(pane(figures, 1), pane(figures, 2));
    pair.getStyleClass().add("field-row");
    pair.getChildren().forEach(child -> HBox.setHgrow(child, Priority.ALWAYS));
    VBox.setVgrow(wide, Priority.ALWAYS);
    VBox.setVgrow(pair, Priority.ALWAYS);
    getChildren().addAll(wide, pair);
  }

  private VBox pane(List<Figure> figures, int which) {
    Label title = new Label(words.get(TITLES.get(which)));
    title.getStyleClass().add("strong");
    PlotView plot = new PlotView();
    plot.setMinSize(200, 120);
    plot.setPrefSize(420, 220);
    plot.figureProperty().set(java.util.Optional.of(figures.get(which)));
    VBox.setVgrow(plot, Priority.ALWAYS);
    return new VBox(title, plot);
  }
}

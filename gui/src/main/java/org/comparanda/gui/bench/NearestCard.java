package org.comparanda.gui.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import org.comparanda.gui.control.WrappedLabel;
import org.comparanda.gui.text.Words;
import org.comparanda.suggestion.NearestAnimal;

/** Which drawers to open: the nearest comparative animals. */
final class NearestCard extends VBox {
  private final Words words;
  private final GridPane table = new GridPane();
  private final Label none = new WrappedLabel("", "grey");
  private final List<Line> lines = new ArrayList<>();

  NearestCard(BenchViewModel bench, Words words) {
    this.words = words;
    setId("nearest");
    getStyleClass().addAll("card", "nearest-card");
    Label title = new WrappedLabel(words.get("nearest"), "strong");
    table.getStyleClass().add("nearest-table");
    table.add(none, 0, 0, 3, 1);
    getChildren().addAll(title, table);
    bench.findingProperty().addListener((o, was, is) -> show(is));
    show(Optional.empty());
  }

  private void show(Optional<Finding> finding) {
    List<NearestAnimal> animals = finding.map(f -> f.suggestion().nearest()).orElse(List.of());
    shown(none, animals.isEmpty());
    none.setText(words.get(finding.isPresent() ? "nearest.notcompared" : "nearest.none"));
    while (lines.size() < animals.size()) {
      lines.add(new Line(label("strong"), label("plain"), label("taxon")));
      lines.get(lines.size() - 1).all().forEach(l -> l.setMinWidth(USE_PREF_SIZE));
      table.addRow(lines.size(), lines.get(lines.size() - 1).all().toArray(Label[]::new));
    }
    for (int i = 0; i < lines.size(); i++) {
      boolean used = i < animals.size();
      lines.get(i).all().forEach(label -> shown(label, used));
      if (used) {
        show(animals.get(i), lines.get(i));
      }
    }
  }

  private void show(NearestAnimal animal, Line line) {
    line.number().setText(animal.animal().value());
    line.drawer()
        .setText(
            animal.drawer().map(d -> words.get("dot.drawer", d)).orElse(words.get("dot.nodrawer")));
    line.taxon().setText(animal.taxon().value());
  }

  private static void shown(Label label, boolean now) {
    label.setVisible(now);
    label.setManaged(now);
  }

  private static Label label(String style) {
    Label label = new Label();
    label.getStyleClass().add(style);
    return label;
  }

  /** The labels of one animal, used again for the next finding. */
  private record Line(Label number, Label drawer, Label taxon) {
    List<Label> all() {
      return List.of(number, drawer, taxon);
    }
  }
}

package org.comparanda.gui.bench;

import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import org.comparanda.gui.text.Words;
import org.comparanda.suggestion.NearestAnimal;

/** Which drawers to open: the nearest comparative animals. */
final class NearestCard extends VBox {
  private final Words words;
  private final GridPane table = new GridPane();

  NearestCard(BenchViewModel bench, Words words) {
    this.words = words;
    setId("nearest");
    getStyleClass().addAll("card", "nearest-card");
    Label title = new Label(words.get("nearest"));
    title.getStyleClass().add("strong");
    table.getStyleClass().add("nearest-table");
    getChildren().addAll(title, table);
    bench.findingProperty().addListener((o, was, is) -> show(is));
    show(Optional.empty());
  }

  private void show(Optional<Finding> finding) {
    List<NearestAnimal> animals = finding.map(f -> f.suggestion().nearest()).orElse(List.of());
    table.getChildren().clear();
    if (animals.isEmpty()) {
      String none = finding.isPresent() ? "nearest.notcompared" : "nearest.none";
      table.add(label(words.get(none), "grey"), 0, 0);
    }
    for (int i = 0; i < animals.size(); i++) {
      NearestAnimal animal = animals.get(i);
      Optional<String> drawer = animal.drawer();
      table.add(label(animal.animal().value(), "strong"), 0, i);
      table.add(
          label(drawer.map(d -> words.get("dot.drawer", d)).orElse(words.get("dot.nodrawer")), ""),
          1,
          i);
      table.add(label(animal.taxon().value(), "taxon"), 2, i);
    }
  }

  private static Node label(String text, String style) {
    Label label = new Label(text);
    label.getStyleClass().add(style);
    return label;
  }
}

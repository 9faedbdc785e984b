package org.comparanda.gui.bench;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import org.comparanda.gui.text.Words;
import org.comparanda.suggestion.DrawerEntry;

/** The drawer: the ruled out with their sentence, and apart those too few to rule out. */
final class DrawerCard extends VBox {
  private final Words words;
  private final Label title = new Label();
  private final VBox lines = new VBox();

  DrawerCard(BenchViewModel bench, Words words) {
    this.words = words;
    setId("drawer");
    getStyleClass().addAll("card", "drawer-card");
    title.getStyleClass().addAll("strong", "grey");
    lines.getStyleClass().add("drawer-lines");
    ScrollPane scroll = new ScrollPane(lines);
    scroll.setFitToWidth(true);
    scroll.getStyleClass().add("plain-scroll");
    scroll.setAccessibleText(words.get("drawer.spoken"));
    VBox.setVgrow(scroll, javafx.scene.layout.Priority.ALWAYS);
    getChildren().addAll(title, scroll);
    bench
        .findingProperty()
        .addListener((o, was, is) -> show(is.map(f -> f.suggestion().drawer()).orElse(List.of())));
    show(List.of());
  }

  private void show(List<DrawerEntry> entries) {
    List<DrawerEntry> out = of(entries, DrawerEntry.Standing.RULED_OUT);
    List<DrawerEntry> few = of(entries, DrawerEntry.Standing.TOO_FEW_TO_RULE_OUT);
    title.setText(words.get(out.isEmpty() ? "drawer.empty" : "drawer", out.size()));
    lines.getChildren().setAll(out.stream().map(DrawerCard::line).toList());
    if (!few.isEmpty()) {
      Label apart = new Label(words.get("drawer.few", few.size()));
      apart.getStyleClass().addAll("strong", "note");
      lines.getChildren().add(apart);
      few.forEach(entry -> lines.getChildren().add(line(entry)));
    }
    getStyleClass().remove("drawer-full");
    if (lines.getChildren().size() > 2) {
      getStyleClass().add("drawer-full");
    }
    setVisible(!entries.isEmpty());
    setManaged(!entries.isEmpty());
  }

  private static List<DrawerEntry> of(List<DrawerEntry> entries, DrawerEntry.Standing standing) {
    return entries.stream().filter(e -> e.standing() == standing).toList();
  }

  private static Node line(DrawerEntry entry) {
    Sentence sentence = new Sentence("small");
    String name = entry.taxon().value();
    boolean named = entry.sentence().contains(name);
    sentence.show(
        named ? entry.sentence() : name + ": " + entry.sentence(),
        name.contains(" ") ? List.of(name) : List.of());
    return sentence;
  }
}

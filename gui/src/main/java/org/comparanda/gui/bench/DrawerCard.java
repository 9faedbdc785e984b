package org.comparanda.gui.bench;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.comparanda.gui.control.PlainScroll;
import org.comparanda.gui.text.Words;
import org.comparanda.suggestion.DrawerEntry;

/** The drawer: the ruled out with their sentence, and apart those too few to rule out. */
final class DrawerCard extends VBox {
  private static final List<String> USUAL = List.of("card", "drawer-card");
  private static final List<String> FULL = List.of("card", "drawer-card", "drawer-full");

  private final Words words;
  private final Label title = new Label();
  private final VBox lines = new VBox();
  private final Label apart = new Label();
  private final List<Sentence> sentences = new ArrayList<>();

  DrawerCard(BenchViewModel bench, Words words) {
    this.words = words;
    setId("drawer");
    getStyleClass().setAll(USUAL);
    apart.getStyleClass().addAll("strong", "note");
    title.getStyleClass().addAll("strong", "grey");
    lines.getStyleClass().add("drawer-lines");
    PlainScroll scroll = new PlainScroll(lines);
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
    List<Node> now = new ArrayList<>();
    out.forEach(entry -> now.add(line(entry, now.size())));
    if (!few.isEmpty()) {
      apart.setText(words.get("drawer.few", few.size()));
      int before = now.size();
      now.add(apart);
      few.forEach(entry -> now.add(line(entry, before + now.size())));
    }
    if (!now.equals(lines.getChildren())) {
      lines.getChildren().setAll(now);
    }
    boolean full = now.size() > 2;
    if (full != getStyleClass().contains("drawer-full")) {
      getStyleClass().setAll(full ? FULL : USUAL);
    }
    setVisible(!entries.isEmpty());
    setManaged(!entries.isEmpty());
  }

  private static List<DrawerEntry> of(List<DrawerEntry> entries, DrawerEntry.Standing standing) {
    return entries.stream().filter(e -> e.standing() == standing).toList();
  }

  /** The sentence of that place, used again from finding to finding. */
  private Node line(DrawerEntry entry, int place) {
    while (sentences.size() <= place) {
      sentences.add(new Sentence("small"));
    }
    Sentence sentence = sentences.get(place);
    String name = entry.taxon().value();
    boolean named = entry.sentence().contains(name);
    sentence.show(
        named ? entry.sentence() : name + ": " + entry.sentence(),
        name.contains(" ") ? List.of(name) : List.of());
    return sentence;
  }
}

package org.comparanda.gui.tray;

import java.util.List;
import java.util.Optional;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.comparanda.gui.control.HazardsCard;
import org.comparanda.tray.Tray;

/** The open tray: what it is and where it stands; hazards first, then bones or counts. */
final class OpenTrayPane extends VBox {
  private final TrayViewModel model;
  private final TrayWords words;
  private final VBox facts = new VBox();
  private final StackPane pages = new StackPane();
  private final BonesPane bones;
  private final ListView<String> counts;
  private final ToggleButton showCounts = new ToggleButton();
  private final ToggleButton showLot = new ToggleButton();
  private final FlowPane choice = new FlowPane();

  OpenTrayPane(TrayViewModel model, Printing printing) {
    this.model = model;
    this.words = model.said();
    getStyleClass().add("right");
    HBox.setHgrow(this, Priority.ALWAYS);
    facts.getStyleClass().addAll("card", "tray-facts");
    facts.setMinHeight(USE_PREF_SIZE);
    bones = new BonesPane(model);
    counts = new ListView<>(model.counts());
    counts.setId("counts");
    counts.setAccessibleText(words.get("page.counts"));
    counts.getStyleClass().add("card");
    VBox.setVgrow(pages, Priority.ALWAYS);
    choice.getChildren().setAll(choices(printing));
    choice.getStyleClass().add("pages");
    getChildren().addAll(facts, choice, pages);
    model.openProperty().addListener((o, was, is) -> show(is));
    model.trays().addListener((ListChangeListener<TrayLine>) change -> empty());
    show(model.openProperty().get());
  }

  /** The first tray came, or the last one went, while none is open. */
  private void empty() {
    if (model.openProperty().get().isEmpty()) {
      show(Optional.empty());
    }
  }

  private List<Node> choices(Printing printing) {
    ToggleGroup group = new ToggleGroup();
    ToggleButton showBones = new ToggleButton(words.get("page.bones"));
    showBones.setId("page-bones");
    showCounts.setText(words.get("page.counts"));
    showCounts.setId("page-counts");
    showLot.setText(words.get("page.lot"));
    showLot.setId("page-lot");
    for (ToggleButton page : List.of(showBones, showCounts, showLot)) {
      page.setToggleGroup(group);
      page.getStyleClass().setAll("state-chip");
    }
    showBones.setSelected(true);
    group
        .selectedToggleProperty()
        .addListener(
            (o, was, is) -> {
              if (is == null) {
                group.selectToggle(was);
              }
              page();
            });
    return List.of(
        showBones,
        showCounts,
        showLot,
        print("print-labels", "print.labels", Printing.Slip.LABELS, printing),
        print("print-card", "print.card", Printing.Slip.CARD, printing),
        print("print-calls", "print.calls", Printing.Slip.CALLS, printing));
  }

  private Button print(String id, String key, Printing.Slip slip, Printing printing) {
    Button button = new Button(words.get(key));
    button.setId(id);
    button.getStyleClass().setAll("button", "quiet");
    button.setOnAction(
        event ->
            model
                .openProperty()
                .get()
                .flatMap(open -> printing.print(slip, open.line().tray()))
                .ifPresent(model.messageProperty()::set));
    return button;
  }

  private void page() {
    boolean open = model.openProperty().get().isPresent();
    choice.setVisible(open);
    if (!open) {
      pages.getChildren().clear();
    } else if (model.hazardsFirst()) {
      pages.getChildren().setAll(hazards());
    } else {
      pages.getChildren().setAll(chosen());
    }
  }

  private Node chosen() {
    if (showLot.isSelected()) {
      return model.openProperty().get().<Node>map(o -> new LotPane(model, o)).orElseThrow();
    }
    return showCounts.isSelected() ? counts : bones;
  }

  private void show(Optional<OpenTray> shown) {
    facts.getChildren().setAll(shown.map(this::facts).orElseGet(() -> List.of(none())));
    page();
  }

  private Node none() {
    Label none = new Label(words.get(model.trays().isEmpty() ? "trays.none" : "tray.none"));
    none.getStyleClass().add("note");
    none.setWrapText(true);
    return none;
  }

  private List<Node> facts(OpenTray open) {
    Tray tray = open.line().tray();
    Label name = new Label(tray.name());
    name.getStyleClass().add("reading");
    Label place =
        new Label(
            words.get(
                "tray.place",
                tray.lot(),
                tray.provenance().isBlank() ? words.get("tray.noplace") : tray.provenance(),
                words.word("places", open.lot().places())));
    place.setWrapText(true);
    place.getStyleClass().add("note");
    Label hazards =
        new Label(
            tray.hazards().isBlank()
                ? words.get("hazards.none")
                : words.get("hazards", tray.hazards()));
    hazards.setWrapText(true);
    hazards.getStyleClass().add(tray.hazards().isBlank() ? "note" : "warning");
    return List.of(name, place, hazards, new TrayStandingPane(model, open));
  }

  private HazardsCard hazards() {
    return new HazardsCard(
        words.get("hazards.title"),
        model.openProperty().get().map(o -> o.line().tray().hazards()).orElse(""),
        words.get("hazards.then"),
        words.get("hazards.read"),
        model::hazardsRead);
  }
}

package org.comparanda.gui.sizedesk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.comparanda.gui.text.Numbers;
import org.comparanda.gui.text.Words;
import org.comparanda.sizeestimate.Correction;
import org.comparanda.sizeestimate.FittedLine;
import org.comparanda.sizeestimate.LineMethod;
import org.comparanda.sizeestimate.LineScale;
import org.comparanda.taxon.TaxonName;

/** How the line is fitted and told: what most questions leave as it is. */
final class MorePanel extends VBox {
  private final ChoicesViewModel choices;
  private final Words words;
  private final Numbers numbers;
  private final FileDialogs files;
  private final ComboBox<LineMethod> method = new ComboBox<>();
  private final ComboBox<LineScale> scale = new ComboBox<>();
  private final ComboBox<Correction> correction = new ComboBox<>();
  private final ComboBox<Beside> beside = new ComboBox<>();
  private final ComboBox<Optional<TaxonName>> boneTaxon = new ComboBox<>();
  private final TextField level = new TextField();
  private final CheckBox masses = new CheckBox();
  private final Button tree = new Button();
  private final HBox onTree;
  private boolean settling;

  MorePanel(SizeDeskViewModel model, Words words, Locale locale, FileDialogs files) {
    this.choices = model.choices();
    this.words = words;
    this.numbers = new Numbers(locale);
    this.files = files;
    setId("more-panel");
    getStyleClass().add("more-panel");
    Fields fields = new Fields(words);
    onTree =
        Fields.row(
            fields.named("ask.tree", tree()), fields.named("ask.bonetaxon", boneTaxon(model)));
    onTree.managedProperty().bind(onTree.visibleProperty());
    getChildren()
        .addAll(
            fields.named(
                "ask.method",
                fields.choices(
                    method, "method", List.of(LineMethod.values()), settled(choices::fitBy))),
            onTree,
            Fields.row(
                fields.named(
                    "ask.scale",
                    fields.choices(
                        scale, "scale", List.of(LineScale.values()), settled(choices::fitOn))),
                fields.named("ask.level", level())),
            Fields.row(
                fields.named(
                    "ask.correction",
                    fields.choices(
                        correction,
                        "correction",
                        List.of(Correction.values()),
                        settled(choices::correctBy))),
                fields.named(
                    "ask.beside",
                    fields.choices(
                        beside,
                        "beside",
                        List.of(Beside.values()),
                        settled(choices::compareWith)))),
            Fields.sentence("factors", "note", model.shownProperty().map(s -> factors(s.line()))),
            masses(),
            Fields.sentence("choice-problem", "warning", choices.problemProperty()));
    model.askProperty().addListener((o, was, is) -> is.ifPresent(a -> show(a.choice())));
    model.askProperty().get().ifPresent(a -> show(a.choice()));
  }

  private <T> java.util.function.Consumer<T> settled(java.util.function.Consumer<T> choose) {
    return value -> {
      if (!settling) {
        choose.accept(value);
      }
    };
  }

  private TextField level() {
    level.setId("level");
    return Fields.typed(level, () -> choices.atLevel(level.getText()));
  }

  private Button tree() {
    tree.setId("tree");
    tree.setMaxWidth(Double.MAX_VALUE);
    tree.setWrapText(true);
    tree.setMinHeight(USE_PREF_SIZE);
    tree.setOnAction(event -> files.tree().get().ifPresent(choices::climb));
    return tree;
  }

  private ComboBox<Optional<TaxonName>> boneTaxon(SizeDeskViewModel model) {
    Fields.list(
        boneTaxon,
        "bone-taxon",
        List.of(),
        t -> t.map(TaxonName::value).orElse(words.get("bonetaxon.none")),
        settled(choices::sayTaxon));
    model.taxaProperty().addListener((o, was, is) -> offer(is));
    offer(model.taxaProperty().get());
    return boneTaxon;
  }

  private void offer(Optional<TaxonBranch> branch) {
    settling = true;
    List<Optional<TaxonName>> taxa = new ArrayList<>(List.of(Optional.empty()));
    branch.ifPresent(b -> b.taxa().stream().sorted().forEach(t -> taxa.add(Optional.of(t))));
    boneTaxon.getItems().setAll(taxa);
    settling = false;
  }

  private CheckBox masses() {
    masses.setId("masses");
    masses.setText(words.get("ask.masses"));
    masses.setOnAction(
        event ->
            choices.weigh(masses.isSelected() ? LineChoice.Masses.ALL : LineChoice.Masses.WILD));
    return masses;
  }

  private void show(LineChoice choice) {
    settling = true;
    method.setValue(choice.method());
    scale.setValue(choice.scale());
    correction.setValue(choice.correction());
    beside.setValue(choice.beside());
    boneTaxon.setValue(choice.boneTaxon());
    level.setText(numbers.upTo(100 * choice.level(), 3));
    masses.setSelected(choice.masses() == LineChoice.Masses.ALL);
    tree.setText(choice.tree().map(TreeFile::name).orElse(words.get("tree.choose")));
    onTree.setVisible(choice.method() == LineMethod.PGLS);
    settling = false;
  }

  /** The factors that a correction would bring, or why the line has none. */
  private String factors(Optional<FittedLine> line) {
    return line.map(FittedLine::corrections)
        .map(
            c ->
                c.fold(
                    f ->
                        words.get(
                            "factors",
                            numbers.fixed(f.lognormal(), 4),
                            numbers.fixed(f.smearing(), 4),
                            numbers.fixed(f.ratio(), 4)),
                    none -> words.get("factors.none")))
        .orElse("");
  }
}

package org.comparanda.gui.shelf.keeping;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.binding.Bindings;
import javafx.beans.property.SimpleStringProperty;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.comparanda.check.Finding;
import org.comparanda.check.Judgement;
import org.comparanda.gui.control.ReadableColumns;
import org.comparanda.gui.control.WrappedCell;
import org.comparanda.gui.shelf.keeping.FindingsViewModel.Which;
import org.comparanda.gui.text.Words;
import org.comparanda.reference.AnimalId;
import org.comparanda.register.HandOver;

/** The integrity list: a sentence and a remedy a row; a click on the number opens the animal. */
public final class FindingsPage extends VBox {
  private final FindingsViewModel model;
  private final Words words;
  private final Consumer<AnimalId> open;
  private final TableView<Judgement> table = new TableView<>();

  /**
   * The page.
   *
   * @param open opens an animal
   */
  public FindingsPage(FindingsViewModel model, Consumer<AnimalId> open) {
    this.model = model;
    this.open = open;
    words = model.room().words();
    setId("findings-page");
    getStyleClass().addAll("card", "findings-page");
    table.setId("findings");
    table.setAccessibleText(words.get("findings.title"));
    table.setItems(model.listed());
    table.setPlaceholder(new Label(words.get("findings.empty")));
    column("finding.kind", 130, j -> words.get("kind." + j.finding().kind()));
    animals();
    column("finding.bone", 120, j -> j.finding().bone().map(words::said).orElse(""));
    column("finding.message", 360, j -> words.said(j.finding().message()));
    column("finding.remedy", 330, FindingsPage.this::remedy);
    ReadableColumns.of(table);
    VBox.setVgrow(table, Priority.ALWAYS);
    getChildren().addAll(head(), table, reminders(), foot());
    sceneProperty()
        .addListener(
            (o, was, is) -> {
              if (was == null && is != null) {
                model.look();
              } else if (is == null) {
                model.stop();
              }
            });
  }

  private String remedy(Judgement judged) {
    return judged
        .accepted()
        .map(a -> words.get("finding.accepted", a.reason()))
        .orElseGet(() -> words.said(judged.finding().remedy()));
  }

  private HBox head() {
    ToggleGroup group = new ToggleGroup();
    HBox tabs = new HBox();
    tabs.getStyleClass().add("page-tabs");
    for (Which which : Which.values()) {
      ToggleButton tab = new ToggleButton(words.get("findings." + which));
      tab.setId("findings-" + which);
      tab.getStyleClass().setAll("page-tab");
      tab.setMinWidth(USE_PREF_SIZE);
      tab.setToggleGroup(group);
      tab.setSelected(which == model.whichProperty().get());
      tab.setOnAction(
          event -> {
            tab.setSelected(true);
            model.whichProperty().set(which);
          });
      tabs.getChildren().add(tab);
    }
    Region spring = new Region();
    HBox.setHgrow(spring, Priority.ALWAYS);
    HBox head =
        new HBox(
            Written.told(model.sentenceProperty(), "findings-sentence", "strong"),
            spring,
            tabs,
            again());
    head.getStyleClass().add("page-head");
    return head;
  }

  /** Looks again, or ends looking while it goes on. */
  private Button again() {
    Button again = Written.button(words.get("findings.again"), "findings-again", () -> {});
    again
        .textProperty()
        .bind(
            Bindings.when(model.runningProperty())
                .then(words.get("findings.stop"))
                .otherwise(words.get("findings.again")));
    again.setOnAction(
        event -> {
          if (model.runningProperty().get()) {
            model.stop();
          } else {
            model.look();
          }
        });
    return again;
  }

  /** Hand-overs, quietly: in the permits' own words. */
  private VBox reminders() {
    VBox lines = new VBox();
    lines.setId("reminders");
    model
        .due()
        .addListener(
            (ListChangeListener<HandOver>)
                change ->
                    lines
                        .getChildren()
                        .setAll(
                            model.due().stream()
                                .map(due -> Written.wrapped(words.said(due.sentence()), "note"))
                                .toList()));
    return lines;
  }

  /** What the chosen finding proposes, who and why, and the two answers. */
  private VBox foot() {
    CorrectionWords proposals = new CorrectionWords(words, model.room().locale());
    Label proposed = Written.wrapped(words.get("findings.choose"), "strong");
    proposed.setId("findings-proposed");
    Button correct =
        Written.button(
            words.get("findings.correct"), "findings-correct", () -> chosen(model::correct));
    Button accept =
        Written.button(
            words.get("findings.accept"), "findings-accept", () -> chosen(model::accept));
    correct.setDisable(true);
    accept.setDisable(true);
    table
        .getSelectionModel()
        .selectedItemProperty()
        .addListener(
            (o, was, is) -> {
              Optional<Finding> finding = Optional.ofNullable(is).map(Judgement::finding);
              proposed.setText(
                  finding.map(proposals::proposal).orElseGet(() -> words.get("findings.choose")));
              correct.setDisable(finding.flatMap(Finding::correction).isEmpty());
              accept.setDisable(finding.isEmpty());
            });
    SignatureBar signature = new SignatureBar(model.signature(), words);
    HBox.setHgrow(signature, Priority.ALWAYS);
    HBox answers = new HBox(signature, accept, correct);
    answers.getStyleClass().add("page-row");
    VBox foot = new VBox(proposed, answers);
    foot.getStyleClass().add("page-foot");
    return foot;
  }

  private void chosen(Consumer<Finding> does) {
    Optional.ofNullable(table.getSelectionModel().getSelectedItem())
        .ifPresent(j -> does.accept(j.finding()));
  }

  private void animals() {
    TableColumn<Judgement, Finding> column = new TableColumn<>(words.get("finding.animal"));
    column.setCellValueFactory(
        cell -> new javafx.beans.property.SimpleObjectProperty<>(cell.getValue().finding()));
    column.setPrefWidth(100);
    column.setSortable(false);
    column.setCellFactory(
        c ->
            new TableCell<>() {
              @Override
              protected void updateItem(Finding finding, boolean empty) {
                super.updateItem(finding, empty);
                setGraphic(empty ? null : finding.animal().map(this::link).orElse(null));
              }

              private Hyperlink link(String number) {
                Hyperlink link = new Hyperlink(number);
                link.setOnAction(event -> open.accept(new AnimalId(number)));
                return link;
              }
            });
    table.getColumns().add(column);
  }

  private void column(String key, double width, Function<Judgement, String> text) {
    TableColumn<Judgement, String> column = new TableColumn<>(words.get(key));
    column.setCellValueFactory(cell -> new SimpleStringProperty(text.apply(cell.getValue())));
    column.setPrefWidth(width);
    column.setSortable(false);
    column.setCellFactory(c -> new WrappedCell<>());
    table.getColumns().add(column);
  }
}

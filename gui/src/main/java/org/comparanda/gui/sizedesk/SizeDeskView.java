package org.comparanda.gui.sizedesk;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.comparanda.gui.text.Words;
import org.comparanda.reference.AnimalId;

/** The Size Desk: the question at the left; the answer, the picture, the numbers at the right. */
public final class SizeDeskView extends BorderPane {
  private static final int LONG = 200;

  private final SizeDeskViewModel model;
  private final Words words;
  private final StackPane page = new StackPane();
  private final ToggleGroup pages = new ToggleGroup();
  private final VBox cautions = new VBox();
  private Consumer<AnimalId> onAnimal = id -> {};

  /**
   * Builds the view; it looks at the shelf each time it comes into the window.
   *
   * @param note what is said under the title (simulated demo data), may be empty
   * @param files asks for files
   */
  public SizeDeskView(
      SizeDeskViewModel model, Words words, Locale locale, String note, FileDialogs files) {
    this.model = model;
    this.words = words;
    setId("sizedesk-screen");
    getStyleClass().addAll("screen", "size-desk");
    getStylesheets()
        .add(
            Objects.requireNonNull(SizeDeskView.class.getResource("sizedesk.css"))
                .toExternalForm());
    setTop(header(note));
    setLeft(new AskPanel(model, words, locale, files));
    VBox card = new VBox(tabs(model, files), page);
    card.getStyleClass().addAll("card", "pages");
    VBox.setVgrow(page, Priority.ALWAYS);
    VBox right = new VBox(answer(model), card);
    right.getStyleClass().add("right");
    VBox.setVgrow(card, Priority.ALWAYS);
    setCenter(right);
    parentProperty()
        .addListener(
            (o, was, is) -> {
              if (is != null) {
                model.refresh();
              }
            });
  }

  /** What happens when a point of the plot is clicked: its animal is handed over. */
  public void setOnAnimal(Consumer<AnimalId> action) {
    onAnimal = action;
  }

  /** Reads a tree as its dialog would. */
  public void readTree(Path newick) {
    model.choices().climb(newick);
  }

  /** Adds equations as their dialog would. */
  public void readEquations(Path file) {
    model.equations().addFrom(file);
  }

  private HBox header(String note) {
    Label title = new Label(words.get("title"));
    title.getStyleClass().add("title");
    Label says =
        new Label(note.isEmpty() ? words.get("subtitle") : words.get("subtitle") + " · " + note);
    says.getStyleClass().add("note");
    HBox header = new HBox(title, says);
    header.getStyleClass().add("header");
    return header;
  }

  private VBox answer(SizeDeskViewModel model) {
    Label sentence = label("answer-sentence", "answer");
    sentence.textProperty().bind(model.shownProperty().map(s -> s.answer().sentence()));
    Label detail = label("answer-detail", "grey");
    detail.textProperty().bind(model.shownProperty().map(s -> s.answer().detail()));
    cautions.setId("cautions");
    model.shownProperty().addListener((o, was, is) -> show(is.answer().cautions()));
    VBox card = new VBox(sentence, detail, cautions);
    card.getStyleClass().addAll("card", "answer-card");
    return card;
  }

  private void show(List<String> said) {
    cautions
        .getChildren()
        .setAll(
            said.stream()
                .map(
                    text -> {
                      Label label = new Label(shortened(text));
                      if (text.length() > LONG) {
                        Tooltip.install(label, new Tooltip(text));
                      }
                      label.setWrapText(true);
                      label.setMinHeight(USE_PREF_SIZE);
                      return label;
                    })
                .toList());
  }

  /** A long list is not the answer; the whole of it comes under the pointer. */
  private static String shortened(String text) {
    return text.length() > LONG ? text.substring(0, LONG) + " …" : text;
  }

  private static Label label(String id, String style) {
    Label label = new Label();
    label.setId(id);
    label.getStyleClass().add(style);
    label.setWrapText(true);
    label.setMinHeight(USE_PREF_SIZE);
    return label;
  }

  private HBox tabs(SizeDeskViewModel model, FileDialogs files) {
    PlotPage plot = new PlotPage(model, words, files.save(), id -> onAnimal.accept(id));
    ToggleButton first = tab("plot", plot);
    HBox tools = plot.tools();
    tools.visibleProperty().bind(first.selectedProperty());
    Region spring = new Region();
    HBox.setHgrow(spring, Priority.ALWAYS);
    HBox tabs =
        new HBox(
            first,
            tab("diagnostics", new DiagnosticsPage(model, words)),
            tab("equations", new EquationsPage(model, words, files)),
            tab("undecided", new UndecidedPage(model, words)),
            tab("methods", new MethodsPage(model, words)),
            spring,
            tools);
    tabs.getStyleClass().add("page-tabs");
    pages.selectToggle(first);
    return tabs;
  }

  private ToggleButton tab(String key, Node content) {
    ToggleButton tab = new ToggleButton(words.get("page." + key));
    tab.setId("page-" + key);
    tab.getStyleClass().setAll("page-tab");
    tab.setMinWidth(USE_PREF_SIZE);
    tab.setToggleGroup(pages);
    tab.setOnAction(event -> tab.setSelected(true));
    tab.selectedProperty()
        .addListener(
            (o, was, is) -> {
              if (is) {
                page.getChildren().setAll(content);
              }
            });
    return tab;
  }
}

package org.comparanda.gui.shelf.keeping;

import java.util.Optional;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.comparanda.bone.Element;
import org.comparanda.bone.Side;
import org.comparanda.bone.Symmetry;
import org.comparanda.capture.NotPossible;
import org.comparanda.gui.control.PlainScroll;
import org.comparanda.gui.text.Words;
import org.comparanda.taxon.TaxonName;

/** A skeleton being measured: elements at the left, both sides of one at the right. */
public final class SkeletonPage extends HBox {
  private final SkeletonViewModel model;
  private final Words words;
  private final VBox elements = new VBox();
  private final GridPane table = new GridPane();
  private final Label number = Written.label("", "reading");
  private final Label taxon = Written.label("", "taxon");
  private final TextField field;
  private final ToggleButton left;
  private final ToggleButton right;

  /**
   * The page.
   *
   * @param close leaves it
   */
  public SkeletonPage(SkeletonViewModel model, Runnable close) {
    this.model = model;
    words = model.room().words();
    setId("skeleton-page");
    getStyleClass().add("halves");
    elements.getStyleClass().add("skeleton-elements");
    VBox list =
        new VBox(
            Written.label(words.get("skeleton.elements"), "strong"), new PlainScroll(elements));
    list.getStyleClass().addAll("card", "stock-left");
    left = sideButton(Side.LEFT);
    right = sideButton(Side.RIGHT);
    field = Written.field(model.fieldProperty(), "skeleton-field", "");
    field.getStyleClass().add("reading-field");
    field.setOnAction(event -> model.accept());
    field.addEventFilter(KeyEvent.KEY_TYPED, this::key);
    table.getStyleClass().add("skeleton-table");
    table.setId("skeleton-table");
    VBox measuring = new VBox(head(close), who(), reading(), new PlainScroll(table), foot());
    VBox.setVgrow(measuring.getChildren().get(3), Priority.ALWAYS);
    measuring.getStyleClass().addAll("card", "skeleton");
    HBox.setHgrow(measuring, Priority.ALWAYS);
    getChildren().addAll(list, measuring);
    model.rows().addListener((ListChangeListener<SkeletonRow>) change -> rows());
    model.elementProperty().addListener((o, was, is) -> elements(is));
    model.sideProperty().addListener((o, was, is) -> sides());
    model
        .cardProperty()
        .addListener(
            (o, was, is) -> {
              number.setText(is.map(c -> c.id().value()).orElse(""));
              taxon.setText(is.flatMap(c -> c.animal().taxon()).map(TaxonName::value).orElse(""));
            });
    model
        .cardProperty()
        .get()
        .ifPresent(
            c -> {
              number.setText(c.id().value());
              taxon.setText(c.animal().taxon().map(TaxonName::value).orElse(""));
            });
    elements(model.elementProperty().get());
    rows();
  }

  private void key(KeyEvent event) {
    if (field.getText().isEmpty() && event.getCharacter().equals("/")) {
      model.undo();
      event.consume();
    } else if (field.getText().isEmpty() && event.getCharacter().equals("*")) {
      model.anotherTake();
      event.consume();
    }
  }

  private HBox head(Runnable close) {
    Region spring = new Region();
    HBox.setHgrow(spring, Priority.ALWAYS);
    HBox head =
        new HBox(
            number,
            taxon,
            spring,
            Written.button(words.get("card.close"), "skeleton-close", close));
    head.getStyleClass().add("page-head");
    return head;
  }

  private HBox who() {
    TextField who =
        Written.field(model.signature().whoProperty(), "skeleton-who", words.get("who.prompt"));
    who.getStyleClass().add("who");
    HBox row = new HBox(Written.label(words.get("who"), "note"), who, left, right);
    row.getStyleClass().add("page-row");
    return row;
  }

  private HBox reading() {
    MenuButton reasons = new MenuButton(words.get("skeleton.reasons"));
    reasons.setId("skeleton-reasons");
    for (NotPossible reason : NotPossible.values()) {
      MenuItem item = new MenuItem(words.get("reason." + reason));
      item.setOnAction(event -> model.notPossible(reason));
      reasons.getItems().add(item);
    }
    Label prompt = Written.told(model.promptProperty(), "skeleton-prompt", "answer");
    HBox.setHgrow(prompt, Priority.ALWAYS);
    prompt.setMaxWidth(Double.MAX_VALUE);
    HBox row =
        new HBox(
            prompt,
            field,
            reasons,
            Written.button(words.get("skeleton.undo"), "skeleton-undo", model::undo, "quiet"),
            Written.button(
                words.get("skeleton.more"), "skeleton-more", model::anotherTake, "quiet"));
    row.getStyleClass().add("page-row");
    return row;
  }

  private HBox foot() {
    Label says = Written.told(model.sentenceProperty(), "skeleton-sentence", "strong");
    HBox.setHgrow(says, Priority.ALWAYS);
    says.setMaxWidth(Double.MAX_VALUE);
    HBox row =
        new HBox(
            says,
            Written.button(words.get("skeleton.store"), "skeleton-store", model::store, "record"));
    row.getStyleClass().add("page-row");
    return row;
  }

  private ToggleButton sideButton(Side side) {
    ToggleButton button =
        new ToggleButton(words.get("side." + side.name().toLowerCase(java.util.Locale.ROOT)));
    button.setId("skeleton-" + side.name().toLowerCase(java.util.Locale.ROOT));
    button.getStyleClass().setAll("page-tab");
    button.setOnAction(
        event -> {
          model.choose(side);
          sides();
          field.requestFocus();
        });
    return button;
  }

  private void elements(Optional<Element> chosen) {
    elements.getChildren().clear();
    for (Element one : model.elements()) {
      Button button = new Button(one.name());
      button.setId("element-" + one.key());
      button.getStyleClass().setAll("skeleton-element");
      if (chosen.filter(one::equals).isPresent()) {
        button.getStyleClass().add("skeleton-element-on");
      }
      button.setMaxWidth(Double.MAX_VALUE);
      button.setOnAction(
          event -> {
            model.choose(one);
            field.requestFocus();
          });
      elements.getChildren().add(button);
    }
    sides();
  }

  private void sides() {
    boolean axial =
        model.elementProperty().get().filter(e -> e.symmetry() == Symmetry.AXIAL).isPresent();
    left.setVisible(!axial);
    right.setVisible(!axial);
    left.setSelected(model.sideProperty().get() == Side.LEFT);
    right.setSelected(model.sideProperty().get() == Side.RIGHT);
  }

  private void rows() {
    table.getChildren().clear();
    boolean axial =
        model.elementProperty().get().filter(e -> e.symmetry() == Symmetry.AXIAL).isPresent();
    table.add(Written.label(words.get("skeleton.code"), "note"), 0, 0);
    table.add(Written.label(words.get("skeleton.name"), "note"), 1, 0);
    table.add(Written.label(words.get(axial ? "side.axial" : "side.left"), "note"), 2, 0);
    if (!axial) {
      table.add(Written.label(words.get("side.right"), "note"), 3, 0);
      table.add(Written.label(words.get("skeleton.difference"), "note"), 4, 0);
    }
    for (int i = 0; i < model.rows().size(); i++) {
      SkeletonRow row = model.rows().get(i);
      table.add(Written.label(row.code().value(), "strong"), 0, i + 1);
      table.add(Written.wrapped(row.name()), 1, i + 1);
      table.add(value(row.left(), row.waiting() == SkeletonRow.Waiting.LEFT), 2, i + 1);
      if (!axial) {
        table.add(value(row.right(), row.waiting() == SkeletonRow.Waiting.RIGHT), 3, i + 1);
        table.add(difference(row), 4, i + 1);
      }
    }
  }

  private Label value(String text, boolean waits) {
    Label label = Written.label(waits ? words.get("skeleton.waits", text) : text);
    label.getStyleClass().add(waits ? "skeleton-waits" : "skeleton-value");
    return label;
  }

  private Label difference(SkeletonRow row) {
    return row.standing() == SkeletonRow.Standing.DIFFER
        ? Written.label(words.get("skeleton.differ", row.difference()), "warning")
        : Written.label(row.difference(), "grey");
  }
}

package org.comparanda.gui.shelf.skeleton;

import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.comparanda.capture.NamedKey;
import org.comparanda.gui.capture.KeyHints;
import org.comparanda.gui.capture.KeysCard;
import org.comparanda.gui.capture.Notices;
import org.comparanda.gui.capture.OutlineCard;
import org.comparanda.gui.capture.StateCard;
import org.comparanda.gui.capture.Veil;
import org.comparanda.gui.control.PlainScroll;
import org.comparanda.gui.shelf.keeping.MovePane;
import org.comparanda.gui.shelf.keeping.MoveViewModel;
import org.comparanda.gui.shelf.keeping.Written;
import org.comparanda.gui.text.Words;
import org.comparanda.register.AnimalCard;
import org.comparanda.register.BonePlace;
import org.comparanda.taxon.TaxonName;

/**
 * A skeleton being measured: elements at the left, both sides of one in the middle, what to measure
 * at the right.
 */
public final class SkeletonPage extends StackPane {
  private final SkeletonViewModel model;
  private final MoveViewModel moves;
  private final Words words;
  private final ObservableValue<Object> drawn;
  private final SidesTable table;
  private final StateCard state;
  private final OutlineCard outline;
  private final StackPane right = new StackPane();
  private final SkeletonBar bar;
  private final Veil veil;

  /**
   * The page.
   *
   * @param nanos a clock that only goes forward, for telling a caliper from a hand
   * @param close leaves it
   */
  public SkeletonPage(
      SkeletonViewModel model, MoveViewModel moves, LongSupplier nanos, Runnable close) {
    this.model = model;
    this.moves = moves;
    words = model.room().words();
    Words benchWords = model.room().reading().words();
    setId("skeleton-page");
    drawn =
        Bindings.createObjectBinding(
            Object::new, model.elementProperty(), model.inHand().rows()); // another one each time
    table = new SidesTable(model, nanos);
    state = new StateCard(model.inHand().state(), benchWords, nanos, () -> stop());
    outline = outline(benchWords);
    bar = new SkeletonBar(model);
    right.getStyleClass().add("skeleton-right");
    OutlineCard large = outline(benchWords);
    large.setId("outline-large");
    large.getStyleClass().add("outline-large");
    large
        .visibleProperty()
        .bind(model.inHand().definitionLargeProperty().or(outline.drawing().hoverProperty()));
    large.setMinHeight(0);
    large.setPrefHeight(0);
    StackPane middle = new StackPane(measuring(close), large);
    HBox.setHgrow(middle, Priority.ALWAYS);
    HBox halves = new HBox(new ElementList(model), middle, right);
    halves.getStyleClass().add("halves");
    Veil over =
        new Veil(
            model.inHand().readings(),
            model.inHand().question(),
            model.inHand().caliper(),
            benchWords,
            nanos,
            this::focus);
    halves.disableProperty().bind(over.visibleProperty());
    getChildren().addAll(halves, over);
    veil = over;
    listen();
    showRight();
  }

  private void stop() {
    model.inHand().readings().pressed(NamedKey.STOP);
  }

  private OutlineCard outline(Words benchWords) {
    return new OutlineCard(
        model.inHand().readings(), drawn, () -> model.inHand().sketch(), benchWords);
  }

  private void listen() {
    model.inHand().sideProperty().addListener((o, was, is) -> showRight());
    model.elementProperty().addListener((o, was, is) -> focus());
    model.cardProperty().addListener((o, was, is) -> showRight());
    model.inHand().state().questionsProperty().addListener((o, was, is) -> showRight());
    bar.state().selectedProperty().addListener((o, was, is) -> showRight());
    bar.who().setOnAction(event -> focusBone());
    model
        .keysShownProperty()
        .addListener(
            (o, was, is) -> {
              if (is) {
                veil.lay(keys(), "#keys-close");
              } else {
                veil.lift();
              }
            });
    addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
  }

  private KeysCard keys() {
    return new KeysCard(
        model.room().reading().words(),
        () -> model.room().keyCard().get().toString(),
        () -> model.keysShownProperty().set(false));
  }

  private void pressed(KeyEvent event) {
    boolean stop = event.getCode() == KeyCode.H && event.isShortcutDown() && event.isShiftDown();
    if (stop) {
      event.consume();
      stop();
    } else if (event.getCode() == KeyCode.F1 && event.isShiftDown()) {
      event.consume();
      model.keysShownProperty().set(true);
    } else if (event.getCode() == KeyCode.PAGE_DOWN || event.getCode() == KeyCode.PAGE_UP) {
      event.consume();
      model.step(event.getCode() == KeyCode.PAGE_DOWN ? 1 : -1);
    }
  }

  private VBox measuring(Runnable close) {
    Notices notices =
        new Notices(
            model.inHand().readings(),
            model.room().reading().words(),
            model.room().reading().numbers());
    PlainScroll scroll = new PlainScroll(new VBox(table, notices));
    VBox.setVgrow(scroll, Priority.ALWAYS);
    List<Node> parts =
        List.of(
            head(close),
            bar,
            scroll,
            new KeyHints(model.inHand().readings(), model.room().reading().words()),
            move(),
            foot());
    VBox measuring = new VBox();
    Runnable show =
        () ->
            measuring
                .getChildren()
                .setAll(model.stopped() ? List.of(parts.get(0), new AsideCard(model)) : parts);
    model.cardProperty().addListener((o, was, is) -> show.run());
    show.run();
    measuring.getStyleClass().addAll("card", "skeleton");
    return measuring;
  }

  private HBox head(Runnable close) {
    Label number = Written.label("", "reading");
    Label taxon = Written.label("", "taxon");
    ObservableValue<Optional<AnimalCard>> card = model.cardProperty();
    number.textProperty().bind(card.map(is -> is.map(c -> c.id().value()).orElse("")));
    taxon
        .textProperty()
        .bind(card.map(is -> is.flatMap(c -> c.animal().taxon()).map(TaxonName::value).orElse("")));
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

  /** Open while a bone is moved to where it belongs. */
  private VBox move() {
    MovePane pane = new MovePane(moves, () -> model.cardProperty().get());
    Label over = Written.label(words.get("why"), "note");
    TextField reason =
        Written.field(model.signature().whyProperty(), "skeleton-why", words.get("why.prompt"));
    over.setLabelFor(reason);
    HBox why =
        new HBox(
            over,
            reason,
            Written.button(
                words.get("move.leave"),
                "move-leave",
                () -> model.movingProperty().set(false),
                "quiet"));
    why.getStyleClass().add("page-row");
    HBox.setHgrow(reason, Priority.ALWAYS);
    VBox move = new VBox(pane, why);
    move.getStyleClass().add("bone-move");
    move.visibleProperty().bind(model.movingProperty());
    move.managedProperty().bind(move.visibleProperty());
    model
        .movingProperty()
        .addListener(
            (o, was, is) -> {
              if (is) {
                pane.offer(places());
                moves.show(
                    model.bones().map(b -> b.bone(model.inHand().sideProperty().get()).place()));
                pane.focus();
              } else {
                focus();
              }
            });
    return move;
  }

  /** The bones of the card and those that are only measured so far. */
  private List<BonePlace> places() {
    return model.cardProperty().get().stream()
        .flatMap(
            card ->
                Stream.concat(
                    card.animal().bones().stream().map(BonePlace::of),
                    model.room().skeletons().of(card.id()).stream().map(b -> b.place())))
        .distinct()
        .toList();
  }

  private HBox foot() {
    Label says = Written.told(model.sentenceProperty(), "skeleton-sentence", "strong");
    HBox.setHgrow(says, Priority.ALWAYS);
    says.setMaxWidth(Double.MAX_VALUE);
    HBox row =
        new HBox(
            says,
            Written.button(
                words.get("skeleton.move"),
                "skeleton-move",
                () -> model.movingProperty().set(!model.movingProperty().get()),
                "quiet"),
            Written.button(words.get("skeleton.next"), "skeleton-next", () -> model.step(1)),
            Written.button(words.get("skeleton.store"), "skeleton-store", model::store, "record"));
    row.getStyleClass().add("page-row");
    return row;
  }

  private boolean asking() {
    return model.inHand().state().questionsProperty().get().isPresent();
  }

  private void showRight() {
    right.setVisible(!model.stopped());
    right.setManaged(!model.stopped());
    right.getChildren().setAll(asking() || bar.state().isSelected() ? state : outline);
    focus();
  }

  /** The state is asked first, then the readings; who measures before either. */
  private void focus() {
    Platform.runLater(
        () -> {
          if (model.signature().whoProperty().get().isBlank()) {
            bar.who().requestFocus();
          } else if (!bar.who().isFocused()) {
            focusBone();
          }
        });
  }

  private void focusBone() {
    if (asking()) {
      state.keys().requestFocus();
    } else {
      table.field().requestFocus();
    }
  }
}

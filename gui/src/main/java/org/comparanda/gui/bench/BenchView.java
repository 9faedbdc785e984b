package org.comparanda.gui.bench;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import org.comparanda.bone.WhichBone;
import org.comparanda.gui.caliper.Answering;
import org.comparanda.gui.capture.KeysCard;
import org.comparanda.gui.capture.OutlineCard;
import org.comparanda.gui.capture.StateCard;
import org.comparanda.gui.capture.StopCard;
import org.comparanda.gui.capture.Veil;
import org.comparanda.gui.control.FilePlace;
import org.comparanda.gui.control.HazardsCard;
import org.comparanda.gui.control.PlainScroll;
import org.comparanda.gui.control.falling.FallingLine;
import org.comparanda.gui.photos.PhotoStrip;
import org.comparanda.gui.photos.PictureDialog;
import org.comparanda.gui.text.Numbers;
import org.comparanda.gui.text.Words;
import org.comparanda.reference.AnimalId;

/**
 * The Bench: at the left what to measure and the readings, at the right the sentence, the falling
 * line, the drawer, and what follows; at the foot the call.
 */
public final class BenchView extends StackPane {
  private static final double WIDE_EM = 79;

  private final BenchViewModel bench;
  private boolean cameBefore;
  private final Words words;
  private final LongSupplier nanos;
  private final Text probe = new Text();
  private final HeaderBar header;
  private final ReadingsCard readings;
  private final FallingCard falling;
  private final StackPane upperLeft = new StackPane();
  private final VBox page = new VBox();
  private final PlainScroll scroll = new PlainScroll(page);
  private boolean shownStopped;
  private Optional<WhichBone> whichBone = Optional.empty();
  private final Veil veil;
  private final VBox left;
  private final CallBar call;
  private final AnswerCard answer;
  private final StackPane answers;
  private final OutlineCard outline;
  private final StateCard state;
  private final Label standing = new Label();
  private final HintBar hintBar;
  private final Node photos;
  private final Numbers numbers;

  /**
   * @param nanos a clock that only goes forward, for telling a caliper from a hand
   */
  public BenchView(BenchViewModel bench, Words words, Numbers numbers, LongSupplier nanos) {
    this.bench = bench;
    this.words = words;
    this.nanos = nanos;
    this.numbers = numbers;
    getStyleClass().addAll("screen", "bench");
    parentProperty().addListener((o, was, is) -> comes(is != null));
    hintBar = new HintBar(bench.hints(), words);
    standing.setId("standing");
    standing.getStyleClass().add("standing");
    standing.setWrapText(true);
    standing.setMinHeight(USE_PREF_SIZE);
    standing.textProperty().bind(bench.errands().standingProperty());
    standing.visibleProperty().bind(standing.textProperty().isNotEmpty());
    standing.managedProperty().bind(standing.visibleProperty());
    header = new HeaderBar(bench, words);
    readings = new ReadingsCard(bench.readings(), words, numbers, nanos);
    falling = new FallingCard(bench, words);
    outline = AnswerColumn.outline(bench, words);
    state = new StateCard(bench.state(), words, nanos, bench::askStop);
    photos = photos();
    answer = new AnswerCard(bench, words);
    answers = new AnswerColumn(bench, words, numbers, answer, falling, outline);
    left = new VBox(upperLeft, readings);
    left.getStyleClass().add("bench-left");
    VBox.setVgrow(upperLeft, Priority.ALWAYS);
    call = new CallBar(bench, words, nanos, this::focusReading);
    page.getStyleClass().add("bench-page");
    scroll.setFitToHeight(true);
    veil =
        new Veil(
            bench.readings(),
            bench.errands().asking(),
            bench.caliper(),
            words,
            nanos,
            this::focusReading);
    scroll.disableProperty().bind(veil.visibleProperty());
    getChildren().addAll(scroll, probe, veil);
    probe.setVisible(false);
    probe.setManaged(false);
    listen();
    showLeft();
    arrange();
  }

  /** A hint takes a line from the drawings alone: what is styled anew with it stays little. */
  /** Whenever it comes into the window again, the shelf may have been changed. */
  private void comes(boolean here) {
    if (here && cameBefore) {
      bench.lookAgain();
    }
    cameBefore = cameBefore || here;
  }

  private void makeRoom(boolean hint) {
    for (Node drawing : List.of(falling, outline.drawing())) {
      drawing.getStyleClass().remove("with-hint");
      if (hint) {
        drawing.getStyleClass().add("with-hint");
      }
    }
  }

  /** The falling line, whose motion can be switched off. */
  public FallingLine fallingLine() {
    return falling.line();
  }

  /** What happens when an animal's dot is clicked. */
  public void setOnAnimal(Consumer<AnimalId> action) {
    falling.line().setOnAnimal(id -> action.accept(new AnimalId(id)));
  }

  /** The key "Which bone is it?", by the button beside the element or F4. */
  public void setWhichBone(WhichBone key) {
    whichBone = Optional.of(key);
    header.setOnWhich(this::askWhichBone);
  }

  private void askWhichBone() {
    boolean open = bench.boneProperty().get().isPresent() && !bench.stopped();
    whichBone.filter(key -> open).ifPresent(key -> veil.lay(which(key), "#which-1"));
  }

  private WhichBoneCard which(WhichBone key) {
    return new WhichBoneCard(
        bench.whichBone(key, veil::lift),
        bench.sketches(),
        words,
        nanos,
        bench::askStop,
        veil::lift);
  }

  /**
   * Where the picture is saved.
   *
   * @param note stands under it: whose data they are
   */
  public void setOnSave(FilePlace files, String note) {
    falling.setOnSave(files, note);
  }

  private void listen() {
    hintBar.visibleProperty().subscribe(this::makeRoom);
    header.state().selectedProperty().addListener((o, was, is) -> showLeft());
    header.photos().selectedProperty().addListener((o, was, is) -> showLeft());
    bench
        .state()
        .questionsProperty()
        .addListener(
            (o, was, is) -> {
              if (was.isPresent() != is.isPresent()) {
                showLeft();
                focusReading();
              }
            });
    bench
        .boneProperty()
        .addListener(
            (o, was, is) -> {
              boolean another = !was.map(b -> b.id()).equals(is.map(b -> b.id()));
              if (another) {
                header.photos().setSelected(false);
                header.state().setSelected(false);
                focusReading();
              }
              if (was.isPresent() != is.isPresent() || shownStopped != bench.stopped()) {
                arrange();
              }
            });
    bench.trayProperty().addListener((o, was, is) -> arrange());
    bench.errands().keysShownProperty().addListener((o, was, is) -> showKeys());
    addEventFilter(
        KeyEvent.KEY_PRESSED,
        new FarKeys(bench, falling.saver()::fire, this::askWhichBone, answer.why()));
    parentProperty()
        .addListener(
            (o, was, is) -> {
              if (is != null) {
                arrange(); // whoever comes back to the Bench types at once
                focusReading();
              }
            });
    widthProperty().addListener((o, was, is) -> arrange());
    probe.fontProperty().addListener((o, was, is) -> arrange());
  }

  /** Side by side where there is room for both; large text stacks them and scrolls. */
  private void arrange() {
    boolean wide = getWidth() == 0 || getWidth() >= WIDE_EM * probe.getFont().getSize();
    Pane middle = wide ? new HBox(left, answers) : new VBox(left, answers);
    HBox.setHgrow(answers, Priority.ALWAYS);
    VBox.setVgrow(middle, Priority.ALWAYS);
    middle.getStyleClass().add("bench-middle");
    left.getStyleClass().removeAll("bench-left-wide");
    if (wide) {
      left.getStyleClass().add("bench-left-wide");
    }
    shownStopped = bench.stopped();
    page.getChildren().setAll(header, hintBar, standing);
    if (bench.hazards().isPresent()) {
      page.getChildren().add(placed(hazards(bench.hazards().get())));
    } else if (bench.boneProperty().get().isEmpty()) {
      page.getChildren().add(placed(new EmptyBench(bench, words, nanos).card()));
    } else if (bench.stopped()) {
      page.getChildren().add(placed(StopCard.aside(words, bench.contactCard())));
    } else {
      page.getChildren().addAll(middle, call);
    }
  }

  /** The hazards of the lot, before its first bone. */
  private HazardsCard hazards(String text) {
    HazardsCard card =
        new HazardsCard(
            words.get("hazards.title"),
            text,
            words.get("hazards.then"),
            words.get("hazards.read"),
            () -> {
              bench.hazardsRead();
              arrange();
              focusReading();
            });
    Answering.on(card.button(), nanos, key -> {});
    Platform.runLater(card.button()::requestFocus);
    return card;
  }

  private void showKeys() {
    if (bench.errands().keysShownProperty().get()) {
      Runnable close = () -> bench.errands().keysShownProperty().set(false);
      veil.lay(new KeysCard(words, bench.errands()::keyPage, close), "#keys-close");
    } else {
      veil.lift();
    }
  }

  private boolean asking() {
    return bench.state().questionsProperty().get().isPresent();
  }

  /** The state is asked first, then the readings. */
  private void focusReading() {
    Platform.runLater(
        () -> {
          if (asking()) {
            state.keys().requestFocus();
          } else {
            readings.field().requestFocus();
          }
        });
  }

  private void showLeft() {
    boolean stateFirst = header.state().isSelected() || asking();
    Node upper = header.photos().isSelected() ? photos : outline;
    upperLeft.getChildren().setAll(stateFirst ? state : upper);
    readings.setVisible(!asking());
    readings.setManaged(!asking());
  }

  private static StackPane placed(VBox card) {
    StackPane place = new StackPane(card);
    VBox.setVgrow(place, Priority.ALWAYS);
    return place;
  }

  private VBox photos() {
    Label title = new Label(words.get("photos"));
    title.getStyleClass().add("title");
    VBox card =
        new VBox(
            title,
            new PhotoStrip(
                bench.photos(),
                Words.of("photos", numbers.locale()),
                new PictureDialog(() -> getScene().getWindow())));
    card.getStyleClass().addAll("card", "photo-card");
    return card;
  }
}

package org.comparanda.gui.bench;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javafx.collections.ListChangeListener;
import javafx.collections.SetChangeListener;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.comparanda.bone.Element;
import org.comparanda.bone.Flag;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.gui.capture.StateCard;
import org.comparanda.gui.capture.StateViewModel;
import org.comparanda.gui.control.Choice;
import org.comparanda.gui.control.Term;
import org.comparanda.gui.photos.PhotosViewModel;
import org.comparanda.gui.text.Words;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;

/** Which tray, which bone, what of it, in what state; and STOP. */
final class HeaderBar extends BorderPane {
  private final BenchViewModel bench;
  private final Words words;
  private final ToggleButton state = new ToggleButton();
  private final ToggleButton photos = new ToggleButton();
  private final Button which = new Button();
  private boolean showing;

  HeaderBar(BenchViewModel bench, Words words) {
    this.bench = bench;
    this.words = words;
    getStyleClass().add("header-bar");
    which.setText(words.get("which.button"));
    which.setId("which");
    which.getStyleClass().setAll("quiet", "step", "which");
    which.setAccessibleText(words.get("which.title"));
    Tooltip.install(which, new Tooltip(words.get("which.title")));
    HBox element = new HBox(element(), which);
    element.getStyleClass().add("bone-choice");
    FlowPane choices =
        new FlowPane(tray(), bone(), element, side(), portion(), stateChip(), photoChip());
    choices.getStyleClass().add("header-choices");
    choices
        .getChildren()
        .subList(1, choices.getChildren().size())
        .forEach(
            choice -> choice.visibleProperty().bind(bench.boneProperty().map(Optional::isPresent)));
    setCenter(choices);
    Words terms = words.part("terms");
    for (Node choice : choices.getChildren()) {
      for (String term : List.of("tray", "bone", "element", "side", "portion")) {
        Optional.ofNullable(choice.lookup("#" + term))
            .ifPresent(box -> Term.explain(box, terms.get(term)));
      }
    }
    Term.explain(state, terms.get("state"));
    Button stop = stop();
    BorderPane.setAlignment(stop, Pos.BOTTOM_RIGHT);
    setRight(stop);
  }

  /** What the button "Which bone is it?" does. */
  void setOnWhich(Runnable action) {
    which.setOnAction(event -> action.run());
  }

  /** Open while the state of the bone is shown. */
  ToggleButton state() {
    return state;
  }

  /** Open while the pictures of the bone are shown. */
  ToggleButton photos() {
    return photos;
  }

  private Choice<Tray> tray() {
    Choice<Tray> choice = new Choice<>("tray", words.get("tray"), bench.trays(), Tray::name);
    choice.box().setPromptText(words.get("tray.choose"));
    choice.box().valueProperty().addListener((o, was, is) -> unless(is, bench::choose));
    bench.trayProperty().addListener((o, was, is) -> show(choice.box(), is));
    return choice;
  }

  private HBox bone() {
    Choice<TrayBone> choice = new Choice<>("bone", words.get("bone"), bench.bones(), this::named);
    choice.box().valueProperty().addListener((o, was, is) -> unless(is, bench::choose));
    bench
        .bones()
        .addListener(
            (ListChangeListener<TrayBone>)
                change -> {
                  showing = true;
                  choice.box().getItems().setAll(bench.bones());
                  bench.boneProperty().get().ifPresent(choice.box()::setValue);
                  showing = false;
                });
    bench.boneProperty().addListener((o, was, is) -> show(choice.box(), is));
    HBox row = new HBox(step("bone-before", "\u2039", -1), choice, step("bone-after", "\u203a", 1));
    row.getStyleClass().add("bone-choice");
    return row;
  }

  private <T> void show(ComboBox<T> box, Optional<T> value) {
    showing = true;
    value.ifPresentOrElse(box::setValue, () -> box.getSelectionModel().clearSelection());
    showing = false;
  }

  private <T> void unless(T chosen, java.util.function.Consumer<T> choose) {
    if (!showing && chosen != null) {
      choose.accept(chosen);
    }
  }

  private String named(TrayBone b) {
    int place = bench.bones().stream().map(TrayBone::id).toList().indexOf(b.id()) + 1;
    return words.get("bone.of", b.id().value(), place, bench.bones().size());
  }

  private Button step(String id, String sign, int by) {
    Button button = new Button(sign);
    button.setId(id);
    button.setAccessibleText(words.get(by < 0 ? "bone.before" : "bone.after"));
    button.getStyleClass().setAll("quiet", "step");
    button.setOnAction(event -> bench.step(by));
    return button;
  }

  private Choice<Optional<Element>> element() {
    List<Optional<Element>> all = bench.state().elements().stream().map(Optional::of).toList();
    return new Choice<>("element", words.get("element"), all, e -> e.map(Element::name).orElse(""))
        .bind(bench.state().elementProperty());
  }

  private Choice<Side> side() {
    return new Choice<>(
            "side", words.get("side"), Arrays.asList(Side.values()), s -> words.get("side." + s))
        .bind(bench.state().sideProperty());
  }

  private Choice<Portion> portion() {
    return new Choice<>(
            "portion",
            words.get("portion"),
            Arrays.asList(Portion.values()),
            p -> words.get("portion." + p))
        .bind(bench.state().portionProperty());
  }

  private VBox stateChip() {
    Label over = new Label(words.get("state"));
    over.getStyleClass().add("note");
    state.setId("state");
    state.getStyleClass().setAll("state-chip");
    StateViewModel s = bench.state();
    Runnable show =
        () -> {
          state.setText(StateCard.summary(s, words));
          state.setAccessibleText((words.get("state") + " " + state.getText()).strip());
        };
    s.proximalProperty().addListener((o, was, is) -> show.run());
    s.distalProperty().addListener((o, was, is) -> show.run());
    s.elementProperty().addListener((o, was, is) -> show.run());
    s.flags().addListener((SetChangeListener<Flag>) change -> show.run());
    show.run();
    VBox chip = new VBox(over, state);
    chip.getStyleClass().add("choice");
    return chip;
  }

  private VBox photoChip() {
    Label over = new Label(words.get("photos"));
    over.getStyleClass().add("note");
    photos.setId("photos-chip");
    photos.setAccessibleText(words.get("photos"));
    photos.getStyleClass().setAll("state-chip");
    Runnable show = () -> photos.setText(words.get("photos.count", bench.photos().shown().size()));
    bench
        .photos()
        .shown()
        .addListener((ListChangeListener<PhotosViewModel.Shown>) change -> show.run());
    show.run();
    VBox chip = new VBox(over, photos);
    chip.getStyleClass().add("choice");
    return chip;
  }

  private Button stop() {
    Button stop = new Button(words.get("stop"));
    stop.setId("stop");
    stop.getStyleClass().setAll("stop");
    stop.setAccessibleHelp(words.get("stop.help"));
    stop.visibleProperty().bind(bench.boneProperty().map(Optional::isPresent));
    stop.setMinWidth(USE_PREF_SIZE);
    stop.setOnAction(event -> bench.askStop());
    return stop;
  }
}

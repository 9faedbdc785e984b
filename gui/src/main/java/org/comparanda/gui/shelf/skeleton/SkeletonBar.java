package org.comparanda.gui.shelf.skeleton;

import java.util.Arrays;
import java.util.Locale;
import javafx.collections.SetChangeListener;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.comparanda.bone.Flag;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Symmetry;
import org.comparanda.gui.capture.StateCard;
import org.comparanda.gui.capture.StateViewModel;
import org.comparanda.gui.control.Choice;
import org.comparanda.gui.shelf.keeping.Written;
import org.comparanda.gui.shelf.skeleton.SkeletonViewModel.Hands;
import org.comparanda.gui.text.Words;

/** Who measures, which sides, which part of the bone in hand and its state, the caliper. */
final class SkeletonBar extends FlowPane {
  private final SkeletonViewModel model;
  private final Words words;
  private final Words benchWords;
  private final TextField who;
  private final ToggleButton state = new ToggleButton();

  SkeletonBar(SkeletonViewModel model) {
    this.model = model;
    words = model.room().words();
    benchWords = model.room().reading().words();
    getStyleClass().addAll("page-row", "skeleton-bar");
    who = Written.field(model.signature().whoProperty(), "skeleton-who", words.get("who.prompt"));
    who.getStyleClass().add("who");
    Label over = Written.label(words.get("who"), "note");
    over.setLabelFor(who);
    Label caliper = Written.label("", "note");
    caliper.setId("skeleton-caliper");
    Runnable standing =
        () ->
            caliper.setText(
                model.inHand().caliper().standing().orElse(words.get("skeleton.caliper.none")));
    model.inHand().caliper().inHandProperty().addListener((o, was, is) -> standing.run());
    standing.run();
    getChildren()
        .addAll(
            new VBox(over, who), hands(), portion(), new PiecesBox(model), stateChip(), caliper);
    getChildren().forEach(child -> child.getStyleClass().add("choice"));
  }

  TextField who() {
    return who;
  }

  /** Open while the state of the bone in hand is shown. */
  ToggleButton state() {
    return state;
  }

  private VBox hands() {
    HBox row = new HBox();
    row.getStyleClass().add("page-tabs");
    for (Hands one : Hands.values()) {
      String name = one.name().toLowerCase(Locale.ROOT);
      ToggleButton button = new ToggleButton(words.get("hands." + name));
      button.setId("skeleton-" + name);
      button.getStyleClass().setAll("page-tab");
      button.setOnAction(
          event -> {
            model.choose(one);
            button.setSelected(true);
          });
      model.handsProperty().addListener((o, was, is) -> button.setSelected(is == one));
      button.setSelected(model.handsProperty().get() == one);
      row.getChildren().add(button);
    }
    VBox box = new VBox(Written.label(words.get("hands"), "note"), row);
    box.visibleProperty()
        .bind(
            model
                .elementProperty()
                .map(e -> e.filter(one -> one.symmetry() == Symmetry.SIDED).isPresent()));
    box.managedProperty().bind(box.visibleProperty());
    return box;
  }

  private Choice<Portion> portion() {
    return new Choice<>(
            "portion",
            benchWords.get("portion"),
            Arrays.asList(Portion.values()),
            p -> benchWords.get("portion." + p))
        .bind(model.inHand().state().portionProperty());
  }

  private VBox stateChip() {
    Label over = Written.label("", "note");
    state.setId("state");
    state.getStyleClass().setAll("state-chip");
    StateViewModel s = model.inHand().state();
    Runnable show =
        () -> {
          over.setText(
              words.get(
                  "skeleton.state",
                  words.get(
                      "side."
                          + model.inHand().sideProperty().get().name().toLowerCase(Locale.ROOT))));
          state.setText(StateCard.summary(s, benchWords));
        };
    s.proximalProperty().addListener((o, was, is) -> show.run());
    s.distalProperty().addListener((o, was, is) -> show.run());
    s.elementProperty().addListener((o, was, is) -> show.run());
    model.inHand().sideProperty().addListener((o, was, is) -> show.run());
    s.flags().addListener((SetChangeListener<Flag>) change -> show.run());
    show.run();
    return new VBox(over, state);
  }
}

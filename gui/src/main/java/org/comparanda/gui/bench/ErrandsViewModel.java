package org.comparanda.gui.bench;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.comparanda.capture.Errand;
import org.comparanda.gui.capture.Ask;
import org.comparanda.gui.capture.CaliperViewModel;
import org.comparanda.gui.capture.Numbered;
import org.comparanda.gui.capture.Question;
import org.comparanda.gui.capture.QuestionViewModel;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.BoneId;
import org.comparanda.tray.Association;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;

/** What can be asked of the bench beside readings: one question at a time, answered by digits. */
public final class ErrandsViewModel {
  private final BenchPlace place;
  private final BenchViewModel bench;
  private final SidesViewModel sides;
  private final CaliperViewModel caliper;
  private final NewBones newBones;
  private final WhatItIs whatItIs;
  private final QuestionViewModel question;
  private final StringProperty standing = new SimpleStringProperty("");
  private final BooleanProperty keysShown = new SimpleBooleanProperty(false);

  ErrandsViewModel(
      BenchPlace place, BenchViewModel bench, SidesViewModel sides, CaliperViewModel caliper) {
    this.place = place;
    this.bench = bench;
    this.sides = sides;
    this.caliper = caliper;
    caliper.inHandProperty().addListener((o, was, is) -> show());
    newBones = new NewBones(place, bench, this::ask);
    whatItIs = new WhatItIs(place, bench);
    question = new QuestionViewModel(bench.readings());
  }

  /** The question that lies over the bench. */
  public ObjectProperty<Optional<Question>> questionProperty() {
    return question.questionProperty();
  }

  /** Why the last answer could not be taken; mostly empty. */
  public StringProperty refusalProperty() {
    return question.refusalProperty();
  }

  /** The question with what its answer does. */
  QuestionViewModel asking() {
    return question;
  }

  /** What the bench is about beyond this bone: a batch, a pair, bones found together, pieces. */
  public StringProperty standingProperty() {
    return standing;
  }

  /** Whether the table of all keys is shown. */
  public BooleanProperty keysShownProperty() {
    return keysShown;
  }

  /** Writes the table of keys as a page and says where it lies. */
  String keyPage() {
    return place.slips().keyCard().toString();
  }

  /** Asks for the first bone of a tray that holds none. */
  public void firstBone() {
    bench.trayProperty().get().ifPresent(newBones::another);
  }

  /** Lists what can be asked for. */
  void list() {
    List<Question.Choice> all =
        Arrays.stream(Errand.values())
            .map(e -> new Question.Choice("" + e.number(), words().get("errand." + e.name())))
            .toList();
    ask(
        new Ask(
            new Question(words().get("errands.title"), words().get("errands.how"), all),
            typed -> {
              Optional<Errand> errand = Errand.ofText("0" + typed);
              errand.ifPresent(bench::run);
              return errand.isPresent()
                  ? Optional.empty()
                  : Optional.of(words().get("answer.unknown", typed));
            }));
  }

  /** Does what was asked for, or asks what it needs to know. */
  void run(Errand errand) {
    if (errand == Errand.CALIPER) {
      ask(caliper.ask());
      return;
    }
    if (errand == Errand.KEY_CARD) {
      keysShown.set(true);
      return;
    }
    bench.trayProperty().get().ifPresent(tray -> run(errand, tray));
    show();
  }

  private void run(Errand errand, Tray tray) {
    Optional<TrayBone> bone = bench.boneProperty().get();
    if (bone.isEmpty()) {
      newBones.another(tray);
      return;
    }
    TrayBone inHand = bone.get();
    switch (errand) {
      case MORE_LIKE_THIS -> newBones.more(tray, inHand);
      case OTHER_SIDE -> sides.ask(tray, inHand).ifPresent(this::ask);
      case OTHER_ELEMENT -> ask(whatItIs.element(inHand));
      case PIECES -> ask(whatItIs.pieces(inHand));
      case ACROSS_BREAK -> whatItIs.acrossBreak(inHand);
      case FOUND_TOGETHER -> ask(together(inHand));
      case SLIP -> slip(inHand);
      case DEFINITION, CALIPER, KEY_CARD -> throw new IllegalStateException(errand.name());
    }
  }

  private void slip(TrayBone bone) {
    if (bone.standing() == TrayBone.Standing.STOPPED) {
      bench.readings().say(words().get("slip.stopped"));
    } else if (bench.coveredProperty().get()) {
      bench.readings().say(words().get("slip.covered"));
    } else {
      save(() -> place.slips().slip(bone.id()), "slip.saved");
    }
  }

  /** Off the window's thread, since it writes a file; then says where it lies. */
  private void save(Supplier<Path> file, String said) {
    place
        .work()
        .execute(
            () -> {
              String where = file.get().toString();
              place.ui().execute(() -> bench.readings().say(words().get(said, where)));
            });
  }

  /** Puts a question over the bench. */
  void ask(Ask next) {
    question.ask(next);
  }

  /** Takes an answer; one that can't be taken leaves the question open. */
  void answer(String typed) {
    question.answer(typed);
    show();
  }

  private Ask together(TrayBone bone) {
    String now =
        others(bone).isEmpty()
            ? words().get("together.none")
            : words().get("together.with", others(bone));
    return new Ask(
        new Question(
            words().get("together.title"),
            now + " " + words().get("together.how"),
            Numbered.choices(bench.bones(), b -> b.id().value())),
        typed -> together(bone, typed));
  }

  private Optional<String> together(TrayBone bone, String typed) {
    if (typed.equals("0")) {
      place.books().associations().part(bone.id());
      return Optional.empty();
    }
    Optional<TrayBone> other =
        Numbered.of(bench.bones(), typed).filter(b -> !b.id().equals(bone.id()));
    other.ifPresent(b -> place.books().associations().join(bone.id(), b.id()));
    return other.isPresent() ? Optional.empty() : Optional.of(words().get("answer.unknown", typed));
  }

  private String others(TrayBone bone) {
    return place.books().associations().of(bone.id()).map(Association::bones).stream()
        .flatMap(List::stream)
        .filter(id -> !id.equals(bone.id()))
        .map(BoneId::value)
        .collect(Collectors.joining(", "));
  }

  /** Says anew what the bench is about. */
  void show() {
    List<String> parts = new ArrayList<>();
    bench.trayProperty().get().flatMap(newBones::standing).ifPresent(parts::add);
    bench
        .boneProperty()
        .get()
        .ifPresent(
            bone -> {
              sides
                  .pair()
                  .ifPresent(
                      p ->
                          parts.add(
                              words().get("pair.standing", p.left().value(), p.right().value())));
              whatItIs.standing(bone).ifPresent(parts::add);
              caliper.standing().ifPresent(parts::add);
              if (!others(bone).isEmpty()) {
                parts.add(words().get("together.with", others(bone)));
              }
            });
    standing.set(String.join("  \u00b7  ", parts));
  }

  private Words words() {
    return place.words();
  }
}

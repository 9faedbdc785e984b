package org.comparanda.gui.bench;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.comparanda.bone.Element;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.gui.capture.Ask;
import org.comparanda.gui.capture.Numbered;
import org.comparanda.gui.capture.Question;
import org.comparanda.gui.text.Words;
import org.comparanda.tray.Batch;
import org.comparanda.tray.Keying;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;

/** New bones on a tray, each under the next number by the tray's rule: alone or in a batch. */
final class NewBones {
  private static final String BENCH = BenchPlace.BENCH;

  private final BenchPlace place;
  private final BenchViewModel bench;
  private final Consumer<Ask> ask;

  NewBones(BenchPlace place, BenchViewModel bench, Consumer<Ask> ask) {
    this.place = place;
    this.bench = bench;
    this.ask = ask;
  }

  /** The next bone of the batch that is under way, or the question how many it shall hold. */
  void more(Tray tray, TrayBone like) {
    batch(tray).ifPresentOrElse(batch -> take(tray, batch), () -> ask.accept(howMany(tray, like)));
  }

  private Optional<Batch> batch(Tray tray) {
    return keying().batch(BENCH).filter(b -> b.tray().equals(tray.id()));
  }

  private Ask howMany(Tray tray, TrayBone like) {
    return new Ask(
        new Question(
            words().get("batch.title", said(like)),
            words()
                .get(
                    "batch.how",
                    place.books().numbering().next(tray).value(),
                    place.books().numbering().ruleOf(tray.id()).pattern()),
            List.of()),
        typed -> answer(tray, like, typed));
  }

  private Optional<String> answer(Tray tray, TrayBone like, String typed) {
    if (typed.equals("0")) {
      another(tray);
      return Optional.empty();
    }
    int count = typed.isBlank() ? 1 : Numbered.number(typed).orElse(0);
    if (count < 1 || count > Batch.MOST) {
      return Optional.of(words().get("batch.count", typed, Batch.MOST));
    }
    take(tray, Batch.like(like, count));
    return Optional.empty();
  }

  private void take(Tray tray, Batch batch) {
    TrayBone made =
        place
            .books()
            .numbering()
            .put(
                tray,
                id ->
                    TrayBone.fresh(id, tray.id(), batch.element(), batch.side(), batch.portion()));
    if (batch.left() > 1) {
      keying().save(BENCH, batch.withLeft(batch.left() - 1));
    } else {
      keying().endBatch(BENCH);
    }
    bench.choose(made);
  }

  /** Asks what the next bone is, from element to side to portion, and puts it on the tray. */
  void another(Tray tray) {
    keying().endBatch(BENCH);
    List<Element> elements = bench.state().elements();
    ask.accept(
        new Ask(
            new Question(
                words().get("new.element", place.books().numbering().next(tray).value()),
                words().get("new.how"),
                Numbered.choices(elements, Element::name)),
            typed -> {
              Optional<Element> chosen = Numbered.of(elements, typed);
              chosen.ifPresent(e -> side(tray, e));
              return unless(chosen, typed);
            }));
  }

  private void side(Tray tray, Element element) {
    List<Side> sides = Arrays.asList(Side.values());
    ask.accept(
        new Ask(
            new Question(
                words().get("new.side", element.name()),
                words().get("new.how"),
                Numbered.choices(sides, s -> words().get("side." + s))),
            typed -> {
              Optional<Side> chosen = Numbered.of(sides, typed);
              chosen.ifPresent(s -> portion(tray, element, s));
              return unless(chosen, typed);
            }));
  }

  private void portion(Tray tray, Element element, Side side) {
    List<Portion> portions = Arrays.asList(Portion.values());
    ask.accept(
        new Ask(
            new Question(
                words().get("new.portion", element.name()),
                words().get("new.how"),
                Numbered.choices(portions, p -> words().get("portion." + p))),
            typed -> {
              Optional<Portion> chosen = Numbered.of(portions, typed);
              chosen.ifPresent(p -> take(tray, new Batch(tray.id(), element.key(), side, p, 1)));
              return unless(chosen, typed);
            }));
  }

  private Optional<String> unless(Optional<?> chosen, String typed) {
    return chosen.isPresent()
        ? Optional.empty()
        : Optional.of(words().get("answer.unknown", typed));
  }

  /** What is still to come of a batch, with the next number; empty where none is under way. */
  Optional<String> standing(Tray tray) {
    return batch(tray)
        .map(
            b ->
                words()
                    .get("batch.standing", b.left(), place.books().numbering().next(tray).value()));
  }

  private String said(TrayBone bone) {
    String element = place.protocol().element(bone.element()).map(Element::name).orElse("");
    return words()
        .get(
            "bone.said",
            words().get("side." + bone.side()),
            element,
            words().get("portion." + bone.portion()));
  }

  private Keying keying() {
    return place.books().keying();
  }

  private Words words() {
    return place.words();
  }
}

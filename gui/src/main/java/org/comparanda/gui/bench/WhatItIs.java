package org.comparanda.gui.bench;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.comparanda.bone.Element;
import org.comparanda.bone.Portion;
import org.comparanda.gui.capture.Ask;
import org.comparanda.gui.capture.Numbered;
import org.comparanda.gui.capture.Question;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.Measurement;
import org.comparanda.tray.Refit;
import org.comparanda.tray.TrayBone;

/** What the bone in hand is after all: another element, or several pieces that fit each other. */
final class WhatItIs {
  private static final List<Portion> PIECES =
      List.of(Portion.PROXIMAL, Portion.SHAFT, Portion.DISTAL, Portion.OTHER);

  private final BenchPlace place;
  private final BenchViewModel bench;

  WhatItIs(BenchPlace place, BenchViewModel bench) {
    this.place = place;
    this.bench = bench;
  }

  /** As which element it is measured from now on; readings taken before wait at the old one. */
  Ask element(TrayBone bone) {
    List<Element> elements = bench.state().elements();
    return new Ask(
        new Question(
            words().get("element.title", bone.id().value()),
            words().get("element.how"),
            Numbered.choices(elements, Element::name)),
        typed -> {
          Optional<Element> chosen = Numbered.of(elements, typed);
          chosen.ifPresent(e -> change(bone, e));
          return chosen.isPresent()
              ? Optional.empty()
              : Optional.of(words().get("answer.unknown", typed));
        });
  }

  private void change(TrayBone bone, Element element) {
    int taken = bench.readings().values().size();
    bench.state().elementProperty().set(Optional.of(element));
    if (taken > 0 && !element.key().equals(bone.element())) {
      bench.readings().say(words().get("element.changed", element.name(), taken));
    }
  }

  /** Which pieces fit each other; the bone is then what they make together. */
  Ask pieces(TrayBone bone) {
    return new Ask(
        new Question(
            words().get("pieces.title", bone.id().value()),
            words().get("pieces.how"),
            Numbered.choices(PIECES, p -> words().get("portion." + p))),
        typed -> {
          if (!typed.matches("[1-4]{1,12}")) {
            return Optional.of(words().get("pieces.unknown", typed));
          }
          List<Portion> pieces = typed.chars().mapToObj(c -> PIECES.get(c - '1')).toList();
          return Refit.joined(pieces)
              .fold(
                  joined -> {
                    refit(bone, pieces, joined);
                    return Optional.empty();
                  },
                  none -> Optional.of(words().said(none.reason() + " " + none.remedy())));
        });
  }

  private void refit(TrayBone bone, List<Portion> pieces, Portion joined) {
    place.books().refits().save(new Refit(bone.id(), pieces, Set.of()));
    if (bone.portion() == joined) {
      bench.remeasure();
    } else {
      bench.state().portionProperty().set(joined);
    }
    bench.boneProperty().get().flatMap(this::standing).ifPresent(bench.readings()::say);
  }

  /** Marks the measurement that waits as crossing a break, or takes the mark back. */
  void acrossBreak(TrayBone bone) {
    Optional<Refit> refit = place.books().refits().of(bone.id());
    Optional<Measurement> now = bench.readings().currentProperty().get();
    if (refit.isEmpty() || now.isEmpty()) {
      bench.readings().say(words().get("break.none"));
      return;
    }
    Refit marked = refit.get().toggled(now.get().code());
    place.books().refits().save(marked);
    bench.remeasure();
    bench
        .readings()
        .say(
            words()
                .get(
                    marked.crosses(now.get()) ? "break.marked" : "break.unmarked",
                    now.get().code().value()));
  }

  /** How many pieces it is and which measurements cross a break; empty for a bone in one piece. */
  Optional<String> standing(TrayBone bone) {
    return place
        .books()
        .refits()
        .of(bone.id())
        .map(
            refit -> {
              String across =
                  place.protocol().of(bone.element()).stream()
                      .filter(m -> m.needs().isEmpty() || m.needs().contains(bone.portion()))
                      .filter(refit::crosses)
                      .map(m -> m.code().value())
                      .collect(Collectors.joining(", "));
              return across.isEmpty()
                  ? words().get("pieces.standing", refit.pieces().size())
                  : words().get("pieces.across", refit.pieces().size(), across);
            });
  }

  private Words words() {
    return place.words();
  }
}

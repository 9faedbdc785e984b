package org.comparanda.gui.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.WhichBone;

/** The key "Which bone is it?": one question after the other, to an element or to a stop. */
public final class WhichBoneViewModel {
  private final WhichBone key;
  private final Consumer<ElementKey> found;
  private final List<WhichBone.Question> before = new ArrayList<>();
  private final ObjectProperty<Step> step;

  /**
   * @param found what happens when the key has led to an element
   */
  public WhichBoneViewModel(WhichBone key, Consumer<ElementKey> found) {
    this.key = key;
    this.found = found;
    step = new SimpleObjectProperty<>(asked(key.firstQuestion()));
  }

  /** What is asked or said now. */
  public ObjectProperty<Step> stepProperty() {
    return step;
  }

  /**
   * Takes a choice of the question asked, counted from 1; a number without a choice does nothing.
   */
  public void choose(int number) {
    List<WhichBone.Choice> choices = step.get().question().choices();
    if (step.get().stop().isEmpty() && number >= 1 && number <= choices.size()) {
      take(choices.get(number - 1));
    }
  }

  private void take(WhichBone.Choice choice) {
    WhichBone.Question here = step.get().question();
    if (choice.next() instanceof WhichBone.Found leaf) {
      found.accept(leaf.element());
    } else if (choice.next() instanceof WhichBone.Stop stop) {
      before.add(here);
      step.set(new Step(here, before.size(), Optional.of(stop)));
    } else {
      key.after(choice)
          .ifPresent(
              next -> {
                before.add(here);
                step.set(asked(next));
              });
    }
  }

  /** The question before this one; at the first nothing happens. */
  public void back() {
    if (!before.isEmpty()) {
      step.set(asked(before.remove(before.size() - 1)));
    }
  }

  /** From the beginning. */
  public void restart() {
    before.clear();
    step.set(asked(key.firstQuestion()));
  }

  private Step asked(WhichBone.Question question) {
    return new Step(question, before.size() + 1, Optional.empty());
  }

  /**
   * Where one stands in the key.
   *
   * @param question the question asked last
   * @param number how many questions were asked with it
   * @param stop why the key goes no further; empty while it asks
   */
  public record Step(WhichBone.Question question, int number, Optional<WhichBone.Stop> stop) {}
}

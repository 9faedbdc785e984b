package org.comparanda.gui.calling;

import java.util.List;
import java.util.Optional;
import javafx.collections.ListChangeListener;
import javafx.collections.WeakListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;
import org.comparanda.gui.control.Field;
import org.comparanda.gui.control.Pick;
import org.comparanda.tray.Trait;
import org.comparanda.tray.TraitAnswer;

/** The fields of a call by eye: name, animals beside it, ground, traits, why. */
public final class CallFields extends VBox {
  private final CallFormViewModel form;
  private final BoneWords words;
  private final Field name;
  private final Field why;
  private final VBox traits = new VBox();
  private final ListChangeListener<Trait> offered = change -> offer();

  /**
   * @param whyKey what the line of why is asked for: {@code call.why} or {@code call.why.settled}
   * @param record what Enter in the first and the last field does
   */
  public CallFields(CallFormViewModel form, BoneWords words, String whyKey, Runnable record) {
    this.form = form;
    this.words = words;
    getStyleClass().add("call-card");
    name = new Field("call-name", words.get("call.name")).bind(form.nameProperty());
    name.field().setPromptText(words.get("call.example"));
    Field basis = new Field("call-basis", words.get("call.basis")).bind(form.basisProperty());
    Field beside = new Field("call-beside", words.get("call.beside")).bind(form.comparedProperty());
    why = new Field("call-why", words.get(whyKey)).bind(form.whyProperty());
    name.field().setOnAction(event -> record.run());
    why.field().setOnAction(event -> record.run());
    traits.getStyleClass().add("call-card");
    getChildren().addAll(name, beside, basis, traits, why);
    form.traits().addListener(new WeakListChangeListener<>(offered));
    offer();
  }

  private void offer() {
    traits.getChildren().setAll(form.traits().stream().map(this::trait).toList());
    traits.setManaged(!form.traits().isEmpty());
  }

  /** The field of the name. */
  public TextField nameField() {
    return name.field();
  }

  /** Leaves the line of why away, where nothing can be gone against. */
  public CallFields withoutWhy() {
    getChildren().remove(why);
    return this;
  }

  private Node trait(Trait trait) {
    Label question = new Label(trait.look() + " " + trait.question());
    question.setWrapText(true);
    Label source = new Label(words.get("trait.for", trait.yes().value(), trait.source()));
    source.setWrapText(true);
    source.getStyleClass().add("note");
    Pick<TraitAnswer.Seen> answer =
        new Pick<>(
            "trait-" + trait.key(),
            words.get("trait"),
            List.of(TraitAnswer.Seen.values()),
            seen -> words.word("seen", seen));
    answer
        .box()
        .valueProperty()
        .addListener((o, was, is) -> form.answer(trait, Optional.ofNullable(is)));
    return new VBox(question, source, answer);
  }
}

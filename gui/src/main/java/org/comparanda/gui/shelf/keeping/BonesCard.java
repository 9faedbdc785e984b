package org.comparanda.gui.shelf.keeping;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.comparanda.bone.Element;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.gui.control.Choice;
import org.comparanda.gui.text.Numbers;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.How;
import org.comparanda.measurement.Measurement;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.ShelfBone;
import org.comparanda.register.AnimalCard;
import org.comparanda.register.BoneEdit;
import org.comparanda.register.BonePlace;

/** The bones of a card, and one value of one of them to be put right. */
final class BonesCard extends VBox {
  private final CardViewModel model;
  private final Words words;
  private final Numbers numbers;
  private final VBox bones = new VBox();
  private final MovePane move;
  private final ComboBox<Element> element = new ComboBox<>();
  private final ComboBox<Side> side = new ComboBox<>();
  private final ComboBox<Portion> portion = new ComboBox<>();
  private final ComboBox<Measurement> code = new ComboBox<>();
  private final TextField value = new TextField();

  BonesCard(CardViewModel model, MoveViewModel moves) {
    this.model = model;
    words = model.room().words();
    numbers = new Numbers(model.room().locale());
    getStyleClass().addAll("card", "bones-card");
    bones.getStyleClass().add("bones");
    move = new MovePane(moves, () -> model.cardProperty().get());
    getChildren().addAll(Written.label(words.get("bones"), "strong"), bones, choices(), move);
    model.cardProperty().addListener((o, was, is) -> show(is));
    show(model.cardProperty().get());
  }

  private void show(Optional<AnimalCard> card) {
    bones.getChildren().clear();
    card.ifPresent(c -> c.animal().bones().forEach(b -> bones.getChildren().add(line(b))));
    move.offer(
        card.map(c -> c.animal().bones().stream().map(BonePlace::of).toList()).orElse(List.of()));
    setVisible(card.isPresent());
    setManaged(card.isPresent());
  }

  private VBox line(ShelfBone bone) {
    String name =
        model.room().element(bone.element()) + ", " + words.get("side." + lower(bone.side()));
    if (bone.portion() != Portion.WHOLE) {
      name += ", " + words.get("portion." + lower(bone.portion()));
    }
    String values =
        bone.values().entrySet().stream()
            .map(e -> value(bone, e.getKey(), numbers.upTo(e.getValue(), 2)))
            .collect(Collectors.joining("   "));
    String flags =
        bone.flags().stream()
            .sorted()
            .map(f -> words.get("flag." + lower(f)))
            .collect(Collectors.joining(", "));
    VBox line = new VBox(Written.wrapped(name, "strong"), Written.wrapped(values));
    if (!flags.isEmpty()) {
      line.getChildren().add(Written.wrapped(flags, "note"));
    }
    return line;
  }

  private String value(ShelfBone bone, MeasurementCode code, String value) {
    boolean tape = model.room().protocol().how(bone.element(), code) == How.TAPE;
    return code + " " + value + (tape ? " " + words.get("bone.tape") : "");
  }

  private FlowPane choices() {
    element
        .getItems()
        .setAll(
            model.room().protocol().elements().stream()
                .filter(e -> !model.room().protocol().of(e.key()).isEmpty())
                .toList());
    element.setConverter(Choice.converter(Element::name));
    element.valueProperty().addListener((o, was, is) -> codes(is));
    side.getItems().setAll(Side.values());
    side.setConverter(Choice.converter(s -> words.get("side." + lower(s))));
    side.setValue(Side.LEFT);
    portion.getItems().setAll(Portion.values());
    portion.setConverter(Choice.converter(p -> words.get("portion." + lower(p))));
    portion.setValue(Portion.WHOLE);
    code.setConverter(Choice.converter(m -> m.code().value()));
    value.setPromptText(words.get("bone.value.prompt"));
    value.setId("bone-value");
    portion.setId("bone-portion");
    element.setAccessibleText(words.get("bone.element"));
    side.setAccessibleText(words.get("move.side"));
    portion.setAccessibleText(words.get("move.portion"));
    code.setAccessibleText(words.get("bone.code"));
    value.setAccessibleText(words.get("bone.value.prompt"));
    value.getStyleClass().add("bone-value");
    element.setId("bone-element");
    side.setId("bone-side");
    code.setId("bone-code");
    element.setPromptText(words.get("bone.element"));
    code.setPromptText(words.get("bone.code"));
    Button put = Written.button(words.get("bone.put"), "bone-put", this::put);
    FlowPane row = new FlowPane(8, 6, element, side, portion, code, value, put);
    row.getStyleClass().add("bone-choices");
    return row;
  }

  private void codes(Element chosen) {
    code.getItems().setAll(model.room().protocol().of(chosen.key()));
    boolean axial = chosen.symmetry() == org.comparanda.bone.Symmetry.AXIAL;
    side.setValue(axial ? Side.AXIAL : side.getValue() == Side.AXIAL ? Side.LEFT : side.getValue());
  }

  private void put() {
    String typed = value.getText().strip();
    boolean number = typed.matches("[0-9]{1,5}([.][0-9]{1,3})?") && Double.parseDouble(typed) > 0;
    if (element.getValue() == null || code.getValue() == null || !(typed.isEmpty() || number)) {
      model.sentenceProperty().set(words.get("bone.not.read", typed));
      return;
    }
    model.put(
        new BoneEdit(
            element.getValue().key(),
            side.getValue(),
            portion.getValue(),
            Optional.empty(),
            Map.of(
                code.getValue().code(),
                number ? Optional.of(Double.parseDouble(typed)) : Optional.empty())));
    value.clear();
  }

  private static String lower(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }
}

package org.comparanda.gui.tray;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import org.comparanda.gui.control.Field;
import org.comparanda.gui.control.Pick;
import org.comparanda.measurement.BoneId;
import org.comparanda.tray.Keeping;
import org.comparanda.tray.Tray;

/** Moves the chosen bones together. */
final class MovePane extends FlowPane {
  MovePane(TrayViewModel model, Supplier<List<BoneId>> chosen) {
    TrayWords words = model.said();
    getStyleClass().add("tray-line");
    Pick<TrayLine> onto =
        new Pick<>("move-tray", words.get("move.tray"), List.of(), line -> line.tray().name());
    onto.box().setItems(model.trays());
    Field goesTo = new Field("move-place", words.get("move.place"));
    Pick<Keeping.Access> access =
        new Pick<>(
            "move-access",
            words.get("move.access"),
            List.of(Keeping.Access.values()),
            a -> words.word("access", a));
    Button move = new Button(words.get("move"));
    move.setId("move");
    move.setOnAction(
        event -> {
          model
              .changes()
              .move(
                  chosen.get(),
                  onto.chosen().map(TrayLine::tray).map(Tray::id),
                  Optional.of(goesTo.text().strip()).filter(place -> !place.isEmpty()),
                  access.chosen());
          onto.box().setValue(null);
          goesTo.field().clear();
          access.box().setValue(null);
        });
    getChildren().addAll(onto, goesTo, access, move);
  }
}

package org.comparanda.gui.tray;

import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.comparanda.gui.control.Field;
import org.comparanda.gui.control.Pick;
import org.comparanda.tray.Lot;
import org.comparanda.tray.LotNotes;
import org.comparanda.tray.Tray;

/** What is recorded of the open tray's lot, and of the tray alone; to be changed. */
final class LotPane extends VBox {
  LotPane(TrayViewModel model, OpenTray open) {
    TrayWords words = model.said();
    Lot lot = open.lot();
    Tray tray = open.line().tray();
    setId("lot");
    getStyleClass().addAll("card", "lot-card");
    Label title = new Label(words.get("lot.title", lot.id()));
    title.getStyleClass().add("strong");
    Field provenance =
        field("lot-provenance", words.get("lot.provenance"), lot.notes().provenance());
    Field hazards = field("lot-hazards", words.get("lot.hazards"), lot.notes().hazards());
    Field remarks = field("lot-remarks", words.get("lot.remarks"), lot.remarks());
    Pick<Lot.Places> places =
        new Pick<>(
            "lot-places",
            words.get("lot.places"),
            java.util.List.of(Lot.Places.values()),
            p -> words.word("places", p));
    places.box().setValue(lot.places());
    Label own = new Label(words.get("lot.own", tray.name()));
    own.getStyleClass().add("strong");
    Field ownProvenance =
        field("own-provenance", words.get("lot.provenance"), tray.own().provenance());
    Field ownHazards = field("own-hazards", words.get("lot.hazards"), tray.own().hazards());
    Button record = new Button(words.get("lot.record"));
    record.setId("record-lot");
    record.setOnAction(
        event ->
            model
                .changes()
                .lot(
                    new Lot(
                        lot.id(),
                        new LotNotes(provenance.text(), hazards.text()),
                        places.chosen().orElse(lot.places()),
                        remarks.text()),
                    new LotNotes(ownProvenance.text(), ownHazards.text())));
    Label why = new Label(words.get("lot.help"));
    why.getStyleClass().add("note");
    why.setWrapText(true);
    getChildren()
        .addAll(
            title,
            provenance,
            hazards,
            places,
            remarks,
            own,
            ownProvenance,
            ownHazards,
            record,
            why);
  }

  private static Field field(String id, String label, String text) {
    Field field = new Field(id, label);
    field.field().setText(text);
    return field;
  }
}

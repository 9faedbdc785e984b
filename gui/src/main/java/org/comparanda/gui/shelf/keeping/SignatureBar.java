package org.comparanda.gui.shelf.keeping;

import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import org.comparanda.gui.text.Words;

/** Who changes something, and why. */
final class SignatureBar extends HBox {
  SignatureBar(Signature signature, Words words) {
    getStyleClass().add("signature");
    TextField who = Written.field(signature.whoProperty(), "who", words.get("who.prompt"));
    TextField why = Written.field(signature.whyProperty(), "why", words.get("why.prompt"));
    who.getStyleClass().add("who");
    setHgrow(why, Priority.ALWAYS);
    Label whoLabel = Written.label(words.get("who"), "note");
    whoLabel.setLabelFor(who);
    Label whyLabel = Written.label(words.get("why"), "note");
    whyLabel.setLabelFor(why);
    getChildren().addAll(whoLabel, who, whyLabel, why);
  }
}

package org.comparanda.gui.app;

import javafx.scene.control.Alert;
import javafx.scene.layout.Region;
import org.comparanda.gui.control.Prose;
import org.comparanda.gui.text.Words;

/** What nobody foresaw, said over the window and dressed like it; the full account is behind it. */
public final class MishapDialog {
  private MishapDialog() {}

  /** The dialog, not shown yet. */
  public static Alert of(String message, String account, Look look, Words words) {
    Alert alert = new Alert(Alert.AlertType.ERROR, message);
    alert.setTitle(words.get("window.title"));
    alert.setHeaderText(null);
    Prose full = new Prose();
    full.setText(account);
    full.setWrapText(false);
    full.setEditable(false);
    full.setAccessibleText(words.get("mishap.account"));
    alert.getDialogPane().setExpandableContent(full);
    alert.getDialogPane().setMinHeight(Region.USE_PREF_SIZE);
    alert.setResizable(true);
    look.dress(alert.getDialogPane().getScene());
    return alert;
  }
}

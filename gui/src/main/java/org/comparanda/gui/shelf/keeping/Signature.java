package org.comparanda.gui.shelf.keeping;

import java.util.Optional;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.comparanda.measurement.PersonId;
import org.comparanda.register.ChangeNote;

/** Who changes something, and why: the name stays for the next change, the reason doesn't. */
public final class Signature {
  private final StringProperty who = new SimpleStringProperty("");
  private final StringProperty why = new SimpleStringProperty("");

  public StringProperty whoProperty() {
    return who;
  }

  public StringProperty whyProperty() {
    return why;
  }

  /** Both, when both are said. */
  public Optional<ChangeNote> note() {
    return who.get().isBlank() || why.get().isBlank()
        ? Optional.empty()
        : Optional.of(new ChangeNote(new PersonId(who.get().strip()), why.get().strip()));
  }

  public void used() {
    why.set("");
  }
}

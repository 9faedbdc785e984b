package org.comparanda.gui.sizedesk;

import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.comparanda.taxon.TaxonName;

/** A candidate for the bone: its share as typed, and what its own line says. */
public final class ShareRow {
  private final TaxonName taxon;
  private final int animals;
  private final StringProperty share = new SimpleStringProperty("");
  private final StringProperty estimate = new SimpleStringProperty("");

  ShareRow(TaxonName taxon, int animals) {
    this.taxon = taxon;
    this.animals = animals;
  }

  public TaxonName taxon() {
    return taxon;
  }

  /** How many animals could feed its line. */
  public int animals() {
    return animals;
  }

  /** Its share as typed; empty: no candidate. */
  public StringProperty shareProperty() {
    return share;
  }

  /** What its own line says, in words; empty until asked. */
  public ReadOnlyStringProperty estimateProperty() {
    return estimate;
  }

  void say(String text) {
    estimate.set(text);
  }
}

package org.comparanda.taxon;

/** Name of a taxon at any rank, as recorded, for example {@code Ovis aries}. Never blank. */
public record TaxonName(String value) implements Comparable<TaxonName> {
  public TaxonName {
    if (value.isBlank()) {
      throw new IllegalArgumentException("A taxon needs a name.");
    }
  }

  @Override
  public int compareTo(TaxonName other) {
    return value.compareTo(other.value);
  }

  @Override
  public String toString() {
    return value;
  }
}

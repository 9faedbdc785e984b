package org.comparanda.measurement;

/**
 * Code of a measurement within its element, for example {@code Bd}. Case matters: handbook codes
 * differ by case alone.
 */
public record MeasurementCode(String value) implements Comparable<MeasurementCode> {
  public MeasurementCode {
    if (value.isBlank()) {
      throw new IllegalArgumentException("A measurement needs a code.");
    }
  }

  @Override
  public int compareTo(MeasurementCode other) {
    return value.compareTo(other.value);
  }

  @Override
  public String toString() {
    return value;
  }
}

package org.comparanda.measurement;

/**
 * A length in millimetres, above zero and finite.
 *
 * <p>Errors: {@link IllegalArgumentException} if it is not.
 */
public record Length(double mm) implements Comparable<Length> {
  public Length {
    if (!(mm > 0) || Double.isInfinite(mm)) {
      throw new IllegalArgumentException("A length is above zero and finite, got " + mm + " mm");
    }
  }

  /** The length that a value in another unit stands for. */
  public static Length of(double value, LengthUnit unit) {
    return new Length(value * unit.millimetres());
  }

  @Override
  public int compareTo(Length other) {
    return Double.compare(mm, other.mm);
  }
}

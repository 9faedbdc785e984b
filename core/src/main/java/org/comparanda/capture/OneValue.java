package org.comparanda.capture;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.comparanda.measurement.Length;
import org.comparanda.measurement.LengthUnit;

/**
 * The characters of one value, found at a place in a text, and what they mean.
 *
 * @param text the characters
 * @param end where they end in the text
 * @param sign plus, minus or empty
 * @param whole inches before a fraction, or empty
 * @param over above the stroke, or empty
 * @param under below the stroke, or empty
 * @param before digits before the mark, or empty
 * @param mark point, comma or empty
 * @param after digits after the mark, or empty
 * @param unit as it stands there, or empty
 */
record OneValue(
    String text,
    int end,
    String sign,
    String whole,
    String over,
    String under,
    String before,
    String mark,
    String after,
    String unit) {
  private static final Pattern BLANKS = Pattern.compile("[ \\u00a0]*");
  private static final Pattern VALUE =
      Pattern.compile(
          "(?:(?<sign>[+\\-−])[ \\u00a0]*)?"
              + "(?:(?:(?<whole>[0-9]+)[ \\u00a0])?(?<over>[0-9]+)/(?<under>[0-9]+)"
              + "|(?<before>[0-9]+)(?:(?<mark>[.,])(?<after>[0-9]+))?"
              + "|(?<mark2>[.,])(?<after2>[0-9]+))"
              + "(?:[ \\u00a0]*(?<unit>mm|cm|in|m|″|\"))?",
          Pattern.CASE_INSENSITIVE);
  private static final int DIGITS_BEFORE = 9;
  private static final int DIGITS_AFTER = 6;
  private static final BigDecimal MOST_PARTS_OF_AN_INCH = BigDecimal.valueOf(128);

  /** The first place at or after this one where no blank stands. */
  static int afterBlanks(String line, int place) {
    Matcher blanks = BLANKS.matcher(line).region(place, line.length());
    return blanks.lookingAt() ? blanks.end() : place;
  }

  /** The value that begins at this place. */
  static Optional<OneValue> at(String line, int place) {
    Matcher found = VALUE.matcher(line).region(place, line.length());
    if (!found.lookingAt()) {
      return Optional.empty();
    }
    return Optional.of(
        new OneValue(
            found.group(),
            found.end(),
            part(found, "sign"),
            part(found, "whole"),
            part(found, "over"),
            part(found, "under"),
            part(found, "before"),
            part(found, "mark") + part(found, "mark2"),
            part(found, "after") + part(found, "after2"),
            part(found, "unit")));
  }

  private static String part(Matcher found, String name) {
    String part = found.group(name);
    return part == null ? "" : part;
  }

  boolean hasUnit() {
    return !unit.isEmpty();
  }

  boolean isFraction() {
    return !under.isEmpty();
  }

  /** Whether a blank between this value and the next can only mean that they are two. */
  boolean standsApartFrom(OneValue next) {
    boolean bothUnits = hasUnit() && next.hasUnit();
    boolean bothMarks = !mark.isEmpty() && !next.mark.isEmpty();
    return bothUnits || (bothMarks && !hasUnit() && !next.hasUnit());
  }

  /** One value, or the reason why these characters mean none. */
  CaliperInput meaning(Optional<CaliperCard> card) {
    Optional<String> trouble = trouble(card);
    if (trouble.isPresent()) {
      return new CaliperInput.Refused(text, trouble.get());
    }
    BigDecimal mm = number().multiply(BigDecimal.valueOf(unit(card).millimetres()));
    return new CaliperInput.Read(
        List.of(new CaliperValue(text, new Length(mm.doubleValue()), print(card))));
  }

  private Optional<String> trouble(Optional<CaliperCard> card) {
    if (!sign.isEmpty() && !sign.equals("+")) {
      return because("is below zero. Close the jaws, set the caliper to zero and measure again.");
    }
    if (before.length() > DIGITS_BEFORE
        || whole.length() > DIGITS_BEFORE
        || over.length() > DIGITS_BEFORE
        || under.length() > DIGITS_BEFORE
        || after.length() > DIGITS_AFTER) {
      return because("has more digits than a caliper shows. Send the value again.");
    }
    if (isFraction() && !soundFraction(card)) {
      return because("is no fraction of an inch. Send the value with decimals.");
    }
    if (number().signum() == 0) {
      return because("is no length. Put the jaws on the bone and send the value again.");
    }
    return card.isPresent() ? troubleWith(card.get()) : troubleWithoutCard();
  }

  private boolean soundFraction(Optional<CaliperCard> card) {
    BigDecimal parts = new BigDecimal(under);
    return unit(card) == LengthUnit.INCH
        && new BigDecimal(over).compareTo(parts) < 0
        && parts.compareTo(MOST_PARTS_OF_AN_INCH) <= 0
        && Integer.bitCount(parts.intValue()) == 1;
  }

  private Optional<String> troubleWithoutCard() {
    boolean mayBeThousands =
        mark.equals(",")
            && after.length() == 3
            && !before.isEmpty()
            && before.length() <= 3
            && !before.startsWith("0");
    return mayBeThousands
        ? because(
            "may be a decimal comma or a thousands comma. Type a point, or learn a card for this"
                + " caliper.")
        : Optional.empty();
  }

  private Optional<String> troubleWith(CaliperCard card) {
    if (!mark.isEmpty() && mark.charAt(0) != card.decimalMark()) {
      return because(
          "has another decimal mark than the card \"" + card.name() + "\". Learn the card again.");
    }
    boolean sameUnit = unit(Optional.of(card)) == card.unit();
    int shown = after.length();
    if (!isFraction() && sameUnit && (shown < card.fewestDecimals() || shown > card.decimals())) {
      return because(
          "has "
              + shown
              + " decimals, the card \""
              + card.name()
              + "\" says "
              + card.decimals()
              + ". Look whether the caliper stands on another unit, and send the value again.");
    }
    return Optional.empty();
  }

  private Optional<String> because(String why) {
    return Optional.of("\"" + text + "\" " + why);
  }

  private LengthUnit unit(Optional<CaliperCard> card) {
    return hasUnit() ? unitSent() : card.map(CaliperCard::unit).orElse(LengthUnit.MILLIMETRE);
  }

  /** The unit that stands there; both signs of the inch are one. */
  LengthUnit unitSent() {
    return LengthUnit.ofSymbol(unit.toLowerCase(Locale.ROOT)).orElse(LengthUnit.INCH);
  }

  /** Exact: parts of an inch down to 128ths have at most seven decimals. */
  private BigDecimal number() {
    if (!isFraction()) {
      return new BigDecimal(
          (before.isEmpty() ? "0" : before) + "." + (after.isEmpty() ? "0" : after));
    }
    BigDecimal inches = whole.isEmpty() ? BigDecimal.ZERO : new BigDecimal(whole);
    BigDecimal parts = new BigDecimal(under);
    return parts.signum() == 0
        ? BigDecimal.ZERO
        : inches.add(new BigDecimal(over).divide(parts, MathContext.DECIMAL64));
  }

  private String print(Optional<CaliperCard> card) {
    String symbol = " " + unit(card).symbol();
    if (isFraction()) {
      return (whole.isEmpty() ? "" : whole + " ") + over + "/" + under + symbol;
    }
    String digits = before.replaceFirst("^0+(?=[0-9])", "");
    String plain = digits.isEmpty() ? "0" : digits;
    String shownMark = card.map(c -> String.valueOf(c.decimalMark())).orElse(".");
    return plain + (after.isEmpty() ? "" : shownMark + after) + symbol;
  }
}

package org.comparanda.capture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Reads what a caliper sends or a hand types: all of it or nothing of it.
 *
 * <pre>
 * burst    = {blank | end} value {gap value} {blank | end}     several values
 * typed    = {blank} value {blank}                             one value, no fraction
 * gap      = {blank} end {blank | end}                         a line end or a tab, always
 *          | blank {blank}                                     a blank only where both values have
 *                                                              a unit, or a mark and no unit
 * end      = CR | LF | TAB                                     CR LF counts as one
 * blank    = space | no-break space
 * value    = [sign {blank}] (decimal | fraction) [{blank} unit]
 * decimal  = digits [mark digits] | mark digits
 * fraction = [digits blank] digits "/" digits                  inches only
 * mark     = "." | ","
 * unit     = "mm" | "cm" | "m" | "in" | "″" | '"'              capitals or not
 * sign     = "+" | "-" | "−"
 * digits   = one or more of 0 to 9
 * </pre>
 *
 * <p>Beyond the grammar a value is refused when it could mean two things or nothing: a comma with
 * exactly three decimals and no card ("1,234"; "0,234" and "1234,567" can't be thousands), the mark
 * that the card doesn't have, more or fewer decimals than the card shows (a lost character, or a
 * caliper switched to inches), units on some values of a burst only, a value not above zero, a
 * fraction not below one or not of halves to 128ths, more than 9 digits before or 6 after the mark.
 * Without a unit a burst is in the card's unit, everything else in mm. The card is for bursts; a
 * hand may type either mark.
 *
 * @param card the caliper's card, empty for a caliper without one
 */
public record CaliperText(Optional<CaliperCard> card) {
  private static final Pattern END = Pattern.compile("[\\r\\n\\t]+");

  /** Without a card. */
  public static CaliperText withoutCard() {
    return new CaliperText(Optional.empty());
  }

  public static CaliperText with(CaliperCard card) {
    return new CaliperText(Optional.of(card));
  }

  /** Reads a burst: characters that came too fast for a hand. Never throws. */
  public CaliperInput burst(String text) {
    List<OneValue> found = new ArrayList<>();
    for (String line : END.split(text, -1)) {
      Optional<String> trouble = readLine(line, found);
      if (trouble.isPresent()) {
        return new CaliperInput.Refused(text, trouble.get());
      }
    }
    if (found.stream().anyMatch(OneValue::hasUnit) && !found.stream().allMatch(OneValue::hasUnit)) {
      return new CaliperInput.Refused(
          text, "Some of these values have a unit and some have none. Send them one by one.");
    }
    return whole(text, found.stream().map(value -> value.meaning(card)).toList());
  }

  /** Reads what a hand typed. Never throws. */
  public CaliperInput typed(String text) {
    Optional<OneValue> value = OneValue.at(text, OneValue.afterBlanks(text, 0));
    if (value.isEmpty() || OneValue.afterBlanks(text, value.get().end()) < text.length()) {
      return new CaliperInput.Refused(text, notALength(text));
    }
    if (value.get().isFraction()) {
      return new CaliperInput.Refused(
          text, "A fraction is only read from a caliper. Type the value with decimals.");
    }
    return whole(text, List.of(value.get().meaning(Optional.empty())));
  }

  private Optional<String> readLine(String line, List<OneValue> found) {
    int at = OneValue.afterBlanks(line, 0);
    Optional<OneValue> before = Optional.empty();
    while (at < line.length()) {
      Optional<OneValue> next = OneValue.at(line, at);
      if (next.isEmpty()) {
        return Optional.of(notALength(line.substring(at)));
      }
      OneValue value = next.get();
      if (before.isPresent() && !before.get().standsApartFrom(value)) {
        return Optional.of(
            "\"" + line.strip() + "\" may be one number or two. Send the value again.");
      }
      at = OneValue.afterBlanks(line, value.end());
      if (at == value.end() && at < line.length()) {
        return Optional.of(
            "\"" + line.strip() + "\" can't be read whole. Send one value after the other.");
      }
      found.add(value);
      before = next;
    }
    return Optional.empty();
  }

  private static String notALength(String text) {
    return "Not a length: \"" + text.strip() + "\". Type digits and at most one point or comma.";
  }

  /** All values, or the first reason why not. */
  private static CaliperInput whole(String text, List<CaliperInput> meanings) {
    List<CaliperValue> values = new ArrayList<>();
    for (CaliperInput meaning : meanings) {
      if (meaning instanceof CaliperInput.Refused refused) {
        return new CaliperInput.Refused(text, refused.reason());
      }
      if (meaning instanceof CaliperInput.Read read) {
        values.addAll(read.values());
      }
    }
    return values.isEmpty()
        ? new CaliperInput.Refused(text, "No number came. Send the value again.")
        : new CaliperInput.Read(values);
  }
}

package org.comparanda.capture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.comparanda.measurement.Length;
import org.comparanda.measurement.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Read or refuse, never half-read. Expected lengths: by hand, 1 in = 25.4 mm exactly. */
class CaliperTextTest {
  private static final CaliperText PLAIN = CaliperText.withoutCard();
  private static final CaliperText COMMA = CaliperText.with(card(LengthUnit.MILLIMETRE, ',', 2));
  private static final CaliperText INCH = CaliperText.with(card(LengthUnit.INCH, '.', 4));

  private static CaliperCard card(LengthUnit unit, char mark, int decimals) {
    return new CaliperCard(
        "caliper 4",
        "",
        unit,
        mark,
        decimals,
        decimals,
        LineEnd.CR,
        new Length(0.01),
        Optional.empty(),
        Optional.empty());
  }

  private static List<Double> mm(CaliperInput input) {
    return input.fold(
        read -> read.values().stream().map(value -> value.length().mm()).toList(),
        refused -> List.of());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "12.34|12.34",
        "12,34|12.34",
        "0,234|0.234",
        "1234,567|1234.567",
        "1.234|1.234",
        ".5|0.5",
        "' 12.5 '|12.5",
        "12.5mm|12.5",
        "12.5 MM|12.5",
        "1.25 cm|12.5",
        "1.25 m|1250",
        "1.25 in|31.75",
        "1.25″|31.75",
        "'1.25\"'|31.75",
        "007|7",
      })
  void handTypedLengthIsRead(String text, double expected) {
    assertEquals(List.of(expected), mm(PLAIN.typed(text)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        ".",
        ",",
        "12.",
        "1,234",
        "12,345",
        "999,999",
        "1.234,5",
        "1,234.5",
        "12.34.56",
        "12 34",
        "1 234",
        "0",
        "0.00",
        "-12",
        "−12.3",
        "12-",
        "12e3",
        "1e400",
        "NaN",
        "١٢",
        "１２",
        "12.5 ft",
        "12.5 minch",
        "12 mm 13 mm",
        "12\n13",
        "3/8",
        "3/8 in",
        "1234567890",
        "1.1234567",
        "12.5 m m",
        "--",
        "00.",
        "½"
      })
  void whatMeansTwoThingsOrNothingIsRefusedFromAHand(String text) {
    CaliperInput.Refused refused =
        assertInstanceOf(CaliperInput.Refused.class, PLAIN.typed(text), text);
    assertEquals(text, refused.text());
    assertTrue(refused.reason().endsWith("."), refused.reason());
  }

  @Test
  void commaWithThreeDecimalsSaysWhy() {
    assertEquals(
        "\"1,234\" may be a decimal comma or a thousands comma. Type a point, or learn a card for"
            + " this caliper.",
        assertInstanceOf(CaliperInput.Refused.class, PLAIN.typed("1,234")).reason());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "12.34\r",
        "12.34\n",
        "12.34\r\n",
        "12.34\t",
        "\r\n12.34\r\n",
        "+12.34",
        "+  12.34\r",
        "0012.34",
        " 12.34 mm \r\n",
        "12.34\u00a0mm"
      })
  void lineEndsSignsAndBlanksOfABurstDoNotMatter(String text) {
    assertEquals(List.of(12.34), mm(PLAIN.burst(text)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "12.34\r45.6",
        "12.34\r\n45.6\r\n",
        "12.34\t45.6",
        "12.34 45.6",
        "12.34 mm 45.6 mm",
        "12.34\n\n45.6"
      })
  void severalValuesOfABurstAreRead(String text) {
    assertEquals(List.of(12.34, 45.6), mm(PLAIN.burst(text)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "12.3445.67",
        "12 34",
        "12.3 45",
        "12.3 mm 45.6",
        "12.3\n45.6 in",
        "12.3mm45.6mm",
        "12.3\n-4.5",
        "12.3\nE05",
        "\u000212.34",
        "12.34\r1,234"
      })
  void burstIsRefusedWhole(String text) {
    assertInstanceOf(CaliperInput.Refused.class, PLAIN.burst(text));
  }

  @ParameterizedTest
  @CsvSource({"3/8 in, 9.525", "1 3/8 in, 34.925", "1/128 in, 0.1984375", "+ 1 1/2 in, 38.1"})
  void fractionsOfAnInchComeInBursts(String text, double expected) {
    assertEquals(List.of(expected), mm(PLAIN.burst(text)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"3/8", "3/7 in", "9/8 in", "1/256 in", "0/8 in", "1/0 in", "3/8 mm"})
  void otherFractionsAreRefused(String text) {
    assertInstanceOf(CaliperInput.Refused.class, PLAIN.burst(text));
  }

  @Test
  void cardSaysWhatTheCommaIs() {
    assertEquals(List.of(12.34), mm(COMMA.burst("12,34\r")));
    CaliperText threeDecimals = CaliperText.with(card(LengthUnit.MILLIMETRE, ',', 3));
    assertEquals(List.of(1.234), mm(threeDecimals.burst("1,234")));
    assertInstanceOf(CaliperInput.Refused.class, COMMA.burst("12.34"));
  }

  @Test
  void cardSaysTheUnitAndAUnitThatIsSentWins() {
    assertEquals(List.of(31.75), mm(INCH.burst("1.2500")));
    assertEquals(List.of(12.5), mm(INCH.burst("12.5 mm")));
    assertEquals(List.of(9.525), mm(INCH.burst("3/8")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"12,3", "12", "1,2345"})
  void lostOrForeignDecimalsAreRefusedWithACard(String text) {
    CaliperInput.Refused refused = assertInstanceOf(CaliperInput.Refused.class, COMMA.burst(text));
    assertTrue(refused.reason().contains("says 2"), refused.reason());
  }

  @Test
  void textAsTypedIsKept() {
    CaliperInput.Read read = assertInstanceOf(CaliperInput.Read.class, PLAIN.burst("1.25 IN\r\n"));
    assertEquals(List.of(new CaliperValue("1.25 IN", new Length(31.75), "1.25 in")), read.values());
  }

  /** 200,000 strings of a small alphabet, so that sound and unsound ones are both common. */
  @Test
  void anyTextIsReadWholeOrRefusedAndPrintsBackToTheSameValue() {
    long seed = 20417;
    SplittableRandom random = new SplittableRandom(seed);
    String alphabet = "0123456789012345678901234567890.,.,mc in\r\n\t+-−/″\" \u00a0xE\u0000é";
    int read = 0;
    for (int i = 0; i < 200_000; i++) {
      StringBuilder text = new StringBuilder();
      int length = random.nextInt(12);
      for (int k = 0; k < length; k++) {
        text.append(alphabet.charAt(random.nextInt(alphabet.length())));
      }
      CaliperText reader =
          switch (random.nextInt(3)) {
            case 0 -> PLAIN;
            case 1 -> COMMA;
            default -> INCH;
          };
      String where = "seed " + seed + ", string " + i + ": \"" + text + "\"";
      read += reads(reader, reader.burst(text.toString()), text.toString(), where);
      read += reads(PLAIN, PLAIN.typed(text.toString()), text.toString(), where);
    }
    assertTrue(read > 20_000, "only " + read + " were read: the generator proves too little");
  }

  private static int reads(CaliperText reader, CaliperInput input, String text, String where) {
    if (!(input instanceof CaliperInput.Read read)) {
      return 0;
    }
    assertFalse(read.values().isEmpty(), where);
    int digits = 0;
    for (CaliperValue value : read.values()) {
      assertTrue(text.contains(value.asTyped()), where);
      digits += digits(value.asTyped());
      assertEquals(List.of(value.length().mm()), mm(reader.burst(value.print())), where);
    }
    assertEquals(digits(text), digits, "every digit went into a value, " + where);
    return 1;
  }

  private static int digits(String text) {
    return (int) text.chars().filter(c -> c >= '0' && c <= '9').count();
  }
}

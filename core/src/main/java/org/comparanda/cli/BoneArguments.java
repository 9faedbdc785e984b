package org.comparanda.cli;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Flag;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.LengthUnit;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.register.BoneEdit;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** A bone of an animal, as it is to be. */
final class BoneArguments {
  @Option(names = "--bone", required = true, paramLabel = "ELEMENT", description = "Which bone.")
  private String element = "";

  @Option(names = "--side", paramLabel = "SIDE", description = "left, right, axial or not_known.")
  private Side side = Side.NOT_KNOWN;

  @Option(
      names = "--portion",
      paramLabel = "PORTION",
      description = "whole, proximal, shaft, distal or other.")
  private Portion portion = Portion.WHOLE;

  @Option(
      names = "--bone-flags",
      paramLabel = "FLAGS",
      description = "Its flags, separated by a bar; empty takes them off.")
  private @Nullable String flags;

  @Option(
      names = "--value",
      paramLabel = "CODE=LENGTH",
      description = "A value, e.g. GL=151.2 or GL=15.1cm; CODE= withdraws it.")
  private Map<String, String> values = new java.util.LinkedHashMap<>();

  BoneEdit edit() {
    Map<MeasurementCode, Optional<Double>> mm = new TreeMap<>();
    values.forEach(
        (code, text) -> mm.put(new MeasurementCode(code), length(Optional.ofNullable(text))));
    return new BoneEdit(
        new ElementKey(element.toLowerCase(Locale.ROOT)),
        side,
        portion,
        Optional.ofNullable(flags).map(BoneArguments::flags),
        mm);
  }

  private static Optional<Double> length(Optional<String> text) {
    if (text.filter(t -> !t.isBlank()).isEmpty()) {
      return Optional.empty();
    }
    String typed = text.get().strip();
    String number = typed.replaceAll("[\\sa-z]+$", "");
    String unit = typed.substring(number.length()).strip();
    Optional<LengthUnit> known = LengthUnit.ofSymbol(unit.isEmpty() ? "mm" : unit);
    if (known.isEmpty() || !number.matches("[0-9]{1,9}([.][0-9]{1,9})?") || isZero(number)) {
      throw new CannotDo(
          "\""
              + typed
              + "\" after --value is no length. Nothing was stored. Write 151.2 or 15.12cm.");
    }
    return Optional.of(Double.parseDouble(number) * known.get().millimetres());
  }

  private static boolean isZero(String number) {
    return Double.parseDouble(number) == 0;
  }

  private static Set<Flag> flags(String text) {
    Set<Flag> flags = EnumSet.noneOf(Flag.class);
    for (String word : List.of(text.split("[|,]", -1))) {
      if (!word.isBlank()) {
        flags.add(
            java.util.Arrays.stream(Flag.values())
                .filter(f -> f.name().equalsIgnoreCase(word.strip()))
                .findFirst()
                .orElseThrow(
                    () ->
                        new CannotDo(
                            "\""
                                + word.strip()
                                + "\" is no flag. Nothing was stored. Known are: "
                                + List.of(Flag.values()).toString().toLowerCase(Locale.ROOT))));
      }
    }
    return flags;
  }
}

package org.comparanda.cli;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.Protocol;
import org.comparanda.register.AnimalCard;
import org.comparanda.register.BoneMove;
import org.comparanda.register.BonePlace;
import org.comparanda.register.Change;
import org.comparanda.storage.Collection;
import org.comparanda.tables.ReferenceTables;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A bone that was registered under the wrong element, side or portion. */
@Command(
    name = "move",
    description = {
      "Move a bone of an animal to another element, side or portion, with its flags, values and",
      "readings. Where another bone of the animal stands there, the two change places."
    },
    mixinStandardHelpOptions = true)
final class ShelfMove implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "NUMBER", description = "Catalogue number.")
  private String number = "";

  @Option(
      names = "--from",
      required = true,
      paramLabel = "BONE",
      description = "ELEMENT/SIDE or ELEMENT/SIDE/PORTION, e.g. humerus/left.")
  private String from = "";

  @Option(names = "--to", required = true, paramLabel = "BONE", description = "Where it belongs.")
  private String to = "";

  @Mixin private ChangeArguments change = new ChangeArguments();

  ShelfMove(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Protocol protocol = ReferenceTables.shipped().protocol();
    BoneMove move = ChangeArguments.done(BoneMove.of(place(from), place(to), protocol));
    try (Collection opened = change.open(terminal)) {
      AnimalCard card = ShelfShow.find(opened, number);
      List<Change> made = ChangeArguments.done(opened.register().move(card, move, change.note()));
      made.forEach(one -> terminal.say(one.line()));
      terminal.say(
          "Moved %s of %s: it is %s now."
              .formatted(move.from().words(), number, move.to().words()));
      List<MeasurementCode> strangers = move.strangers(card, protocol);
      if (!strangers.isEmpty()) {
        terminal.say(
            "No measurement of the %s: %s. Such values stay on the card and feed no fit."
                .formatted(move.to().element(), strangers));
      }
    }
    return Terminal.FINE;
  }

  private static BonePlace place(String text) {
    String[] parts = text.strip().split("/", -1);
    if (parts.length < 2 || parts.length > 3) {
      throw new CannotDo(
          "\""
              + text
              + "\" is no bone. Nothing was moved. Write humerus/left or humerus/left/distal.");
    }
    return new BonePlace(
        new ElementKey(parts[0].toLowerCase(Locale.ROOT)),
        word(Side.values(), parts[1], "side"),
        parts.length == 3 ? word(Portion.values(), parts[2], "portion") : Portion.WHOLE);
  }

  private static <T extends Enum<T>> T word(T[] known, String text, String what) {
    return Arrays.stream(known)
        .filter(one -> one.name().equalsIgnoreCase(text.strip()))
        .findFirst()
        .orElseThrow(
            () ->
                new CannotDo(
                    "\""
                        + text
                        + "\" is no "
                        + what
                        + ". Nothing was moved. Known are: "
                        + List.of(known).toString().toLowerCase(Locale.ROOT)
                        + "."));
  }
}

package org.comparanda.cli;

import java.util.concurrent.Callable;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.storage.Collection;
import org.comparanda.tray.ElementCall;
import org.comparanda.tray.TrayBone;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Records a call on the element. */
@Command(
    name = "element",
    description = {
      "Record a call on which element, side and portion a bone is; earlier ones stay. What is not",
      "said stays as it was. Any element of the full list can be called."
    },
    mixinStandardHelpOptions = true)
final class TrayElement implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private CollectionArgument collection = new CollectionArgument();
  @Mixin private ByArgument by = new ByArgument();

  @Parameters(index = "0", paramLabel = "BONE", description = "Number of the bone.")
  private String bone = "";

  @Parameters(index = "1", paramLabel = "ELEMENT", description = "Element, as the protocol has it.")
  private String element = "";

  @Option(names = "--side", paramLabel = "SIDE", description = "left, right, axial or not_known.")
  private @Nullable Side side;

  @Option(
      names = "--portion",
      paramLabel = "PORTION",
      description = "whole, proximal, shaft, distal or other.")
  private @Nullable Portion portion;

  @Option(names = "--basis", paramLabel = "TEXT", description = "What it rests on.")
  private String basis = "by eye";

  TrayElement(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Collection opened = collection.open(terminal)) {
      TrayBone found = TrayNamed.bone(opened, bone);
      HazardsLine.beforeTheFirstWord(terminal, opened, found);
      ElementKey key = KnownElement.of(element);
      ElementCall recorded =
          opened
              .trays()
              .record(
                  new ElementCall(
                      0,
                      found.id(),
                      key,
                      side == null ? found.side() : side,
                      portion == null ? found.portion() : portion,
                      by.person(),
                      terminal.clock().instant(),
                      basis));
      terminal.say(
          bone
              + " is now said to be: "
              + Words.of(recorded.side())
              + " "
              + key
              + ", "
              + Words.of(recorded.portion())
              + " (earlier words on it stay in its history).");
    }
    return Terminal.FINE;
  }
}

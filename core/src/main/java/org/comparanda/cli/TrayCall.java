package org.comparanda.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.PersonId;
import org.comparanda.storage.Collection;
import org.comparanda.tray.Call;
import org.comparanda.tray.TrayBone;
import org.comparanda.tray.WrittenName;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Records a person's call on a bone. */
@Command(
    name = "call",
    description = {
      "Record a person's call on a bone; earlier calls stay. NAME in open nomenclature: \"Ovis",
      "aries\", \"Ovis cf. aries\", \"Ovis sp.\", \"Bovidae indet.\""
    },
    mixinStandardHelpOptions = true)
final class TrayCall implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(index = "0", paramLabel = "BONE", description = "Number of the bone.")
  private String bone = "";

  @Parameters(index = "1", paramLabel = "NAME", description = "What it was called.")
  private String name = "";

  @Option(names = "--by", required = true, paramLabel = "PERSON", description = "Who called it.")
  private String person = "";

  @Option(
      names = "--basis",
      required = true,
      paramLabel = "TEXT",
      description = "By eye, by measurement, compared with which animals.")
  private String basis = "";

  @Option(names = "--saw-suggestion", description = "The person had seen the suggestion before.")
  private boolean sawSuggestion;

  @Option(
      names = "--collection",
      required = true,
      paramLabel = "FILE",
      description = "The collection, ending in .comparanda.")
  private Path collection = Path.of("");

  TrayCall(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    WrittenName written =
        WrittenName.read(name)
            .fold(
                read -> read,
                none -> {
                  throw new CannotDo(none.reason() + " Nothing was recorded. " + none.remedy());
                });
    try (Collection opened = Collection.open(collection, terminal.clock())) {
      TrayBone called =
          opened
              .trays()
              .bone(new BoneId(bone))
              .orElseThrow(
                  () ->
                      new CannotDo(
                          "There is no bone \""
                              + bone
                              + "\" on a tray. Nothing was recorded. Check the number."));
      if (called.standing() == TrayBone.Standing.STOPPED) {
        throw new CannotDo(
            bone
                + " is set aside as possibly human. Nothing was recorded. Only the person responsible"
                + " may open it again.");
      }
      Call recorded =
          opened
              .trays()
              .record(
                  new Call(
                      0,
                      called.id(),
                      written.taxon(),
                      written.qualifier(),
                      new PersonId(person),
                      terminal.clock().instant(),
                      basis,
                      sawSuggestion));
      terminal.say("Recorded call " + recorded.id() + " on " + bone + ": " + name + ".");
    }
    return Terminal.FINE;
  }
}

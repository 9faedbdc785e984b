package org.comparanda.cli;

import org.comparanda.measurement.PersonId;
import org.comparanda.storage.Collection;
import org.comparanda.tray.Call;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A call typed after looking again: of which bone, what it is called, what that rests on. */
final class LookedCall {
  @Parameters(index = "0", paramLabel = "BONE", description = "Number of the bone.")
  private String bone = "";

  @Parameters(index = "1", paramLabel = "NAME", description = "What it is called.")
  private String name = "";

  @Option(
      names = "--basis",
      required = true,
      paramLabel = "TEXT",
      description = "What it rests on, in the person's words.")
  private String basis = "";

  Call by(PersonId person, Collection opened, Terminal terminal) {
    return SecondLookCommand.call(opened, terminal, person, bone, name, basis);
  }

  String bone() {
    return bone;
  }

  String name() {
    return name;
  }
}

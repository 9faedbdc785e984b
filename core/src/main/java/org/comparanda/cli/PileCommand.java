package org.comparanda.cli;

import picocli.CommandLine.Command;

/** Groups what is done with the pile. */
@Command(
    name = "pile",
    description = {
      "The pile: carcasses and skeletons that came in and are not on the shelf yet, in the order"
          + " in",
      "which they should be prepared."
    },
    synopsisSubcommandLabel = "COMMAND",
    mixinStandardHelpOptions = true)
final class PileCommand {}

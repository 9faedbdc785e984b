package org.comparanda.cli;

import picocli.CommandLine.Command;

/** Groups what is done with old cards. */
@Command(
    name = "cards",
    description = {
      "Old cards: lines of legacy lists, kept as found. What each seems to say is a proposal; a",
      "person accepts it, and then it is a call by eye on a tray."
    },
    synopsisSubcommandLabel = "COMMAND",
    mixinStandardHelpOptions = true)
final class CardsCommand {}

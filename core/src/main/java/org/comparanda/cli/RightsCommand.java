package org.comparanda.cli;

import picocli.CommandLine.Command;

/** Groups: Who may do what: list, give, withdraw. */
@Command(
    name = "rights",
    description = "Who may do what: list, give, withdraw.",
    synopsisSubcommandLabel = "COMMAND",
    mixinStandardHelpOptions = true)
final class RightsCommand {}

package org.comparanda.cli;

import picocli.CommandLine.Command;

/** Groups what is done with trays. */
@Command(
    name = "tray",
    description =
        "Lots and trays on their way through the room, and what people say of their bones.",
    synopsisSubcommandLabel = "COMMAND",
    mixinStandardHelpOptions = true)
final class TrayCommand {}

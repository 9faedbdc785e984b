package org.comparanda.cli;

import picocli.CommandLine.Command;

/** Groups the exports. */
@Command(
    name = "export",
    description = {
      "Take the record out of the house. Calls only, never suggestions; exact places, restricted",
      "bones and bones that may be human are held back."
    },
    synopsisSubcommandLabel = "COMMAND",
    mixinStandardHelpOptions = true)
final class ExportCommand {}

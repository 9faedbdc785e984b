package org.comparanda.cli;

import picocli.CommandLine.Command;

/** Groups what is done with kept answers. */
@Command(
    name = "kept",
    description =
        "Answers kept whole (suggest --keep, or a call at the Bench): list, check against today's"
            + " shelf and program.",
    synopsisSubcommandLabel = "COMMAND",
    mixinStandardHelpOptions = true)
final class KeptCommand {}

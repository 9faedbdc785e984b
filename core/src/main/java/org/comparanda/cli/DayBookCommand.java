package org.comparanda.cli;

import picocli.CommandLine.Command;

/** Groups what is done with the Day Book. */
@Command(
    name = "daybook",
    description = "The record of every change: verify it, show it.",
    synopsisSubcommandLabel = "COMMAND",
    mixinStandardHelpOptions = true)
final class DayBookCommand {}

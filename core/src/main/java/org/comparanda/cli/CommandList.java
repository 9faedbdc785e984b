package org.comparanda.cli;

import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Help.Column;
import picocli.CommandLine.Help.TextTable;
import picocli.CommandLine.IHelpSectionRenderer;
import picocli.CommandLine.Model.UsageMessageSpec;

/** Lists the commands of a group, each with the whole first sentence of its help. */
final class CommandList implements IHelpSectionRenderer {
  private static final int INDENT = 2;

  /** Lists so in the help of this command and of all below it; what they do flows as one text. */
  static void use(CommandLine line) {
    UsageMessageSpec help = line.getCommandSpec().usageMessage();
    help.description(String.join(" ", help.description()));
    line.getHelpSectionMap().put(UsageMessageSpec.SECTION_KEY_COMMAND_LIST, new CommandList());
    line.getSubcommands().values().forEach(CommandList::use);
  }

  @Override
  public String render(Help help) {
    if (help.subcommands().isEmpty()) {
      return "";
    }
    int names =
        help.subcommands().keySet().stream().mapToInt(String::length).max().orElse(0) + 2 * INDENT;
    int width = help.commandSpec().usageMessage().width();
    TextTable table =
        TextTable.forColumns(
            help.colorScheme(),
            new Column(names, INDENT, Column.Overflow.SPAN),
            new Column(width - names, INDENT, Column.Overflow.WRAP));
    help.subcommands()
        .forEach(
            (name, command) ->
                table.addRowValues(
                    name, firstSentence(command.commandSpec().usageMessage().description())));
    return table.toString();
  }

  /** Up to the first full stop before a blank. */
  static String firstSentence(String... lines) {
    String text = String.format(String.join(" ", lines)).strip();
    int end = text.indexOf(". ");
    return end < 0 ? text : text.substring(0, end + 1);
  }
}

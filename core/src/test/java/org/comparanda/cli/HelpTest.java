package org.comparanda.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Clock;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

class HelpTest {
  private final StringWriter trouble = new StringWriter();
  private final CommandLine all =
      Comparanda.commands(
          new Terminal(
              new PrintWriter(new StringWriter()), new PrintWriter(trouble), Clock.systemUTC()));

  @Test
  void everyCommandIsListedWithAWholeSentence() {
    assertAll(
        withAllBelow(all)
            .map(
                line ->
                    () -> {
                      String sentence =
                          CommandList.firstSentence(
                              line.getCommandSpec().usageMessage().description());
                      assertTrue(
                          sentence.endsWith("."), line.getCommandName() + ": \"" + sentence + "\"");
                    }));
  }

  // a bare per cent sign in a help text is a format mark, which picocli then leaves as it is
  @Test
  void perCentSignsInHelpAreWritten() {
    assertAll(
        withAllBelow(all)
            .flatMap(
                line ->
                    Stream.concat(
                        Stream.of(line.getCommandSpec().usageMessage().description()),
                        line.getCommandSpec().args().stream()
                            .flatMap(arg -> Stream.of(arg.description()))))
            .map(text -> () -> assertTrue(!String.format(text).contains("%n"), text)));
  }

  @Test
  void theListOfAGroupSaysMoreThanItsFirstLine() {
    String usage = all.getSubcommands().get("pile").getUsageMessage().replaceAll("\\s+", " ");
    assertTrue(usage.contains("list List the pile, the top first: "), usage);
    assertTrue(usage.contains("ask Record research that waits for an arrival"), usage);
  }

  @Test
  void whatACommandDoesFlowsAsOneText() {
    assertAll(
        withAllBelow(all)
            .map(
                line ->
                    () ->
                        assertEquals(
                            1,
                            line.getCommandSpec().usageMessage().description().length,
                            line.getCommandName())));
  }

  private static Stream<CommandLine> withAllBelow(CommandLine line) {
    return Stream.concat(
        Stream.of(line), line.getSubcommands().values().stream().flatMap(HelpTest::withAllBelow));
  }
}

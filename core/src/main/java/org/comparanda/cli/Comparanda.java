package org.comparanda.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.logging.Level;
import java.util.logging.Logger;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The program at a terminal: builds the commands and hands the words on. */
@Command(
    name = "comparanda",
    description = {
      "Measure an isolated bone and learn which of your own comparative skeletons it fits.",
      "A suggestion is not an identification: open the drawer and look.",
      ""
    },
    synopsisSubcommandLabel = "COMMAND",
    mixinStandardHelpOptions = true,
    versionProvider = ProgramName.class,
    footer = {
      "",
      "Every command has its own --help. Exit codes: 0 fine; 1 done, with problems found;",
      "2 could not be done. Begin with: java -jar core/target/comparanda.jar demo",
      "The forms of tables and JSON stand in docs/formats.md."
    })
public final class Comparanda {
  /** Held here, since the level of a logger that nobody holds is forgotten. */
  private static final Logger SCHEMA_STEPS = Logger.getLogger("org.flywaydb");

  private Comparanda() {}

  /** Runs one command and ends with its exit code. */
  public static void main(String[] words) {
    SCHEMA_STEPS.setLevel(Level.WARNING);
    PrintWriter out = new PrintWriter(System.out, false, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    int code = run(new Terminal(out, err, Clock.systemUTC()), words);
    System.exit(code);
  }

  /** Runs one command on this terminal; everything it says has been written when it returns. */
  static int run(Terminal terminal, String... words) {
    int code = commands(terminal).execute(words);
    terminal.out().flush();
    terminal.err().flush();
    return code;
  }

  /** All commands, with their help. */
  static CommandLine commands(Terminal terminal) {
    CommandLine line = new CommandLine(new Comparanda());
    line.addSubcommand(new DemoCommand(terminal));
    line.addSubcommand(
        new CommandLine(new ShelfCommand())
            .addSubcommand(new ShelfLook(terminal))
            .addSubcommand(new ShelfAdd(terminal))
            .addSubcommand(new ShelfMappings(terminal))
            .addSubcommand(new ShelfShow(terminal))
            .addSubcommand(new ShelfEdit(terminal))
            .addSubcommand(new ShelfMerge(terminal))
            .addSubcommand(new ShelfMove(terminal))
            .addSubcommand(new ShelfRetire(terminal))
            .addSubcommand(new ShelfReminders(terminal))
            .addSubcommand(new ShelfCheckCommand(terminal))
            .addSubcommand(new ShelfStock(terminal))
            .addSubcommand(new ShelfWanted(terminal)));
    line.addSubcommand(
        new CommandLine(new TaxaCommand())
            .addSubcommand(new TaxaAdd(terminal))
            .addSubcommand(new TaxaList(terminal))
            .addSubcommand(new TaxaRename(terminal))
            .addSubcommand(new TaxaPut(terminal))
            .addSubcommand(new TaxaMove(terminal)));
    line.addSubcommand(new SuggestCommand(terminal));
    line.addSubcommand(
        new CommandLine(new KeptCommand())
            .addSubcommand(new KeptList(terminal))
            .addSubcommand(new KeptCheck(terminal)));
    line.addSubcommand(new TrialCommand(terminal));
    line.addSubcommand(new SizeCommand(terminal));
    line.addSubcommand(new TallyCommand(terminal));
    line.addSubcommand(new ErrorCommand(terminal));
    line.addSubcommand(
        new CommandLine(new ExportCommand())
            .addSubcommand(new ExportArchive(terminal))
            .addSubcommand(new ExportTable(terminal))
            .addSubcommand(new ExportShelf(terminal))
            .addSubcommand(new ExportNames(terminal))
            .addSubcommand(new ExportPhotos(terminal))
            .addSubcommand(new ExportOpenCopy(terminal)));
    line.addSubcommand(
        new CommandLine(new TrayCommand())
            .addSubcommand(new TrayList(terminal))
            .addSubcommand(new TrayAdd(terminal))
            .addSubcommand(new TrayState(terminal))
            .addSubcommand(new TrayNumber(terminal))
            .addSubcommand(new TrayCall(terminal))
            .addSubcommand(new TrayWithdraw(terminal))
            .addSubcommand(new TrayElement(terminal))
            .addSubcommand(new TrayHistory(terminal))
            .addSubcommand(new TrayMove(terminal))
            .addSubcommand(new TrayScrap(terminal))
            .addSubcommand(new TrayPriority(terminal))
            .addSubcommand(new TrayAssign(terminal))
            .addSubcommand(new TrayHazards(terminal))
            .addSubcommand(new TrayLot(terminal))
            .addSubcommand(new TrayProgress(terminal))
            .addSubcommand(new TrayStop(terminal))
            .addSubcommand(new TrayOpen(terminal)));
    line.addSubcommand(
        new CommandLine(new SecondLookCommand())
            .addSubcommand(new SecondLookList(terminal))
            .addSubcommand(new SecondLookRecord(terminal))
            .addSubcommand(new SecondLookResolve(terminal))
            .addSubcommand(new SecondLookAgreement(terminal)));
    line.addSubcommand(new SearchCommand(terminal));
    line.addSubcommand(
        new CommandLine(new RightsCommand())
            .addSubcommand(new RightsList(terminal))
            .addSubcommand(new RightsGive(terminal))
            .addSubcommand(new RightsWithdraw(terminal)));
    line.addSubcommand(
        new CommandLine(new PeopleCommand())
            .addSubcommand(new PeopleList(terminal))
            .addSubcommand(new PeopleName(terminal))
            .addSubcommand(new PeopleBlank(terminal)));
    line.addSubcommand(
        new CommandLine(new RulesCommand())
            .addSubcommand(new RulesList(terminal))
            .addSubcommand(new RulesSet(terminal)));
    line.addSubcommand(
        new CommandLine(new DayBookCommand())
            .addSubcommand(new DayBookVerify(terminal))
            .addSubcommand(new DayBookShow(terminal)));
    line.addSubcommand(
        new CommandLine(new CardsCommand())
            .addSubcommand(new CardsAdd(terminal))
            .addSubcommand(new CardsShapes(terminal))
            .addSubcommand(new CardsList(terminal))
            .addSubcommand(new CardsAccept(terminal))
            .addSubcommand(new CardsRefuse(terminal)));
    line.addSubcommand(
        new CommandLine(new PileCommand())
            .addSubcommand(new PileAdd(terminal))
            .addSubcommand(new PileList(terminal))
            .addSubcommand(new PileStage(terminal))
            .addSubcommand(new PileAsk(terminal)));
    line.addSubcommand(new SlipsCommand(terminal));
    line.addSubcommand(new BackupCommand(terminal));
    line.addSubcommand(new RestoreCommand(terminal));
    line.setOut(terminal.out());
    line.setErr(terminal.err());
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setParameterExceptionHandler(new WrongWords(terminal));
    line.setExecutionExceptionHandler(new Failures(terminal));
    CommandList.use(line);
    return line;
  }
}

package org.comparanda.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.comparanda.dossier.Dossier;
import org.comparanda.measurement.BoneId;
import org.comparanda.reference.BoneInHand;
import org.comparanda.slips.BoneReport;
import org.comparanda.slips.LabelSize;
import org.comparanda.slips.Paper;
import org.comparanda.slips.SlipFacts;
import org.comparanda.slips.Slips;
import org.comparanda.stock.Wanted;
import org.comparanda.storage.Collection;
import org.comparanda.suggestion.Comparison;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Labels, cards, lists and reports as PDF. */
@Command(
    name = "slips",
    description = {
      "Write labels, cards and lists as PDF. KIND: labels, cards (one a tray), drawers (of the own",
      "shelf), pile (what came in), wanted (what to prepare next), calls, or report (of one --bone). Slips stay in the house:"
          + " places are on them."
    },
    mixinStandardHelpOptions = true)
final class SlipsCommand implements Callable<Integer> {
  private final Terminal terminal;

  /** What is printed. */
  enum Kind {
    LABELS,
    CARDS,
    DRAWERS,
    PILE,
    WANTED,
    CALLS,
    REPORT
  }

  @Parameters(
      index = "0",
      paramLabel = "KIND",
      description = "labels, cards, drawers, pile, wanted, calls or report.")
  private Kind kind = Kind.LABELS;

  @Parameters(index = "1", paramLabel = "OUT.pdf", description = "The PDF.")
  private Path out = Path.of("");

  @Option(
      names = "--collection",
      required = true,
      paramLabel = "FILE",
      description = "The collection, ending in .comparanda.")
  private Path collection = Path.of("");

  @Option(names = "--lot", split = ",", paramLabel = "LOT", description = "Only these lots.")
  private List<String> lots = List.of();

  @Option(names = "--bone", paramLabel = "B", description = "The bone of the report.")
  private @Nullable String bone;

  @Option(names = "--paper", paramLabel = "SIZE", description = "A4 or letter.")
  private Paper paper = Paper.A4;

  @Option(names = "--label", paramLabel = "SIZE", description = "ordinary or small.")
  private LabelSize label = LabelSize.ORDINARY;

  SlipsCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    int[] pages = {0};
    String head;
    try (Collection opened = Collection.open(collection, terminal.clock())) {
      opened.caution().ifPresent(terminal::note);
      head = opened.dayBookHead();
      ReferenceTables tables = HouseTables.of(opened);
      SlipFacts facts = facts(opened, tables, head);
      FinishedFile.write(out, bytes -> pages[0] = write(bytes, opened, tables, facts));
    }
    terminal.say("Wrote " + out + ": " + Count.of(pages[0], "page") + "; Day Book " + head + ".");
    return Terminal.FINE;
  }

  private SlipFacts facts(Collection opened, ReferenceTables tables, String head) {
    boolean simulated =
        opened.trays().all().stream().anyMatch(t -> t.provenance().contains("simulated"))
            || opened.animals().shelf().animals().stream()
                .anyMatch(a -> a.remarks().contains("simulated"));
    return new SlipFacts(
        paper,
        String.valueOf(collection.getFileName()).replace(Collection.ENDING, ""),
        ProgramName.current().program() + " " + ProgramName.current().version(),
        terminal.clock().instant(),
        head,
        simulated ? SlipFacts.DataKind.SIMULATED : SlipFacts.DataKind.RECORDED,
        tables.protocol(),
        ExportedBones.names(opened.people()));
  }

  private int write(OutputStream bytes, Collection opened, ReferenceTables tables, SlipFacts facts)
      throws IOException {
    Slips slips = new Slips(facts);
    return switch (kind) {
      case LABELS -> slips.labels(bytes, bones(opened), label);
      case CARDS -> slips.trayCards(bytes, trays(opened));
      case DRAWERS -> slips.drawerList(bytes, opened.animals().shelf());
      case PILE -> slips.pile(bytes, PileList.entries(opened));
      case WANTED -> slips.wanted(bytes, Wanted.withDefaults().of(opened.animals().shelf()));
      case CALLS -> slips.callSlips(bytes, bones(opened));
      case REPORT -> report(bytes, opened, tables, facts);
    };
  }

  private List<Dossier> bones(Collection opened) {
    List<Dossier> bones = Dossier.ofLots(lots, opened.trays(), opened.readings());
    if (bones.isEmpty()) {
      throw new CannotDo("There is no bone to print. Nothing was written. Look at --lot.");
    }
    return bones;
  }

  private Map<Tray, List<Dossier>> trays(Collection opened) {
    Map<Tray, List<Dossier>> trays = new LinkedHashMap<>();
    for (Tray tray : opened.trays().all()) {
      if (lots.isEmpty() || lots.contains(tray.lot())) {
        trays.put(tray, Dossier.of(tray, opened.trays(), opened.readings()));
      }
    }
    return trays;
  }

  private int report(OutputStream bytes, Collection opened, ReferenceTables tables, SlipFacts facts)
      throws IOException {
    Dossier dossier =
        Optional.ofNullable(bone)
            .flatMap(number -> opened.trays().bone(new BoneId(number)))
            .flatMap(found -> dossier(opened, found))
            .orElseThrow(
                () ->
                    new CannotDo(
                        "There is no bone \""
                            + Optional.ofNullable(bone).orElse("")
                            + "\" on a tray. Nothing was written. Give its number by --bone."));
    Optional<BoneReport.Subject> subject =
        dossier.bone().standing() == TrayBone.Standing.STOPPED
            ? Optional.empty()
            : Optional.of(compared(opened, tables, dossier));
    return new BoneReport(facts).write(bytes, dossier, subject);
  }

  private static Optional<Dossier> dossier(Collection opened, TrayBone bone) {
    return opened.trays().all().stream()
        .filter(tray -> tray.id().equals(bone.tray()))
        .findFirst()
        .map(
            tray ->
                new Dossier(
                    tray,
                    bone,
                    opened.trays().callsOn(bone.id()),
                    opened.readings().of(bone.id())));
  }

  private static BoneReport.Subject compared(
      Collection opened, ReferenceTables tables, Dossier dossier) {
    Comparison comparison =
        Comparison.of(
            opened.animals().shelf(),
            tables.protocol(),
            tables.taxa(),
            opened.houseRules().inForce().comparison().withAge(dossier.tray().age()));
    BoneInHand inHand = dossier.inHand();
    return new BoneReport.Subject(
        comparison.suggest(inHand), inHand, comparison.points(inHand.element(), inHand));
  }
}

package org.comparanda.gui.app;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.comparanda.dossier.BesideCall;
import org.comparanda.dossier.Dossier;
import org.comparanda.gui.text.Words;
import org.comparanda.gui.tray.Printing;
import org.comparanda.gui.tray.TrayRoom;
import org.comparanda.gui.tray.TrayView;
import org.comparanda.gui.tray.TrayViewModel;
import org.comparanda.slips.LabelSize;
import org.comparanda.slips.Slips;
import org.comparanda.storage.Collection;
import org.comparanda.suggestion.Comparison;
import org.comparanda.tables.SkeletonGroups;
import org.comparanda.tables.TraitTable;
import org.comparanda.tally.CalledBones;
import org.comparanda.tally.PlaceTally;
import org.comparanda.tally.ProtocolNumbers;
import org.comparanda.tally.Tally;
import org.comparanda.tally.TaxonTally;
import org.comparanda.taxon.TaxonName;
import org.comparanda.tray.Beside;
import org.comparanda.tray.SpokenNames;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;

/** Wires the Tray screen. */
final class TrayScreen {
  private final Workplace place;
  private final Words words;

  TrayScreen(Workplace place) {
    this.place = place;
    this.words = Words.of("tray", place.locale());
  }

  TrayView view(String note) {
    Collection collection = place.collection();
    Supplier<SpokenNames> spoken =
        place.taxa().following(tree -> new SpokenNames(place.tables().protocol().elements(), tree));
    TrayRoom room =
        new TrayRoom(
            collection.trays(),
            person -> collection.by(person).trays(),
            collection.lots(),
            person -> collection.by(person).lots(),
            collection.scraps(),
            collection.stops(),
            collection.houseRules(),
            collection.search(words -> spoken.get().of(words)),
            person -> collection.by(person).numbering(),
            () -> collection.grants().rights(),
            collection.people(),
            collection.readings(),
            place.tables().protocol(),
            place.taxa(),
            place
                .taxa()
                .following(
                    tree -> TraitTable.shipped(place.locale(), place.tables().protocol(), tree)),
            this::beside,
            this::counts,
            words,
            place.locale(),
            place.clock());
    return new TrayView(
        new TrayViewModel(room, place.work(), place.ui()), note, (slip, tray) -> print(slip, tray));
  }

  private Beside beside(Tray tray, TrayBone bone, TaxonName called) {
    return BesideCall.of(
        Comparison.of(
            place.collection().animals().shelf(),
            place.tables().protocol(),
            place.taxa().get(),
            place.collection().houseRules().inForce().comparison().withAge(tray.age())),
        new Dossier(tray, bone, List.of(), place.collection().readings().of(bone.id())),
        called);
  }

  private List<String> counts(String lot) {
    CalledBones called =
        CalledBones.of(place.collection().trays(), List.of(lot), place.taxa().get());
    if (called.refusal().isPresent()) {
      return List.of(words.said(called.refusal().get()));
    }
    SkeletonGroups groups = SkeletonGroups.shipped(place.taxa().get());
    Tally tally = new Tally(new ProtocolNumbers(place.tables().protocol(), groups::of, Map.of()));
    List<String> lines = new ArrayList<>(List.of(words.said(called.sentence())));
    for (PlaceTally here : tally.count(called.rows())) {
      lines.add(words.get("count.place", here.place()));
      for (TaxonTally taxon : here.taxa()) {
        lines.add(words.get("count.taxon", taxon.taxon(), taxon.nisp(), taxon.mni()));
        taxon.steps().forEach(step -> lines.add("    " + words.said(step)));
      }
    }
    lines.add(words.get("count.closing"));
    return lines;
  }

  private Optional<String> print(Printing.Slip slip, Tray tray) {
    return new SaveDialog().choose(tray.id().value() + ".pdf").map(file -> write(file, slip, tray));
  }

  private String write(Path file, Printing.Slip slip, Tray tray) {
    Collection collection = place.collection();
    String head = collection.dayBookHead();
    List<Dossier> bones = Dossier.of(tray, collection.trays(), collection.readings());
    Slips slips = new Slips(PageFacts.of(place));
    try (OutputStream out = Files.newOutputStream(file)) {
      int pages =
          switch (slip) {
            case LABELS -> slips.labels(out, bones, LabelSize.ORDINARY);
            case CARD -> slips.trayCards(out, Map.of(tray, bones));
            case CALLS -> slips.callSlips(out, bones);
          };
      return words.get("print.done", file.getFileName(), pages, head);
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }
}

package org.comparanda.suggestion;

import java.util.ArrayList;
import java.util.List;
import org.comparanda.bone.ElementKey;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.Shelf;
import org.comparanda.taxon.TaxonName;

/** Takes each taxon off the shelf in turn and offers its animals to the rest. */
final class Strangers {
  private Strangers() {}

  static StrangerTrial of(Comparison comparison, ElementKey element, List<MeasurementCode> set) {
    List<StrangerTrial.Stranger> taxa = new ArrayList<>();
    for (TaxonName taxon : comparison.element(element).taxa()) {
      taxa.add(offer(comparison, element, set, taxon));
    }
    return new StrangerTrial(
        comparison.trial(element, set), known(comparison.run(element, set)), sum(taxa), taxa);
  }

  private static StrangerTrial.Known known(TrialRun run) {
    List<HeldOut> named =
        run.animals().stream().filter(r -> r.beforeGate() == Answer.FITS_ONE).toList();
    int right = (int) named.stream().filter(HeldOut::hit).count();
    return new StrangerTrial.Known(run.animals().size(), right, named.size() - right);
  }

  private static StrangerTrial.Stranger offer(
      Comparison whole, ElementKey element, List<MeasurementCode> set, TaxonName taxon) {
    Shelf rest = whole.shelf().only(animal -> animal.taxon().filter(taxon::equals).isEmpty());
    Comparison others = Comparison.of(rest, whole.protocol(), whole.tree(), whole.rules());
    List<StrangerRow> rows = new ArrayList<>();
    for (HeldOut row : whole.run(element, set).animals()) {
      if (row.taxon().equals(taxon)) {
        rows.add(StrangerRow.of(others, element, row.offered(), set));
      }
    }
    return new StrangerTrial.Stranger(
        taxon,
        rows.size(),
        count(rows, Answer.FITS_ONE),
        (int)
            rows.stream()
                .filter(r -> r.largestShare() >= whole.rules().thresholds().oneShare())
                .count(),
        count(rows, Answer.NOTHING_FITS));
  }

  private static int count(List<StrangerRow> rows, Answer answer) {
    return (int) rows.stream().filter(r -> r.answer() == answer).count();
  }

  private static StrangerTrial.Stranger sum(List<StrangerTrial.Stranger> taxa) {
    return new StrangerTrial.Stranger(
        new TaxonName("all taxa"),
        taxa.stream().mapToInt(StrangerTrial.Stranger::bones).sum(),
        taxa.stream().mapToInt(StrangerTrial.Stranger::fitsOne).sum(),
        taxa.stream().mapToInt(StrangerTrial.Stranger::plainShare95).sum(),
        taxa.stream().mapToInt(StrangerTrial.Stranger::nothingFits).sum());
  }
}

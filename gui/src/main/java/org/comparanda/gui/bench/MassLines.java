package org.comparanda.gui.bench;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.comparanda.gui.bench.Advice.Size;
import org.comparanda.measurement.Protocol;
import org.comparanda.reference.BoneInHand;
import org.comparanda.reference.Shelf;
import org.comparanda.sizeestimate.FittedLine;
import org.comparanda.sizeestimate.SizeDesk;
import org.comparanda.sizeestimate.SizeQuestion;
import org.comparanda.statistics.Outcome;
import org.comparanda.suggestion.Suggestion;
import org.comparanda.suggestion.TaxonFit;
import org.comparanda.taxon.TaxonName;

/** Body mass by lines of one taxon on one shelf; a line once fitted is kept. */
final class MassLines {
  private final SizeDesk desk;
  private final Map<SizeQuestion, Outcome<FittedLine>> fitted = new ConcurrentHashMap<>();

  MassLines(Shelf shelf, Protocol protocol) {
    desk = SizeDesk.of(shelf, protocol);
  }

  /** Body mass by the line that is surest for this bone, if it is of the likeliest candidate. */
  Optional<Size> of(Suggestion suggestion, BoneInHand bone) {
    return suggestion.taxa().stream()
        .filter(fit -> suggestion.candidates().contains(fit.taxon()))
        .max(Comparator.comparingDouble(TaxonFit::share))
        .flatMap(fit -> mass(fit.taxon(), bone));
  }

  private Optional<Size> mass(TaxonName taxon, BoneInHand bone) {
    List<SizeQuestion> questions =
        bone.values().keySet().stream()
            .map(code -> SizeQuestion.of("body_mass", bone.element() + "." + code))
            .map(question -> question.withTaxa(Set.of(taxon)))
            .toList();
    return lines(questions, bone).stream()
        .flatMap(line -> size(taxon, line, bone).stream())
        .min(Comparator.comparingDouble(s -> s.highG() / s.lowG()));
  }

  /** The lines there are; a bone of a shelf animal is asked of lines without that animal. */
  private List<FittedLine> lines(List<SizeQuestion> questions, BoneInHand bone) {
    Optional<SizeDesk> others = bone.animal().map(desk::without);
    return questions.stream()
        .map(q -> others.map(d -> d.line(q)).orElseGet(() -> line(q)))
        .flatMap(line -> line.value().stream())
        .toList();
  }

  private Outcome<FittedLine> line(SizeQuestion question) {
    return fitted.computeIfAbsent(question, desk::line);
  }

  private static Optional<Size> size(TaxonName taxon, FittedLine line, BoneInHand bone) {
    return line.estimate(bone)
        .value()
        .flatMap(
            estimate ->
                estimate
                    .prediction()
                    .value()
                    .map(interval -> new Size(taxon, line.n(), estimate, interval)));
  }
}

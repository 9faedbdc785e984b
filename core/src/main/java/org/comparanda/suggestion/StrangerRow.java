package org.comparanda.suggestion;

import java.util.List;
import org.comparanda.bone.ElementKey;
import org.comparanda.measurement.MeasurementCode;

/** What a shelf says of a bone whose taxon it lacks. */
record StrangerRow(Answer answer, double largestShare) {

  static StrangerRow of(
      Comparison others, ElementKey element, Offered offered, List<MeasurementCode> set) {
    List<MeasurementCode> part =
        offered.bone().partOf(others.element(element).codes()).stream()
            .filter(set::contains)
            .toList();
    if (!Coordinates.possible(others.rules().scale(), part.size())) {
      return new StrangerRow(Answer.NOT_FITTED, 0);
    }
    return Judgement.of(
            others,
            new Judgement.Question(element, part, offered.bone(), Sample.STRANGER, offered.offer()))
        .fold(
            judgement ->
                new StrangerRow(judgement.verdict().answer(), judgement.fits().get(0).share()),
            none -> new StrangerRow(Answer.SHELF_TOO_THIN, 0));
  }
}

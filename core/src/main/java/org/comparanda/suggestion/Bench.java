package org.comparanda.suggestion;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.BoneInHand;
import org.comparanda.taxon.TaxonName;

/** Answers one bone: the steps of the answer rules in their order, with everything shown beside. */
final class Bench {
  private final Comparison comparison;
  private final BoneInHand bone;
  private final ElementRows element;
  private final BoneRow values;
  private final List<MeasurementCode> set;
  private final ComparisonRules rules;
  private final Ladder ladder;

  Bench(Comparison comparison, BoneInHand bone) {
    this.comparison = comparison;
    this.bone = bone;
    this.rules = comparison.rules();
    this.element = comparison.element(bone.element());
    this.values = ElementRows.scaled(bone.side(), bone.values(), rules.scale());
    this.set = values.partOf(element.codes());
    this.ladder = new Ladder(comparison.tree(), rules.age());
  }

  Suggestion suggest() {
    Optional<BeforeFit> early = beforeFit();
    if (early.isPresent()) {
      return unfitted(early.get());
    }
    Sample sample = comparison.sample(bone.element(), set);
    int unit = sample.unit(own());
    String noPriors =
        rules
            .priors()
            .among(sample.taxa(), group -> 1)
            .fold(p -> "", none -> none.reason() + " " + none.remedy());
    if (!noPriors.isEmpty()) {
      return unfitted(BeforeFit.notFitted(noPriors, rules.phrases()));
    }
    Judgement.Question question =
        new Judgement.Question(bone.element(), set, values, unit, offer());
    return Judgement.of(comparison, question)
        .fold(judgement -> fitted(question, judgement), none -> tooThin(unit, none.reason()));
  }

  private Sample.Offer offer() {
    return rules.counting() == Counting.BONES ? Sample.Offer.ANIMAL : Sample.offerOf(bone.side());
  }

  private Optional<BeforeFit> beforeFit() {
    Phrases phrases = rules.phrases();
    String name = line().elementName(bone.element());
    Optional<BeforeFit> state =
        BeforeFit.ofState(bone, comparison.shelf(), comparison.tree(), name, phrases);
    if (state.isPresent()) {
      return state;
    }
    if (set.isEmpty()) {
      return Optional.of(BeforeFit.notFitted(phrases.say("notfitted.nothing", name), phrases));
    }
    if (!Coordinates.possible(rules.scale(), set.size())) {
      return Optional.of(BeforeFit.notFitted(phrases.say("notfitted.proportions"), phrases));
    }
    return Optional.empty();
  }

  private SampleLine line() {
    return new SampleLine(comparison.protocol(), rules.language());
  }

  private Suggestion unfitted(BeforeFit reason) {
    return new Suggestion(
        bone.id(),
        bone.element(),
        set,
        reason.answer(),
        reason.sentence(),
        "",
        about(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        "",
        Optional.empty(),
        List.of(),
        List.of(),
        List.of(),
        warnings(),
        basis(0, 0, "none: no fit was made", Suggestion.Missing.notFitted()));
  }

  private Suggestion tooThin(int unit, String why) {
    TooThin thin = new TooThin(rules, s -> comparison.sample(bone.element(), s));
    return unfitted(new BeforeFit(Answer.SHELF_TOO_THIN, thin.sentence(set, unit, why)));
  }

  private Suggestion fitted(Judgement.Question question, Judgement judgement) {
    Verdict verdict = judgement.verdict();
    List<TaxonFit> fits = judgement.fits();
    Fit fit = judgement.fit();
    int animals = fit.moments().rows();
    MissingWords missing = new MissingWords(fit, values, rules.thresholds());
    List<SizeFreeFit> withoutSize = withoutSize(judgement);
    CalibratedList calibrated = CalibratedList.of(fit.sample(), question, fits, rules.thresholds());
    return new Suggestion(
        bone.id(),
        bone.element(),
        set,
        verdict.answer(),
        new AnswerSentence(ladder, rules).of(verdict, fits, judgement.gate()),
        line().of(bone, set.size(), animals)
            + missing.inShort()
            + line()
                .trial(
                    verdict,
                    judgement.gate(),
                    judgement.trial().toldApart(verdict.taxa(), fit.unit())),
        details(question, judgement, withoutSize),
        fits,
        withoutSize,
        ladder.groups(fits),
        verdict.taxa(),
        calibrated.taxa(),
        calibrated.label(),
        ladder.proposal(verdict),
        new DrawerList(fit, judgement.distances(), values, rules).of(fits),
        NearestList.of(fit, values),
        next(verdict, fits, fit.unit()),
        warnings(),
        basis(animals, fits.size(), judgement.reason(), missing.basis()));
  }

  private List<NextMeasurement> next(Verdict verdict, List<TaxonFit> fits, int unit) {
    return verdict.answer() == Answer.NOTHING_FITS || rules.scale() == Scale.PROPORTIONS
        ? List.of()
        : comparison.nextBest(bone.element()).of(element, values, set, bone.portion(), fits, unit);
  }

  private List<SizeFreeFit> withoutSize(Judgement judgement) {
    return rules.scale() == Scale.LN && judgement.fit().filled().isEmpty()
        ? new SizeFree(rules.thresholds()).of(judgement.fit(), values, judgement.fits())
        : List.of();
  }

  private List<String> details(
      Judgement.Question question, Judgement judgement, List<SizeFreeFit> withoutSize) {
    Explanation explanation =
        new Explanation(
            judgement.fit().sample(),
            values,
            judgement.fits(),
            judgement.verdict(),
            rules.phrases());
    List<String> details = new ArrayList<>();
    explanation.why(judgement.distances()).ifPresent(details::add);
    explanation.lessLikely().ifPresent(details::add);
    explanation.thin().ifPresent(details::add);
    new MissingWords(judgement.fit(), values, rules.thresholds())
        .notRuledOut()
        .ifPresent(details::add);
    details.addAll(sensitivity(question, judgement));
    details.addAll(new SizeFree(rules.thresholds()).sentences(judgement.fits(), withoutSize));
    details.addAll(about());
    return details;
  }

  private List<String> sensitivity(Judgement.Question question, Judgement judgement) {
    Sensitivity sensitivity =
        new Sensitivity(comparison.answers(), judgement.fits(), judgement.verdict());
    List<String> hangsOn = new ArrayList<>();
    sensitivity
        .readings(set, other -> Judgement.beforeGate(comparison, question.withSet(other)))
        .ifPresent(hangsOn::add);
    for (Priors other : List.of(Priors.equal(), Priors.shelf())) {
      if (other.kind() != rules.priors().kind()) {
        Judgement.fits(comparison, question, rules.withPriors(other))
            .value()
            .flatMap(fits -> sensitivity.priors(supposed(other), fits))
            .ifPresent(hangsOn::add);
      }
    }
    return hangsOn;
  }

  private static String supposed(Priors priors) {
    return priors.kind() == Priors.Kind.SHELF
        ? "if each kind were as common as on the shelf"
        : "if every kind were equally likely";
  }

  /** What is true of this question whatever the answer. */
  private List<String> about() {
    List<String> about = new ArrayList<>();
    own().ifPresent(a -> about.add(ownAnimal(bone.animal().orElse(a), a)));
    rules.setAside().forEach(s -> about.add(aside(s)));
    return about;
  }

  /** The bone's animal if it is on the shelf, under whichever of its numbers it was given. */
  private Optional<AnimalId> own() {
    return bone.animal()
        .map(comparison.shelf()::number)
        .filter(a -> comparison.shelf().animal(a).isPresent());
  }

  private static String ownAnimal(AnimalId given, AnimalId stands) {
    return "This bone belongs to "
        + given
        + (given.equals(stands) ? "" : ", a second number of " + stands)
        + " on the shelf; that animal is left out of everything here.";
  }

  private String aside(SetAside aside) {
    boolean there =
        comparison.shelf().animals().stream()
            .anyMatch(
                a -> a.taxon().filter(t -> comparison.tree().same(t, aside.taxon())).isPresent());
    TaxonName now = comparison.tree().accepted(aside.taxon());
    return "Set aside: "
        + aside.taxon()
        + (now.equals(aside.taxon()) ? "" : ", now " + now)
        + " ("
        + aside.reason()
        + (there ? ")." : "); the shelf holds none, check the name.");
  }

  private List<String> warnings() {
    List<String> warnings = new ArrayList<>();
    for (Map.Entry<MeasurementCode, Double> reading : bone.values().entrySet()) {
      MeasurementCode code = reading.getKey();
      if (!element.codes().contains(code) && element.shown().containsKey(code)) {
        warnings.add(
            code
                + " was not compared: it is taken along the curve with a tape, the others straight"
                + " with the caliper, and no fit mixes the two.");
      } else if (!element.codes().contains(code)) {
        warnings.add(code + " was not compared: no animal on the shelf has it for this element.");
      } else if (!set.contains(code)) {
        warnings.add(
            code + " was not compared: " + reading.getValue() + " is no length. Measure it again.");
      } else {
        element
            .outside(code, values.values().getOrDefault(code, 0.0), rules.scale())
            .ifPresent(warnings::add);
      }
    }
    return warnings;
  }

  private Suggestion.Basis basis(int animals, int taxa, String method, Suggestion.Missing missing) {
    return new Suggestion.Basis(
        animals,
        taxa,
        rules.priors().name(),
        method,
        missing,
        own(),
        rules.setAside(),
        rules.thresholds(),
        comparison.shelfVersion());
  }
}

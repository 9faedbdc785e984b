package org.comparanda.capture;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.How;
import org.comparanda.measurement.Length;
import org.comparanda.measurement.Measurement;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.Protocol;
import org.comparanda.measurement.Reading;

/**
 * Where the measuring of one bone stands. Pass 1 takes every measurement once; then the bone is put
 * down and pass 2 takes them again, pass 1 hidden; a third take follows where the two differ beyond
 * the tolerance. The value is the mean of two or the median of three; all rows are kept.
 *
 * <p>Everything follows from the rows of the log, so that a bone comes back after a crash as it
 * was. A command changes nothing itself: it gives a {@link Step}, whose rows go to the log first.
 */
public final class Passes {
  /** How the reason of a take begins whose jaws stood on two sides of a break. */
  public static final String ACROSS_BREAK = "across a break. ";

  private static final int LAST_PASS = 3;

  private final BoneId bone;
  private final ElementKey element;
  private final List<Measurement> measurements;
  private final Set<MeasurementCode> acrossBreak;
  private final PassRules rules;
  private final List<Reading> log;
  private final Takes takes;
  private final Optional<Visit> visit;

  /** A field gone to out of turn: to correct its reading, or for one more take. */
  private record Visit(Place place, Purpose purpose) {}

  private enum Purpose {
    CORRECTION,
    MORE
  }

  private Passes(
      BoneId bone,
      ElementKey element,
      List<Measurement> measurements,
      Set<MeasurementCode> acrossBreak,
      PassRules rules,
      List<Reading> log,
      Optional<Visit> visit) {
    this.bone = bone;
    this.element = element;
    this.measurements = List.copyOf(measurements);
    this.acrossBreak = Set.copyOf(acrossBreak);
    this.rules = rules;
    this.log = List.copyOf(log);
    this.visit = visit;
    takes = Takes.of(element, this.log);
  }

  /**
   * The state that these rows make, for a bone of this element and portion. Rows of another element
   * are kept and wait there.
   */
  public static Passes restore(
      BoneId bone,
      ElementKey element,
      Portion portion,
      Protocol protocol,
      PassRules rules,
      List<Reading> log) {
    List<Measurement> possible =
        protocol.of(element).stream()
            .filter(m -> m.how() == How.CALIPER)
            .filter(m -> m.needs().isEmpty() || m.needs().contains(portion))
            .toList();
    return new Passes(bone, element, possible, Set.of(), rules, log, Optional.empty());
  }

  /** The same measuring of a bone in pieces: takes of these measurements say so in the log. */
  public Passes withAcrossBreak(Set<MeasurementCode> codes) {
    return new Passes(bone, element, measurements, codes, rules, log, visit);
  }

  /** Whether a measurement of this bone crosses a break. */
  public boolean acrossBreak(MeasurementCode code) {
    return acrossBreak.contains(code);
  }

  /** The state after the log took these rows. */
  public Passes with(List<Reading> appended) {
    List<Reading> all = new ArrayList<>(log);
    all.addAll(appended);
    return new Passes(bone, element, measurements, acrossBreak, rules, all, Optional.empty());
  }

  /** The bone that is measured. */
  public BoneId bone() {
    return bone;
  }

  /** As which element it is measured. */
  public ElementKey element() {
    return element;
  }

  /** The measurements that this bone can have, in protocol order. */
  public List<Measurement> measurements() {
    return measurements;
  }

  /** The field that waits for a reading; empty when all passes are over. */
  public Optional<Place> current() {
    return visit.map(Visit::place).or(this::due);
  }

  /** The measurement that waits for a reading. */
  public Optional<Measurement> currentMeasurement() {
    return current().map(place -> measurement(place.code()));
  }

  /** Whether bone down, caliper to zero, is due before the next reading. */
  public boolean boneDown() {
    Optional<Place> next = current();
    return next.isPresent()
        && next.get().pass() > 1
        && takes.rows().stream().noneMatch(row -> row.pass() == next.get().pass());
  }

  /** Number of the newest row of this bone that counts; 0 where none does. */
  public long newest() {
    return takes.rows().stream().mapToLong(Reading::id).max().orElse(0);
  }

  /** Whether a field was gone to out of turn. */
  public boolean visiting() {
    return visit.isPresent();
  }

  /** Whether the log has no row of this bone. */
  public boolean untouched() {
    return log.isEmpty();
  }

  /** Whether nothing is due any more. */
  public boolean complete() {
    return due().isEmpty();
  }

  /** The fields of a pass, in order: all of them; those taken before; those that disagree. */
  public List<Place> places(int pass) {
    return measurements.stream()
        .filter(
            m ->
                pass == 1
                    || (pass == 2 && takes.value(new Place(m.code(), 1)).isPresent())
                    || (pass == LAST_PASS && takes.beyondTolerance(m)))
        .map(m -> new Place(m.code(), pass))
        .toList();
  }

  /** The rows of a field that may be seen now: during a later pass the earlier ones are hidden. */
  public List<Reading> visible(MeasurementCode code) {
    Optional<Place> now = current();
    return takes.rows().stream()
        .filter(row -> row.code().equals(code))
        .filter(row -> now.isEmpty() || row.pass() == now.get().pass())
        .toList();
  }

  /** Measurements taken before that must not be seen while they are taken again. */
  public Set<MeasurementCode> hidden() {
    Set<MeasurementCode> hidden = new TreeSet<>();
    measurements.stream()
        .map(Measurement::code)
        .filter(code -> !counting(code).isEmpty() && visible(code).isEmpty())
        .forEach(hidden::add);
    return Collections.unmodifiableSet(hidden);
  }

  /** The rows of a field that count (neither withdrawn nor replaced), hidden ones included. */
  public List<Reading> counting(MeasurementCode code) {
    return takes.rows().stream().filter(row -> row.code().equals(code)).toList();
  }

  /** The value of each measurement taken so far, mm: mean of two or median of three takes. */
  public Map<MeasurementCode, Double> values() {
    Map<MeasurementCode, Double> values = new TreeMap<>();
    for (Measurement m : measurements) {
      takes.value(m.code()).ifPresent(value -> values.put(m.code(), value));
    }
    return Collections.unmodifiableMap(values);
  }

  /** Accepts one value, or several of a burst into as many fields of this pass. */
  public Step accept(List<CaliperValue> values, Hand hand) {
    List<Place> fields = open();
    if (fields.isEmpty()) {
      return new Step.Refused("All passes are over. Take one more with *, or record the call.");
    }
    if (values.size() > fields.size()) {
      return new Step.Refused(
          values.size()
              + " values came and "
              + fields.size()
              + " fields are left in this pass. Nothing was taken; send them one by one.");
    }
    List<Reading> rows = new ArrayList<>();
    for (int i = 0; i < values.size(); i++) {
      CaliperValue value = values.get(i);
      rows.add(rows(hand).take(fields.get(i), value.asTyped(), value.length(), why(fields.get(i))));
    }
    return new Step.Append(rows);
  }

  /**
   * Accepts what a warning proposed in place of the value typed. Both are kept: the text as typed,
   * the length proposed, and the reason.
   */
  public Step acceptProposal(CaliperValue typed, Length proposal, String why, Hand hand) {
    return current()
        .<Step>map(
            place ->
                new Step.Append(
                    List.of(rows(hand).take(place, typed.asTyped(), proposal, why(place) + why))))
        .orElse(new Step.Refused("All passes are over."));
  }

  private String why(Place place) {
    return acrossBreak(place.code()) ? ACROSS_BREAK : "";
  }

  /** Records that the current measurement can't be taken. */
  public Step notPossible(NotPossible reason, Hand hand) {
    return current()
        .<Step>map(place -> new Step.Append(List.of(rows(hand).notPossible(place, reason))))
        .orElse(new Step.Refused("All passes are over."));
  }

  /** Withdraws the last row that counts; nothing is erased. */
  public Step undo(Hand hand) {
    return takes
        .last()
        .<Step>map(last -> new Step.Append(List.of(rows(hand).withdrawal(last))))
        .orElse(new Step.Refused("There is no reading to undo."));
  }

  /** Goes to the field before this one in the same pass; a reading there is then a correction. */
  public Step previous() {
    int pass = current().map(Place::pass).orElse(2);
    List<Place> fields = places(pass);
    int here = current().map(fields::indexOf).orElse(fields.size());
    return here <= 0
        ? new Step.Refused("This is the first field of the pass. Undo with / goes further back.")
        : visiting(fields.get(here - 1), Purpose.CORRECTION);
  }

  /** Goes to any field of the current pass. */
  public Step goTo(MeasurementCode code) {
    Place place = new Place(code, current().map(Place::pass).orElse(2));
    return places(place.pass()).contains(place)
        ? visiting(place, Purpose.CORRECTION)
        : new Step.Refused(code + " has no field in this pass.");
  }

  /** One more take of the last field that was read. */
  public Step anotherTake() {
    Optional<Reading> last = takes.last();
    if (last.isEmpty() || last.get().length().isEmpty()) {
      return new Step.Refused("There is no take yet that one more could be compared with.");
    }
    int pass = complete() ? LAST_PASS : last.get().pass();
    boolean backToBack = pass == last.get().pass();
    if (backToBack && rules.repeats() == PassRules.Repeats.REFUSED) {
      return new Step.Refused(
          "Takes back to back are off in House Rules. The field comes again in the next pass.");
    }
    return visiting(new Place(last.get().code(), pass), Purpose.MORE);
  }

  private NewRows rows(Hand hand) {
    boolean more = visit.filter(v -> v.purpose() == Purpose.MORE).isPresent();
    return new NewRows(
        bone, element, takes, more ? NewRows.Beside.KEPT : NewRows.Beside.REPLACED, hand);
  }

  private Step visiting(Place place, Purpose purpose) {
    return new Step.Move(
        new Passes(
            bone,
            element,
            measurements,
            acrossBreak,
            rules,
            log,
            Optional.of(new Visit(place, purpose))));
  }

  /** The first field that nothing was said about yet. */
  private Optional<Place> due() {
    for (int pass = 1; pass <= LAST_PASS; pass++) {
      for (Place place : places(pass)) {
        if (takes.at(place).isEmpty()) {
          return Optional.of(place);
        }
      }
    }
    return Optional.empty();
  }

  /** The current field and those after it in this pass that are still empty. */
  private List<Place> open() {
    if (current().isEmpty()) {
      return List.of();
    }
    Place first = current().get();
    List<Place> fields = places(first.pass());
    List<Place> open = new ArrayList<>(List.of(first));
    if (fields.contains(first)) {
      fields.subList(fields.indexOf(first) + 1, fields.size()).stream()
          .filter(place -> takes.at(place).isEmpty())
          .forEach(open::add);
    }
    return open;
  }

  /** The measurement of a field. Errors: {@link IllegalStateException} if this bone has none. */
  public Measurement measurement(MeasurementCode code) {
    return measurements.stream()
        .filter(m -> m.code().equals(code))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException(code + " is not in the protocol."));
  }
}

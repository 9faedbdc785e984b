package org.comparanda.suggestion;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.comparanda.bone.BoneState;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.Protocol;
import org.comparanda.reference.BoneInHand;
import org.comparanda.reference.Shelf;
import org.comparanda.reference.ShelfBone;
import org.comparanda.taxon.TaxonTree;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** The answer after a reading, bones measured one reading after the other. No drawing in it. */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class AnswerBenchmark {
  /** Animals on the shelf. */
  @Param({"168", "5000"})
  public int animals;

  private Shelf shelf = new Shelf(List.of());
  private Comparison kept = compare();
  private Comparison fresh = compare();
  private int turn;

  @Setup
  public void fill() {
    shelf = SeededShelf.of(animals, animals < 1000 ? 12 : 20);
    kept = compare();
  }

  @Setup(Level.Invocation)
  public void forget() {
    turn++;
    fresh = compare();
  }

  /** On a shelf that has answered such a set before, or reckoned it ahead. */
  @Benchmark
  public Suggestion onASetKnown() {
    return kept.suggest(bone());
  }

  /** The first answer that a snapshot of the shelf gives. */
  @Benchmark
  public Suggestion onASetNew() {
    return fresh.suggest(bone());
  }

  private Comparison compare() {
    return Comparison.of(
        shelf,
        new Protocol(List.of(), List.of(), List.of()),
        TaxonTree.empty(),
        ComparisonRules.withDefaults());
  }

  /** The bone of some animal, a hundredth larger, with one reading more each turn. */
  private BoneInHand bone() {
    int readings = 1 + turn % SeededShelf.CODES.size();
    ShelfBone like = shelf.animals().get(turn / 6 * 37 % animals).bones().get(0);
    Map<MeasurementCode, Double> values = new TreeMap<>();
    for (MeasurementCode code : SeededShelf.CODES.subList(0, readings)) {
      values.put(code, 1.01 * like.values().getOrDefault(code, 30.0));
    }
    return new BoneInHand(
        "x",
        Optional.empty(),
        SeededShelf.ELEMENT,
        Side.LEFT,
        Portion.WHOLE,
        BoneState.notRecorded(),
        values);
  }
}

package org.comparanda.gui.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.comparanda.house.HouseRule;
import org.comparanda.house.RuleName;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.PersonId;
import org.comparanda.taxon.TaxonName;
import org.comparanda.tray.Call;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** House rule "call first, then suggestion", on the simulated demo collection. */
class CallFirstTest {
  @TempDir Path folder;
  private DemoBench demo;
  private BenchViewModel bench;

  @BeforeEach
  void open() {
    demo = DemoBench.in(folder, Runnable::run);
    bench = new BenchViewModel(demo.place());
  }

  @AfterEach
  void close() {
    demo.close();
  }

  private void rule(String content) {
    demo.collection()
        .houseRules()
        .set(
            new HouseRule(
                RuleName.CALL_FIRST, content, new PersonId("demo"), DemoBench.CLOCK.instant(), ""));
  }

  private List<Call> calls() {
    return demo.collection().trays().callsOn(new BoneId("K-101"));
  }

  private void call(String taxon) {
    bench.call().taxonProperty().set(taxon);
    bench.call().record();
  }

  @Test
  void nothingOfTheSuggestionIsOnShowUntilTheCallIsRecorded() {
    rule("on");
    DemoBench.choose(bench, "easy", "K-101");
    assertTrue(bench.coveredProperty().get());
    assertEquals(Optional.empty(), bench.findingProperty().get());
    assertTrue(bench.pictureProperty().get().rows().stream().allMatch(r -> r.fit().isEmpty()));
    List<String> names = List.copyOf(bench.call().names());
    assertEquals(
        demo.place().tree().taxa().stream().map(t -> t.name().value()).toList(),
        names,
        "candidates stand first");
    demo.idle();
    assertEquals(Afterwards.nothingYet(), bench.afterwardsProperty().get());

    call("Gavialis gangeticus");
    assertEquals(1, calls().size());
    assertFalse(calls().get(0).sawSuggestion());
    assertEquals("", calls().get(0).grounds().why());
    assertFalse(bench.call().whyAskedProperty().get());
    assertFalse(
        demo.collection().trays().beside(calls().get(0)).named().isEmpty(),
        "what the numbers said is kept beside the call");
    assertFalse(bench.coveredProperty().get());
    assertTrue(bench.findingProperty().get().isPresent());
    assertFalse(bench.pictureProperty().get().rows().isEmpty());
    demo.idle();
    assertTrue(bench.afterwardsProperty().get().trial().isPresent());
  }

  @Test
  void laterCallStoresThatTheSuggestionWasSeen() {
    rule("on");
    DemoBench.choose(bench, "easy", "K-101");
    TaxonName first = new TaxonName("Gavialis gangeticus");
    call(first.value());
    String named =
        bench.findingProperty().get().orElseThrow().suggestion().candidates().get(0).value();
    call(named);
    assertEquals(List.of(false, true), calls().stream().map(Call::sawSuggestion).toList());
  }

  @Test
  void boneThatWasCalledIsNotCovered() {
    rule("on");
    DemoBench.choose(bench, "easy", "K-101");
    call("Gavialis gangeticus");
    DemoBench.choose(bench, "easy", "K-102");
    assertTrue(bench.coveredProperty().get());
    DemoBench.choose(bench, "easy", "K-101");
    assertFalse(bench.coveredProperty().get());
    assertTrue(bench.findingProperty().get().isPresent());
  }

  @Test
  void slipIsNotSavedWhileItWouldTell() {
    rule("on");
    DemoBench.choose(bench, "easy", "K-101");
    bench.run(org.comparanda.capture.Errand.SLIP);
    assertEquals(List.of(), demo.printed());
  }

  @Test
  void withoutTheRuleTheSuggestionStandsBesideAndIsStoredAsSeen() {
    DemoBench.choose(bench, "easy", "K-101");
    assertFalse(bench.coveredProperty().get());
    String named =
        bench.findingProperty().get().orElseThrow().suggestion().candidates().get(0).value();
    call(named);
    assertTrue(calls().get(0).sawSuggestion());
  }
}

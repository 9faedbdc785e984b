package org.comparanda.gui.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import org.comparanda.bone.Flag;
import org.comparanda.capture.FieldState;
import org.comparanda.capture.NamedKey;
import org.comparanda.exchange.json.KeptAgain;
import org.comparanda.exchange.json.ProgramVersion;
import org.comparanda.gui.capture.ReadingRow;
import org.comparanda.gui.control.falling.FallingPicture;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.Reading;
import org.comparanda.suggestion.Answer;
import org.comparanda.suggestion.DrawerEntry;
import org.comparanda.suggestion.TaxonFit;
import org.comparanda.taxon.TaxonName;
import org.comparanda.tray.Call;
import org.comparanda.tray.KeptAnswer;
import org.comparanda.tray.Qualifier;
import org.comparanda.tray.TrayBone;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The Bench without a window, on the simulated demo collection. */
class BenchViewModelTest {
  private static final BoneId FRESH = new BoneId("N-1");

  @TempDir private Path folder;
  private DemoBench room;
  private BenchViewModel bench;

  @BeforeEach
  void open() {
    room = DemoBench.in(folder, Runnable::run);
    bench = new BenchViewModel(room.place());
  }

  @AfterEach
  void close() {
    room.close();
  }

  // The answers that demo-data/truth.csv, written with the demo's plan, expects of these bones.
  @ParameterizedTest
  @CsvSource({
    "easy,K-101,FITS_ONE",
    "hard,K-202,FITS_A_FEW",
    "hard,K-205,YOUNG_BONE",
    "hard,K-206,NOTHING_FITS",
    "messy,K-303,NOT_FITTED"
  })
  void theDemoIsAnsweredOnTheBenchAsItsPlanSays(String tray, String bone, Answer answer) {
    DemoBench.choose(bench, tray, bone);
    assertEquals(answer, found().suggestion().answer());
  }

  @Test
  void theDrawerHoldsExactlyTheTaxaUnderOneInAHundred() {
    DemoBench.choose(bench, "hard", "K-202");
    List<TaxonName> under =
        found().suggestion().taxa().stream()
            .filter(fit -> fit.typicality() < 0.01)
            .map(TaxonFit::taxon)
            .sorted()
            .toList();
    List<TaxonName> drawer =
        found().suggestion().drawer().stream().map(DrawerEntry::taxon).sorted().toList();
    assertEquals(under, drawer);
    List<String> rows =
        bench.pictureProperty().get().rows().stream().map(FallingPicture.Row::key).toList();
    assertTrue(drawer.stream().noneMatch(t -> rows.contains(t.value())), rows.toString());
  }

  @Test
  void theStrangersNearestAreShownGreyed() {
    DemoBench.choose(bench, "hard", "K-206");
    List<FallingPicture.Row> rows = bench.pictureProperty().get().rows();
    assertFalse(rows.isEmpty());
    rows.forEach(row -> assertEquals(FallingPicture.Presence.IN_DRAWER, row.presence()));
  }

  @Test
  void aYoungBoneHasNoPicture() {
    DemoBench.choose(bench, "hard", "K-205");
    assertEquals(List.of(), bench.pictureProperty().get().rows());
  }

  @Test
  void anAcceptedReadingIsInTheLogBeforeTheNextFieldOpens() {
    DemoBench.choose(bench, "fresh", "N-1");
    List<Integer> rowsInLog = new ArrayList<>();
    bench.readings().currentProperty().addListener((o, was, is) -> rowsInLog.add(log().size()));
    type("15.8");
    type("32.7");
    assertEquals(List.of(1, 2), rowsInLog);
    assertEquals("15.8", log().get(0).asTyped());
  }

  @Test
  void theFragmentOffersOnlyWhatIsLeftOfTheBone() {
    DemoBench.choose(bench, "fresh", "N-1");
    assertEquals(ReadingRow.Standing.GONE, row("GL").standing());
    assertEquals(ReadingRow.Standing.CURRENT, row("SD").standing());
  }

  @Test
  void passOneIsHiddenDuringPassTwo() {
    DemoBench.choose(bench, "fresh", "N-1");
    measureOnce();
    assertEquals("hidden", row("Bd").first());
    assertEquals("", row("Bd").kept());
    bench
        .pictureProperty()
        .get()
        .columns()
        .forEach(column -> assertEquals("", column.under(), column.key()));
    measureOnce();
    assertEquals("32.7", row("Bd").first());
    assertEquals("32.70", row("Bd").kept());
  }

  @Test
  void aReadingTakenBackLeavesItsRowInTheLog() {
    DemoBench.choose(bench, "fresh", "N-1");
    type("15.8");
    bench.readings().typed('/');
    assertEquals(Map.of(), bench.readings().values());
    assertEquals(
        List.of(Reading.Kind.TAKE, Reading.Kind.WITHDRAWAL),
        log().stream().map(Reading::kind).toList());
  }

  @Test
  void plusTakesTheProposalAndBothValuesAreKept() {
    DemoBench.choose(bench, "fresh", "N-1");
    keys("1.58");
    assertEquals(FieldState.Showing.PROPOSAL, bench.readings().fieldProperty().get().showing());
    keys("+");
    // 1.58 · 10; 1e-12: one multiplication of doubles
    assertEquals(15.8, bench.readings().values().get(new MeasurementCode("SD")), 1e-12);
    assertEquals("1.58", log().get(0).asTyped());
  }

  @Test
  void notPossibleIsRecordedWithItsReason() {
    DemoBench.choose(bench, "fresh", "N-1");
    keys("-2");
    assertEquals("worn", row("SD").kept());
  }

  @Test
  void aCallIsRecordedWithPersonQualifierAndGround() {
    DemoBench.choose(bench, "hard", "K-202");
    bench.call().taxonProperty().set("Capra hircus");
    bench.call().qualifierProperty().set(Qualifier.CF);
    bench.call().basisProperty().set("by eye");
    keys("+");
    Call call = room.collection().trays().callsOn(new BoneId("K-202")).get(0);
    assertEquals(new TaxonName("Capra hircus"), call.taxon());
    assertEquals(Qualifier.CF, call.qualifier());
    assertEquals("by eye", call.basis());
    assertEquals(bench.personProperty().get().id(), call.person());
    assertTrue(call.sawSuggestion());
    assertTrue(bench.call().recordedProperty().get().contains("Capra cf. hircus"));
  }

  @Test
  void theAnswerSeenBesideACallIsKeptAndReckonedAgainToTheSameDigits() {
    DemoBench.choose(bench, "hard", "K-202");
    bench.call().taxonProperty().set("Capra hircus");
    keys("+");
    Call call = room.collection().trays().callsOn(new BoneId("K-202")).get(0);
    List<KeptAnswer> kept = room.collection().keptAnswers().of(new BoneId("K-202"));
    assertEquals(List.of(Optional.of(call.id())), kept.stream().map(KeptAnswer::call).toList());
    KeptAgain again =
        new KeptAgain(
            room.place().animals().shelf(),
            room.place().protocol(),
            room.place().tree(),
            ProgramVersion.current());
    assertEquals(List.of(), again.check(kept.get(0)).changes());
    assertTrue(kept.get(0).content().contains(found().suggestion().sentence()));
  }

  @Test
  void stopWipesTheAnswersThatWereKept() {
    DemoBench.choose(bench, "hard", "K-202");
    bench.call().taxonProperty().set("Capra hircus");
    keys("+");
    keys("---");
    bench.readings().pressed(NamedKey.ENTER);
    assertEquals(List.of(), room.collection().keptAnswers().of(new BoneId("K-202")));
  }

  @Test
  void aCallWithoutTaxonIsRefusedAndNothingIsStored() {
    DemoBench.choose(bench, "hard", "K-202");
    bench.call().record();
    assertEquals(List.of(), room.collection().trays().callsOn(new BoneId("K-202")));
    assertTrue(bench.call().recordedProperty().get().startsWith("A call needs a taxon."));
  }

  @Test
  void stopSetsTheBoneAsideAndWipesWhatWasSaid() {
    DemoBench.choose(bench, "hard", "K-202");
    keys("---");
    assertEquals(
        FieldState.Showing.STOP_QUESTION, bench.readings().fieldProperty().get().showing());
    bench.readings().pressed(NamedKey.ENTER);
    assertTrue(bench.stopped());
    assertTrue(bench.findingProperty().get().isEmpty());
    assertEquals(List.of(), bench.pictureProperty().get().rows());
    assertEquals(List.of(), bench.readings().rows());
    assertEquals(
        TrayBone.Standing.STOPPED,
        room.collection().trays().bone(new BoneId("K-202")).orElseThrow().standing());
  }

  @Test
  void whoSaysNoGoesOnMeasuring() {
    DemoBench.choose(bench, "fresh", "N-1");
    bench.askStop();
    bench.readings().pressed(NamedKey.ESCAPE);
    assertFalse(bench.stopped());
    type("15.8");
    assertEquals(1, log().size());
  }

  @Test
  void aChangedStateIsStoredAndAnswered() {
    DemoBench.choose(bench, "easy", "K-101");
    bench.state().toggle(Flag.BURNT);
    assertEquals(Answer.NOT_FITTED, found().suggestion().answer());
    TrayBone stored = room.collection().trays().bone(new BoneId("K-101")).orElseThrow();
    assertTrue(stored.state().flags().contains(Flag.BURNT));
  }

  @Test
  void theLastAnswerStaysUntilTheNextAndAnOvertakenOneIsDropped() {
    Queue<Runnable> waiting = new ArrayDeque<>();
    room.close();
    room = DemoBench.in(folder, waiting::add);
    bench = new BenchViewModel(room.place());
    waiting.remove().run(); // the shelf is read
    DemoBench.choose(bench, "fresh", "N-1");
    waiting.clear();
    type("15.8");
    Runnable first = waiting.remove();
    type("32.7");
    waiting.remove().run();
    assertEquals(2, found().bone().values().size());
    first.run();
    assertEquals(2, found().bone().values().size());
  }

  @Test
  void boneFieldAndHalfTypedTextComeBackAfterARestart() {
    DemoBench.choose(bench, "fresh", "N-1");
    bench.state().typed('\n');
    type("15.8");
    keys("32.");
    BenchViewModel again = new BenchViewModel(room.place());
    assertEquals(FRESH, again.boneProperty().get().orElseThrow().id());
    assertEquals("32.", again.readings().fieldProperty().get().text());
    assertEquals(
        bench.readings().currentProperty().get(), again.readings().currentProperty().get());
  }

  @Test
  void theStateIsAskedBeforeTheFirstReadingOnly() {
    DemoBench.choose(bench, "fresh", "N-1");
    assertTrue(bench.state().questionsProperty().get().isPresent());
    bench.state().typed('\n');
    assertEquals(
        org.comparanda.bone.Fusion.FUSED,
        room.collection().trays().bone(FRESH).orElseThrow().state().distal());
    DemoBench.choose(bench, "hard", "K-202");
    assertTrue(bench.state().questionsProperty().get().isEmpty());
  }

  private Finding found() {
    return bench.findingProperty().get().orElseThrow();
  }

  private List<Reading> log() {
    return room.collection().readings().of(FRESH);
  }

  private ReadingRow row(String code) {
    return bench.readings().rows().stream()
        .filter(row -> row.code().value().equals(code))
        .findFirst()
        .orElseThrow();
  }

  /** SD, Bd, BT, HTC of the demo's first hard bone. */
  private void measureOnce() {
    List.of("15.8", "32.7", "30.2", "14.9").forEach(this::type);
  }

  private void type(String value) {
    keys(value);
    bench.readings().pressed(NamedKey.ENTER);
  }

  private void keys(String characters) {
    characters.chars().forEach(c -> bench.readings().typed((char) c));
  }
}

package org.comparanda.exchange.dwca;

import static org.comparanda.exchange.csv.BoneList.word;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.comparanda.bone.BoneAge;
import org.comparanda.bone.Element;
import org.comparanda.dossier.Dossier;
import org.comparanda.exchange.dwca.DataFile.Column;
import org.comparanda.measurement.Length;
import org.comparanda.measurement.Measurement;
import org.comparanda.measurement.Reading;
import org.comparanda.tray.Call;
import org.comparanda.tray.CallHistory;

/** The three tables: bones (core), all calls on them, facts and readings. */
final class ArchiveTables {
  private static final String DWC = "http://rs.tdwg.org/dwc/terms/";
  private static final String OBIS = "http://rs.iobis.org/obis/terms/";

  private final ArchiveFacts facts;
  private final List<Dossier> bones;

  /** A call with the bone it is on. */
  private record Called(Dossier bone, Call call) {}

  /** One measurement or fact of a bone. */
  private record Fact(
      Dossier bone,
      String id,
      String type,
      String typeId,
      String value,
      String valueId,
      String unit,
      String by,
      String at,
      String method,
      String remarks) {}

  ArchiveTables(ArchiveFacts facts, List<Dossier> bones) {
    this.facts = facts;
    this.bones = bones;
  }

  DataFile<Dossier> core() {
    return new DataFile<>(
        "occurrence.csv",
        DWC + "Occurrence",
        ArchiveTables::number,
        List.of(
            column("occurrenceID", ArchiveTables::number),
            column("basisOfRecord", d -> basisOfRecord(d.tray().age())),
            column("collectionCode", d -> d.tray().lot()),
            column("catalogNumber", ArchiveTables::number),
            column("individualCount", d -> "1"),
            column("scientificName", d -> ofCall(d, c -> BareName.of(c).name())),
            column("identificationQualifier", d -> ofCall(d, c -> BareName.of(c).qualifier())),
            column("verbatimIdentification", d -> ofCall(d, Call::written)),
            column("taxonRank", d -> ofCall(d, this::rank)),
            column("identifiedBy", d -> ofCall(d, c -> facts.name().apply(c.person()))),
            column("dateIdentified", d -> ofCall(d, c -> c.at().toString())),
            column(
                "identificationRemarks",
                d -> d.latestCall().map(ArchiveTables::remarks).orElse("no call yet")),
            column("disposition", d -> word(d.tray().state())),
            column("locality", this::place),
            column("occurrenceRemarks", this::boneInWords),
            column("informationWithheld", this::withheld)),
        bones);
  }

  DataFile<?> identifications() {
    List<Called> calls = new ArrayList<>();
    for (Dossier bone : bones) {
      bone.calls().stream()
          .filter(call -> call.kind() != Call.Kind.WITHDRAWAL)
          .forEach(call -> calls.add(new Called(bone, call)));
    }
    return new DataFile<>(
        "identification.csv",
        DWC + "Identification",
        c -> number(c.bone()),
        List.of(
            column("identificationID", c -> "call-" + c.call().id()),
            column("scientificName", c -> BareName.of(c.call()).name()),
            column("identificationQualifier", c -> BareName.of(c.call()).qualifier()),
            column("verbatimIdentification", c -> c.call().written()),
            column("taxonRank", c -> rank(c.call())),
            column("identifiedBy", c -> facts.name().apply(c.call().person())),
            column("dateIdentified", c -> c.call().at().toString()),
            column("identificationRemarks", ArchiveTables::history)),
        calls);
  }

  DataFile<?> measurements() {
    List<Fact> rows = new ArrayList<>();
    for (Dossier bone : bones) {
      boneFacts(bone, rows);
      bone.counted().forEach(reading -> rows.add(reading(bone, reading)));
    }
    return new DataFile<>(
        "measurement.csv",
        OBIS + "ExtendedMeasurementOrFact",
        f -> number(f.bone()),
        List.of(
            column("measurementID", Fact::id),
            column("occurrenceID", f -> number(f.bone())),
            column("measurementType", Fact::type),
            new Column<>(OBIS + "measurementTypeID", Fact::typeId),
            column("measurementValue", Fact::value),
            new Column<>(OBIS + "measurementValueID", Fact::valueId),
            column("measurementUnit", Fact::unit),
            column("measurementDeterminedBy", Fact::by),
            column("measurementDeterminedDate", Fact::at),
            column("measurementMethod", Fact::method),
            column("measurementRemarks", Fact::remarks)),
        rows);
  }

  private static <T> Column<T> column(String term, Function<T, String> cell) {
    return new Column<>(DWC + term, cell);
  }

  private static String number(Dossier bone) {
    return bone.bone().id().value();
  }

  private static String ofCall(Dossier bone, Function<Call, String> part) {
    return bone.latestCall().map(part).orElse("");
  }

  private String rank(Call call) {
    return facts.taxa().taxon(call.taxon()).map(t -> t.rank()).orElse("");
  }

  private static String remarks(Call call) {
    return call.basisInWords()
        + (call.basisInWords().isBlank() ? "" : "; ")
        + (call.sawSuggestion()
            ? "a suggestion of the program was seen before"
            : "no suggestion was seen before");
  }

  private static String history(Called called) {
    Call call = called.call();
    String taken =
        new CallHistory(called.bone().calls()).standing().contains(call) ? "" : "taken back; ";
    String kind =
        call.kind() == Call.Kind.CALL
            ? ""
            : word(call.kind()) + call.answers().map(id -> " on call-" + id).orElse("") + "; ";
    return taken + kind + remarks(call);
  }

  private static String basisOfRecord(BoneAge age) {
    return switch (age) {
      case FOSSIL -> "FossilSpecimen";
      case RECENT, ARCHAEOLOGICAL -> "PreservedSpecimen";
      case NOT_KNOWN -> "MaterialEntity";
    };
  }

  private String place(Dossier bone) {
    return facts.openness().placeGoesOut(bone) ? bone.tray().provenance() : "";
  }

  private String withheld(Dossier bone) {
    return !facts.openness().placeGoesOut(bone) && !bone.tray().provenance().isBlank()
        ? "The recorded place is held back; ask the collection."
        : "";
  }

  private String boneInWords(Dossier bone) {
    String remarks = bone.bone().remarks();
    return "element: "
        + elementName(bone)
        + "; side: "
        + word(bone.bone().side())
        + "; portion: "
        + word(bone.bone().portion())
        + (remarks.isBlank() ? "" : "; remarks: " + remarks);
  }

  private Optional<Element> element(Dossier bone) {
    return facts.protocol().element(bone.bone().element());
  }

  private String elementName(Dossier bone) {
    return element(bone).map(Element::name).orElse(bone.bone().element().value());
  }

  private void boneFacts(Dossier bone, List<Fact> rows) {
    String ontology =
        element(bone)
            .map(Element::ontologyId)
            .filter(id -> !id.isEmpty())
            .map(id -> "http://purl.obolibrary.org/obo/" + id.replace(':', '_'))
            .orElse("");
    rows.add(fact(bone, "element", elementName(bone), ontology));
    rows.add(fact(bone, "side", word(bone.bone().side()), ""));
    rows.add(fact(bone, "portion", word(bone.bone().portion()), ""));
    bone.bone().state().flags().stream()
        .sorted()
        .forEach(flag -> rows.add(fact(bone, "state", word(flag), "")));
  }

  private static Fact fact(Dossier bone, String type, String value, String valueId) {
    String id = number(bone) + "-" + type + (type.equals("state") ? "-" + value : "");
    return new Fact(bone, id, type, "", value, valueId, "", "", "", "", "");
  }

  private Fact reading(Dossier bone, Reading reading) {
    Optional<Measurement> measurement =
        facts.protocol().measurement(reading.element(), reading.code());
    return new Fact(
        bone,
        "reading-" + reading.id(),
        reading.code() + measurement.map(m -> " (" + m.name() + ")").orElse(""),
        "",
        reading.length().map(Length::mm).map(String::valueOf).orElse(""),
        "",
        "mm",
        facts.name().apply(reading.person()),
        reading.at().toString(),
        measurement.map(Measurement::definition).orElse(""),
        "typed \"%s\", pass %d%s"
            .formatted(
                reading.asTyped(),
                reading.pass(),
                reading.instrument().map(i -> ", caliper " + i).orElse(", by hand")));
  }
}

package org.comparanda.exchange.csv;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.comparanda.dossier.Dossier;
import org.comparanda.dossier.Openness;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.PersonId;
import org.comparanda.tray.Call;

/** Bones as a table, one a row: what each is, the call that holds, its values in mm. */
public final class BoneList {
  private static final List<String> HEADER =
      List.of(
          "bone",
          "lot",
          "tray",
          "place",
          "element",
          "side",
          "portion",
          "flags",
          "taxon",
          "qualifier",
          "called_by",
          "called_at",
          "basis",
          "remarks");

  private BoneList() {}

  /** The table. Names of people come from {@code name}. */
  public static String csv(
      List<Dossier> bones, Openness openness, Function<PersonId, String> name) {
    Set<MeasurementCode> codes =
        bones.stream()
            .flatMap(d -> d.values().keySet().stream())
            .collect(
                Collectors.toCollection(
                    () -> new TreeSet<>(Comparator.comparing(MeasurementCode::value))));
    HarmlessCsv csv = new HarmlessCsv();
    List<String> header = new ArrayList<>(HEADER);
    codes.forEach(code -> header.add(code + " [mm]"));
    csv.row(header);
    for (Dossier bone : bones) {
      csv.row(row(bone, openness, name, codes));
    }
    return csv.text();
  }

  private static List<String> row(
      Dossier d, Openness openness, Function<PersonId, String> name, Set<MeasurementCode> codes) {
    Optional<Call> call = d.latestCall();
    Map<MeasurementCode, Double> values = d.values();
    List<String> row =
        new ArrayList<>(
            List.of(
                d.bone().id().value(),
                d.tray().lot(),
                d.tray().name(),
                place(d, openness),
                d.bone().element().value(),
                word(d.bone().side()),
                word(d.bone().portion()),
                d.bone().state().flags().stream()
                    .map(BoneList::word)
                    .sorted()
                    .collect(Collectors.joining("|")),
                call.map(c -> c.taxon().value()).orElse(""),
                call.map(c -> c.qualifier().sign()).orElse(""),
                call.map(c -> name.apply(c.person())).orElse(""),
                call.map(c -> c.at().toString()).orElse(""),
                call.map(Call::basis).orElse(""),
                d.bone().remarks()));
    codes.forEach(
        code -> row.add(Optional.ofNullable(values.get(code)).map(Number::toString).orElse("")));
    return row;
  }

  private static String place(Dossier bone, Openness openness) {
    String place = bone.tray().provenance();
    return openness.placeGoesOut(bone) || place.isBlank() ? place : "held back";
  }

  /** A word of ours as the tables write it. */
  public static String word(Enum<?> word) {
    return word.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}

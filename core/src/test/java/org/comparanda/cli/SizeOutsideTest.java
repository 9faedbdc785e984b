package org.comparanda.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.comparanda.outside.OutsideCheck;
import org.comparanda.outside.OutsideTable;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code size} on outside tables: lines on trees and major axes. */
class SizeOutsideTest {
  private static final String SPECIES = "animal=species,taxon=species";

  @TempDir Path folder;

  // R 4.2.2, GLS by the matrix formula, λ by maximum likelihood on [0, 1]: expected/h_pgls.csv.
  // λ to 1e-4 (issue 5). Where λ stands at its end, 1, slope and error to 1e-8; where it lies
  // inside, on the flat top of its likelihood, it is found to about 1e-6, so 1e-5 there (at the
  // outside λ itself the library test has 1e-8).
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "geospiza_culmen_on_wing, geospiza, wingL, culmenL, raw, 1e-8",
    "geospiza_beakdepth_on_tarsus, geospiza, tarsusL, beakD, raw, 1e-8",
    "mammal49_home_range_on_mass, mammal49, body_mass_kg, home_range_km2, log10, 1e-5",
    "carni70_range_on_size, carni70, size_kg, range_km, log10, 1e-5",
  })
  void aLineOnATreeEqualsTheOutsideOne(
      String set, String file, String x, String y, String scale, double relative)
      throws IOException {
    OutsideTable.Row row =
        OutsideTable.read("expected/h_pgls.csv")
            .where("set", set)
            .where(r -> r.text("model").startsWith("pgls lambda"))
            .rows()
            .get(0);
    JsonNode line =
        line(
            file + "_traits.csv",
            "--as",
            SPECIES,
            "--predict",
            y,
            "--from",
            x,
            "--scale",
            scale,
            "--line",
            "pgls",
            "--tree",
            OutsideFile.copied(folder, file + "_tree.nwk"));
    OutsideCheck check =
        OutsideCheck.named(
            "cli-size-pgls-" + set.replace('_', '-'),
            "R 4.2.2, matrix formula, h_pgls.csv, " + set);
    check.exact("n", row.count("n"), line.get("n").intValue());
    check.absolute("lambda", row.number("lambda"), line.get("lambda").doubleValue(), 1e-4);
    check.relative("slope", row.number("slope"), line.get("slope").doubleValue(), relative);
    check.relative(
        "standard error",
        row.number("se_slope"),
        line.get("slopeStandardError").doubleValue(),
        relative);
  }

  // R 4.2.2, formulas of Warton and others 2006: expected/b_line_fits.csv; 1e-8 (issue 5).
  @ParameterizedTest(name = "{0} {1}")
  @CsvSource({
    "mammals_ln, SMA, mammals.csv, animal=name, body_kg, brain_g, ln, ''",
    "mammals_log10, MA, mammals.csv, animal=name, body_kg, brain_g, log10, ''",
    "tortues_len_on_height_log10, SMA, tortues.csv, animal=id, height_mm, length_mm, log10, ''",
    "tortues_len_on_height_log10, MA, tortues.csv, animal=id, height_mm, length_mm, log10, ''",
    "tortues_raw_len_on_width, SMA, tortues.csv, animal=id, width_mm, length_mm, raw, ''",
    "tortues_raw_len_on_width, MA, tortues.csv, animal=id, width_mm, length_mm, raw, ''",
    "crabs_BF_CW_on_CL_log10, SMA, crabs.csv, 'animal=id,taxon=group', CL, CW, log10, BF",
    "crabs_OM_RW_on_CL_log10, MA, crabs.csv, 'animal=id,taxon=group', CL, RW, log10, OM",
    "carni70_range_on_size_log10, SMA, carni70_traits.csv, 'animal=species', size_kg, range_km,"
        + " log10, ''",
    "carni70_range_on_size_log10, MA, carni70_traits.csv, 'animal=species', size_kg, range_km,"
        + " log10, ''",
  })
  void aMajorAxisAndItsLimitsEqualTheOutsideOnes(
      String set,
      String method,
      String file,
      String as,
      String x,
      String y,
      String scale,
      String taxon)
      throws IOException {
    OutsideTable.Row row =
        OutsideTable.read("expected/b_line_fits.csv")
            .where("set", set)
            .where("method", method)
            .rows()
            .get(0);
    List<Object> words = new ArrayList<>(List.of("--as", as, "--predict", y, "--from", x));
    words.addAll(List.of("--scale", scale, "--line", method));
    if (!taxon.isEmpty()) {
      words.addAll(List.of("--taxa", taxon));
    }
    JsonNode line = line(file, words.toArray());
    OutsideCheck check =
        OutsideCheck.named(
            "cli-size-axis-" + (method + " " + set).replaceAll("[_ ]", "-"),
            "R 4.2.2, own formulas of b_line_fits.csv, " + set);
    JsonNode limits = line.get("slopeInterval95");
    check.relative("slope", row.number("slope"), line.get("slope").doubleValue(), 1e-8);
    check.relative("low", row.number("lo95"), limits.get(0).doubleValue(), 1e-8);
    check.relative("high", row.number("hi95"), limits.get(1).doubleValue(), 1e-8);
    check.relative("intercept", row.number("intercept"), line.get("intercept").doubleValue(), 1e-8);
  }

  private JsonNode line(String file, Object... words) throws IOException {
    Path json = folder.resolve("out.json");
    Path shelf = folder.resolve(file);
    List<Object> all = new ArrayList<>(List.of("size", "--shelf"));
    all.add(java.nio.file.Files.exists(shelf) ? shelf : OutsideFile.copied(folder, file));
    all.addAll(List.of("--register", "--as-is", "--json", json));
    all.addAll(List.of(words));
    Typed typed = Typed.command(all.toArray());
    assertEquals(Terminal.FINE, typed.code(), typed.err());
    return new ObjectMapper().readTree(json.toFile()).get("line");
  }
}

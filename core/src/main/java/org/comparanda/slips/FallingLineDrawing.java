package org.comparanda.slips;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.suggestion.AnimalPoint;
import org.comparanda.suggestion.TaxonFit;

/**
 * The falling line on paper: a column per measurement, a row per taxon, a dot per comparative
 * animal, the reading a line through its column. Each column is on a logarithmic scale of its own.
 */
final class FallingLineDrawing {
  private static final float ROW_MM = 7;
  private static final float NAME_MM = 44;
  private static final float FIGURES_MM = 32;

  private final Sheet sheet;
  private final BoneReport.Subject subject;
  private final BoneText words;

  FallingLineDrawing(Sheet sheet, BoneReport.Subject subject, BoneText words) {
    this.sheet = sheet;
    this.subject = subject;
    this.words = words;
  }

  /** Height of so many rows, mm. */
  static float height(int taxa) {
    return 12 + taxa * ROW_MM;
  }

  void draw(float top, List<TaxonFit> taxa) throws IOException {
    List<MeasurementCode> codes = subject.suggestion().measurements();
    float column = (sheet.width() - NAME_MM - FIGURES_MM) / codes.size();
    float figures = sheet.right() - FIGURES_MM + 2;
    sheet.text(figures, top, 7, Letters.BOLD, Ink.BLACK, words.say("column.share"));
    sheet.text(figures + 15, top, 7, Letters.BOLD, Ink.BLACK, words.say("column.typicality"));
    float first = top + 4;
    for (int r = 0; r < taxa.size(); r++) {
      TaxonFit fit = taxa.get(r);
      float y = first + r * ROW_MM;
      sheet.fitted(
          sheet.left(), y + 4.4f, NAME_MM - 2, 8, Letters.ITALIC, Ink.BLACK, fit.taxon().value());
      sheet.text(figures, y + 4.4f, 8, Letters.PLAIN, Ink.BLACK, words.chance(fit.share()));
      sheet.text(
          figures + 15, y + 4.4f, 8, Letters.PLAIN, Ink.BLACK, words.chance(fit.typicality()));
      for (int c = 0; c < codes.size(); c++) {
        sheet.fill(sheet.left() + NAME_MM + c * column, y + 1, column - 2, ROW_MM - 2, Ink.STRIP);
      }
    }
    for (int c = 0; c < codes.size(); c++) {
      column(top, first, sheet.left() + NAME_MM + c * column, column - 2, codes.get(c), taxa);
    }
  }

  private void column(
      float top, float first, float x, float width, MeasurementCode code, List<TaxonFit> taxa)
      throws IOException {
    Optional<Double> reading = Optional.ofNullable(subject.bone().values().get(code));
    List<Double> all =
        java.util.stream.Stream.concat(
                reading.stream(),
                subject.points().stream()
                    .filter(p -> taxa.stream().anyMatch(t -> t.taxon().equals(p.taxon())))
                    .flatMap(p -> Optional.ofNullable(p.values().get(code)).stream()))
            .filter(mm -> mm > 0)
            .toList();
    double least = Math.log(all.stream().mapToDouble(d -> d).min().orElse(1));
    double span = Math.log(all.stream().mapToDouble(d -> d).max().orElse(2)) - least;
    for (int r = 0; r < taxa.size(); r++) {
      for (AnimalPoint point : subject.points()) {
        Double mm = point.values().get(code);
        if (mm != null && mm > 0 && point.taxon().equals(taxa.get(r).taxon())) {
          float at = x + 1 + (width - 2) * place(mm, least, span);
          sheet.fill(at - 0.35f, first + r * ROW_MM + 3.15f, 0.7f, 0.7f, Ink.GREY);
        }
      }
    }
    String typed = reading.map(mm -> " " + words.number("%.1f", mm)).orElse("");
    sheet.fitted(x, top, width, 7, Letters.BOLD, Ink.BLACK, code + typed);
    if (reading.isPresent()) {
      float at = x + 1 + (width - 2) * place(reading.get(), least, span);
      sheet.line(at, top + 1.2f, at, first + taxa.size() * ROW_MM, 0.45f, Ink.BLACK);
    }
  }

  private static float place(double mm, double least, double span) {
    return span > 0 ? (float) ((Math.log(mm) - least) / span) : 0.5f;
  }
}

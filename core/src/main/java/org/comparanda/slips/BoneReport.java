package org.comparanda.slips;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Optional;
import org.comparanda.dossier.Dossier;
import org.comparanda.measurement.Reading;
import org.comparanda.reference.BoneInHand;
import org.comparanda.suggestion.AnimalPoint;
import org.comparanda.suggestion.Suggestion;
import org.comparanda.suggestion.TaxonFit;
import org.comparanda.tray.Call;

/**
 * Everything about one bone on paper: the answer, share and typicality of each taxon, the falling
 * line, calls, every reading, and the methods.
 */
public final class BoneReport {
  private static final int ROWS_DRAWN = 10;

  private final SlipFacts facts;
  private final BoneText words;

  /**
   * What the numbers say, with what the picture needs.
   *
   * @param bone as it was compared
   * @param points the comparative animals
   */
  public record Subject(Suggestion suggestion, BoneInHand bone, List<AnimalPoint> points) {
    public Subject {
      points = List.copyOf(points);
    }
  }

  public BoneReport(SlipFacts facts) {
    this.facts = facts;
    words = new BoneText(facts);
  }

  /**
   * Writes the report; returns the number of pages.
   *
   * @param subject empty where no fit may be run (a bone that may be human)
   */
  public int write(OutputStream out, Dossier bone, Optional<Subject> subject) throws IOException {
    try (Sheet sheet = new Sheet(facts)) {
      float y = heading(sheet, bone);
      if (subject.isPresent()) {
        y = answer(sheet, y, subject.get());
      } else {
        y =
            sheet.paragraph(
                    sheet.left(),
                    y,
                    sheet.width(),
                    11,
                    Letters.BOLD,
                    Ink.BLACK,
                    words.say("report.stopped"))
                + 4;
      }
      y = calls(sheet, room(sheet, y, 30), bone);
      y = readings(sheet, room(sheet, y + 6, 30), bone);
      if (subject.isPresent()) {
        methods(sheet, room(sheet, y + 6, 32), subject.get());
      }
      sheet.write(out);
      return sheet.pages();
    }
  }

  /** Where to go on: here, or on another page when so much doesn't fit. */
  private static float room(Sheet sheet, float y, float needed) throws IOException {
    if (y + needed <= sheet.bottom()) {
      return y;
    }
    sheet.nextPage();
    return sheet.top() + 4;
  }

  private float heading(Sheet sheet, Dossier bone) throws IOException {
    float y = sheet.top() + 5;
    sheet.code(sheet.right() - 26, sheet.top() - 2, 26, bone.bone().id().value());
    sheet.text(sheet.left(), y, 18, Letters.BOLD, Ink.BLACK, bone.bone().id().value());
    sheet.fitted(
        sheet.left(),
        y + 7,
        sheet.width() - 30,
        11,
        Letters.PLAIN,
        Ink.BLACK,
        words.bone(bone) + " · " + bone.tray().name());
    sheet.fitted(
        sheet.left(),
        y + 13,
        sheet.width() - 30,
        8,
        Letters.PLAIN,
        Ink.GREY,
        words.say("found", bone.tray().provenance()));
    return y + 26;
  }

  private float answer(Sheet sheet, float top, Subject subject) throws IOException {
    Suggestion s = subject.suggestion();
    float x = sheet.left();
    float width = sheet.width();
    float y = sheet.paragraph(x, top, width, 12, Letters.BOLD, Ink.BLACK, s.sentence());
    if (!s.sampleLine().isBlank()) {
      y = sheet.paragraph(x, y + 1, width, 9, Letters.PLAIN, Ink.BLACK, s.sampleLine());
    }
    for (String detail : s.details()) {
      y = sheet.paragraph(x, y + 0.5f, width, 8, Letters.PLAIN, Ink.BLACK, detail);
    }
    for (String warning : s.warnings()) {
      y = sheet.paragraph(x, y + 0.5f, width, 8, Letters.BOLD, Ink.BLACK, warning);
    }
    List<TaxonFit> drawn = s.taxa().subList(0, Math.min(ROWS_DRAWN, s.taxa().size()));
    if (drawn.isEmpty() || s.measurements().isEmpty()) {
      return y + 6;
    }
    y = room(sheet, y + 6, FallingLineDrawing.height(drawn.size()));
    new FallingLineDrawing(sheet, subject, words).draw(y, drawn);
    y += FallingLineDrawing.height(drawn.size());
    Table table =
        new Table(sheet, "", words.heads("taxon", "share", "typicality", "distance", "animals"))
            .withWidths(List.of(0.36f, 0.15f, 0.15f, 0.17f, 0.17f))
            .below(room(sheet, y, 20));
    for (TaxonFit fit : s.taxa()) {
      table.row(
          List.of(
              fit.taxon().value(),
              words.chance(fit.share()),
              words.chance(fit.typicality()),
              words.number("%.2f", fit.distanceSquared()),
              String.valueOf(fit.animals())));
    }
    return table.end() + 5;
  }

  private float calls(Sheet sheet, float y, Dossier bone) throws IOException {
    Table table =
        new Table(sheet, words.say("calls"), words.heads("called", "by", "basis", "seen"))
            .withWidths(List.of(0.3f, 0.27f, 0.25f, 0.18f))
            .below(y);
    for (Call call : bone.calls()) {
      table.row(
          List.of(
              words.nameAndKind(call),
              words.by(call),
              words.basis(call),
              words.yesOrNo(call.sawSuggestion())));
    }
    if (bone.calls().isEmpty()) {
      table.row(List.of(words.say("call.none"), "", "", ""));
    }
    return table.end();
  }

  private float readings(Sheet sheet, float y, Dossier bone) throws IOException {
    List<Reading> counted = bone.counted();
    Table table =
        new Table(
                sheet,
                words.say("readings"),
                words.heads("no", "measurement", "typed", "pass", "by", "counts"))
            .withWidths(List.of(0.09f, 0.16f, 0.2f, 0.1f, 0.3f, 0.15f))
            .below(y);
    for (Reading r : bone.log()) {
      table.row(
          List.of(
              String.valueOf(r.id()),
              r.code().value(),
              r.asTyped().isEmpty() ? words.word("reading", r.kind()) : r.asTyped(),
              String.valueOf(r.pass()),
              facts.name().apply(r.person()) + ", " + r.at().toString().substring(0, 10),
              words.yesOrNo(counted.contains(r))));
    }
    return table.end();
  }

  private void methods(Sheet sheet, float y, Subject subject) throws IOException {
    Suggestion.Basis basis = subject.suggestion().basis();
    sheet.text(sheet.left(), y, 12, Letters.BOLD, Ink.BLACK, words.say("methods"));
    sheet.paragraph(
        sheet.left(),
        y + 6,
        sheet.width(),
        8,
        Letters.PLAIN,
        Ink.BLACK,
        words.say(
            "methods.words",
            basis.animals(),
            basis.taxa(),
            basis.method(),
            basis.priors(),
            basis.missing().words(),
            words.written(String.valueOf(basis.thresholds().nothingFits())),
            words.written(String.valueOf(basis.thresholds().poorFit())),
            words.written(String.valueOf(basis.thresholds().oneShare())),
            basis.shelfVersion()));
  }
}

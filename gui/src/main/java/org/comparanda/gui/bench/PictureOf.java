package org.comparanda.gui.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.comparanda.gui.control.falling.FallingPicture;
import org.comparanda.gui.control.falling.FallingPicture.Captions;
import org.comparanda.gui.control.falling.FallingPicture.Column;
import org.comparanda.gui.control.falling.FallingPicture.Dot;
import org.comparanda.gui.control.falling.FallingPicture.Fit;
import org.comparanda.gui.control.falling.FallingPicture.Presence;
import org.comparanda.gui.control.falling.FallingPicture.Row;
import org.comparanda.gui.control.falling.FallingPrint;
import org.comparanda.gui.control.plot.KindLook;
import org.comparanda.gui.text.Numbers;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.suggestion.DrawerEntry;
import org.comparanda.suggestion.TaxonFit;
import org.comparanda.taxon.TaxonName;

/**
 * Makes the falling line of a finding. In it stand the taxa in play, best fit first; when every
 * taxon lies in the drawer, the nearest few are shown greyed, so that one sees how far off they
 * are.
 *
 * @param shelf all taxa of the shelf in its order; each keeps its colour and shape in every picture
 *     and on every screen
 * @param dots the animals that the finding was made with
 */
record PictureOf(List<TaxonName> shelf, ShelfDots dots, Words words, Numbers numbers) {
  private static final int GREYED = 5;
  private static final int FEW = 5;

  PictureOf {
    shelf = List.copyOf(shelf);
  }

  /**
   * The picture of a finding with readings.
   *
   * @param hidden measurements whose number is not to be seen now (taken before, about to be taken
   *     again)
   */
  FallingPicture of(Finding finding, Set<MeasurementCode> hidden) {
    List<Column> columns =
        finding.suggestion().measurements().stream()
            .flatMap(
                code ->
                    Optional.ofNullable(finding.bone().values().get(code)).stream()
                        .map(mm -> column(code, mm, hidden)))
            .toList();
    List<TaxonName> drawer =
        finding.suggestion().drawer().stream().map(DrawerEntry::taxon).toList();
    List<TaxonFit> inPlay =
        finding.suggestion().taxa().stream().filter(f -> !drawer.contains(f.taxon())).toList();
    List<Row> rows = new ArrayList<>();
    for (TaxonFit fit : inPlay.isEmpty() ? nearest(finding) : inPlay) {
      Presence presence = inPlay.isEmpty() ? Presence.IN_DRAWER : Presence.IN_PLAY;
      rows.add(row(fit.taxon(), fit.animals(), presence, Optional.of(fit(fit)), columns));
    }
    return new FallingPicture(columns, rows, captions());
  }

  /** What the shelf has of an element, before anything is measured. */
  FallingPicture before(List<MeasurementCode> codes) {
    List<Column> columns =
        codes.stream()
            .filter(dots::any)
            .map(code -> new Column(code.value(), code.value(), "", Optional.empty()))
            .toList();
    List<Row> rows =
        dots.animals().entrySet().stream()
            .sorted(Map.Entry.comparingByKey())
            .map(e -> row(e.getKey(), e.getValue(), Presence.IN_PLAY, Optional.empty(), columns))
            .toList();
    return new FallingPicture(columns, rows, captions());
  }

  private Captions captions() {
    return new Captions(
        words.get("share"),
        words.get("typical"),
        words.get("dot.crowd", "%d"),
        words.get("dot.others", "%d"),
        numbers.locale());
  }

  /** The picture for print: the sentence over it, under it the sample, the bone and a note. */
  static FallingPrint print(Finding finding, FallingPicture picture, String note) {
    List<String> notes = new ArrayList<>();
    notes.add(finding.suggestion().sampleLine());
    notes.addAll(finding.suggestion().warnings());
    notes.add(finding.bone().id() + ". " + note);
    return new FallingPrint(
        picture,
        finding.suggestion().sentence(),
        picture.rows().stream().map(Row::name).filter(name -> name.contains(" ")).toList(),
        notes.stream().filter(line -> !line.isBlank()).toList());
  }

  private static List<TaxonFit> nearest(Finding finding) {
    return finding.suggestion().taxa().stream()
        .sorted(Comparator.comparingDouble(TaxonFit::typicality).reversed())
        .limit(GREYED)
        .toList();
  }

  private Column column(MeasurementCode code, double mm, Set<MeasurementCode> hidden) {
    String under = hidden.contains(code) ? "" : words.get("mm", numbers.upTo(mm, 2));
    return new Column(code.value(), code.value(), under, Optional.of(mm));
  }

  private Fit fit(TaxonFit fit) {
    return new Fit(fit.share(), numbers.chance(fit.share()), numbers.chance(fit.typicality()));
  }

  private Row row(
      TaxonName taxon, int animals, Presence presence, Optional<Fit> fit, List<Column> columns) {
    Map<String, List<Dot>> strips = new HashMap<>();
    for (Column column : columns) {
      strips.put(column.key(), dots.strip(taxon, new MeasurementCode(column.key())));
    }
    String note = words.get(animals < FEW ? "animals.few" : "animals", animals);
    KindLook look = KindLook.of(Math.max(0, shelf.indexOf(taxon)));
    return new Row(taxon.value(), taxon.value(), note, look, presence, fit, strips);
  }
}

package org.comparanda.slips;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.comparanda.dossier.Dossier;
import org.comparanda.pile.PileEntry;
import org.comparanda.reference.Animal;
import org.comparanda.reference.Shelf;
import org.comparanda.stock.Wanted;
import org.comparanda.tray.Call;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;

/**
 * Labels, cards and lists. Label minimum: catalogue number, taxon with qualifier, element, side,
 * portion, locality, who called it and when (common practice, no source). Each method returns the
 * number of pages. Errors: {@link IOException} if it can't be written.
 */
public final class Slips {
  private final SlipFacts facts;
  private final BoneText words;

  public Slips(SlipFacts facts) {
    this.facts = facts;
    words = new BoneText(facts);
  }

  /** A sheet of labels to be cut, one a bone, with its number as QR code. */
  public int labels(OutputStream out, List<Dossier> bones, LabelSize size) throws IOException {
    try (Sheet sheet = new Sheet(facts)) {
      int across = (int) (sheet.width() / size.widthMm());
      int down = (int) ((sheet.bottom() - sheet.top()) / size.heightMm());
      for (int i = 0; i < bones.size(); i++) {
        int place = i % (across * down);
        if (i > 0 && place == 0) {
          sheet.nextPage();
        }
        float x = sheet.left() + place % across * size.widthMm();
        int row = place / across;
        float y = sheet.top() + row * size.heightMm();
        label(sheet, x, y, size, bones.get(i));
      }
      sheet.write(out);
      return sheet.pages();
    }
  }

  private void label(Sheet sheet, float x, float y, LabelSize size, Dossier bone)
      throws IOException {
    sheet.frame(x, y, size.widthMm(), size.heightMm());
    float code = size.heightMm() * 0.52f;
    float text = size.widthMm() - code - 4;
    sheet.code(x + size.widthMm() - code - 1, y + 1, code, bone.bone().id().value());
    float points = size.points();
    float step = points * 0.53f;
    float at = y + 2 + points * 0.4f;
    float in = x + 2;
    sheet.fitted(in, at, text, points * 1.35f, Letters.BOLD, Ink.BLACK, bone.bone().id().value());
    at += step * 1.15f;
    Letters naming = bone.latestCall().isEmpty() ? Letters.PLAIN : Letters.ITALIC;
    sheet.fitted(in, at, text, points * 1.1f, naming, Ink.BLACK, words.name(bone.latestCall()));
    at += step;
    sheet.fitted(in, at, text, points, Letters.PLAIN, Ink.BLACK, words.bone(bone));
    at += step;
    sheet.fitted(
        in,
        at,
        text,
        points,
        Letters.PLAIN,
        Ink.BLACK,
        bone.latestCall().map(c -> words.say("label.by", words.by(c))).orElse(""));
    at = Math.max(at + step, y + code + 2);
    float whole = size.widthMm() - 4;
    sheet.fitted(
        in,
        at,
        whole,
        points,
        Letters.PLAIN,
        Ink.BLACK,
        bone.tray().lot() + " · " + bone.tray().name());
    at += step;
    sheet.fitted(in, at, whole, points, Letters.PLAIN, Ink.BLACK, bone.tray().provenance());
    sheet.fitted(
        in,
        y + size.heightMm() - 1.6f,
        whole,
        points * 0.75f,
        Letters.PLAIN,
        Ink.GREY,
        words.say(
            facts.data() == SlipFacts.DataKind.SIMULATED ? "label.simulated" : "label.foot",
            facts.collection(),
            facts.dayBookHead().substring(0, Math.min(12, facts.dayBookHead().length()))));
  }

  /** A card for each tray: what it is, hazards, and what lies in it. */
  public int trayCards(OutputStream out, Map<Tray, List<Dossier>> trays) throws IOException {
    try (Sheet sheet = new Sheet(facts)) {
      float y = sheet.top();
      float height = 80;
      for (Map.Entry<Tray, List<Dossier>> each : trays.entrySet()) {
        if (y + height > sheet.bottom()) {
          sheet.nextPage();
          y = sheet.top();
        }
        trayCard(sheet, y, height, each.getKey(), each.getValue());
        y += height + 4;
      }
      sheet.write(out);
      return sheet.pages();
    }
  }

  private void trayCard(Sheet sheet, float y, float height, Tray tray, List<Dossier> bones)
      throws IOException {
    float x = sheet.left() + 5;
    float width = sheet.width() - 50;
    sheet.frame(sheet.left(), y, sheet.width(), height);
    sheet.code(sheet.right() - 40, y + 4, 36, tray.id().value());
    sheet.fitted(x, y + 12, width, 20, Letters.BOLD, Ink.BLACK, tray.name());
    sheet.fitted(x, y + 20, width, 12, Letters.PLAIN, Ink.BLACK, words.say("card.lot", tray.lot()));
    float at =
        sheet.paragraph(
            x,
            y + 29,
            width,
            10,
            Letters.PLAIN,
            Ink.BLACK,
            words.say(
                "found",
                tray.provenance().isBlank() ? words.say("found.none") : tray.provenance()));
    sheet.text(
        x,
        at + 1,
        10,
        Letters.PLAIN,
        Ink.BLACK,
        words.say("card.age", words.word("age", tray.age())));
    sheet.text(
        x,
        at + 7,
        10,
        Letters.PLAIN,
        Ink.BLACK,
        words.say("card.state", words.word("state", tray.state())));
    long called = bones.stream().filter(b -> b.latestCall().isPresent()).count();
    long stopped =
        bones.stream().filter(b -> b.bone().standing() == TrayBone.Standing.STOPPED).count();
    sheet.text(
        x,
        at + 13,
        10,
        Letters.PLAIN,
        Ink.BLACK,
        words.say("card.bones", bones.size(), called, bones.size() - called)
            + (stopped > 0 ? words.say("card.stopped", stopped) : ""));
    sheet.paragraph(
        x,
        at + 22,
        sheet.width() - 10,
        11,
        Letters.BOLD,
        Ink.BLACK,
        words.say(
            "hazards", tray.hazards().isBlank() ? words.say("hazards.none") : tray.hazards()));
  }

  /** The pile in its order: what came in, how far it is, why it lies there. */
  public int pile(OutputStream out, List<PileEntry> entries) throws IOException {
    try (Sheet sheet = new Sheet(facts)) {
      Table table =
          new Table(
                  sheet,
                  words.say("pile"),
                  words.heads("", "number", "taxon", "what", "stage", "came", "lies", "from"))
              .withWidths(List.of(0.035f, 0.1f, 0.2f, 0.1f, 0.11f, 0.1f, 0.13f, 0.225f));
      for (PileEntry e : entries) {
        table.row(
            List.of(
                String.valueOf(e.place()),
                e.arrival().number(),
                e.arrival().taxon().value(),
                e.arrival().what(),
                words.word("stage", e.arrival().stage()),
                e.arrival().cameIn().toString(),
                e.arrival().place(),
                e.arrival().from()),
            (e.arrival().permit().isEmpty() ? "" : words.say("permit", e.arrival().permit()) + " ")
                + facts.said().apply(e.why())
                + (e.arrival().remarks().isEmpty() ? "" : " " + e.arrival().remarks()));
      }
      sheet.write(out);
      return sheet.pages();
    }
  }

  /** What to prepare next, the largest gain first. */
  public int wanted(OutputStream out, List<Wanted.Entry> entries) throws IOException {
    try (Sheet sheet = new Sheet(facts)) {
      Table table =
          new Table(sheet, words.say("wanted"), words.heads("", "taxon", "element", "gain", "why"))
              .withWidths(List.of(0.05f, 0.22f, 0.14f, 0.13f, 0.46f));
      for (int i = 0; i < entries.size(); i++) {
        Wanted.Entry entry = entries.get(i);
        table.row(
            List.of(
                String.valueOf(i + 1),
                entry.taxon().value(),
                words.element(entry.element()),
                words.written(entry.growthText()),
                facts.said().apply(entry.reason())));
      }
      sheet.write(out);
      return sheet.pages();
    }
  }

  /** What lies in which drawer of the own shelf. */
  public int drawerList(OutputStream out, Shelf shelf) throws IOException {
    Map<String, List<Animal>> drawers = new TreeMap<>();
    for (Animal animal : shelf.animals()) {
      animal
          .drawer()
          .ifPresent(
              d -> drawers.computeIfAbsent(d, none -> new java.util.ArrayList<>()).add(animal));
    }
    try (Sheet sheet = new Sheet(facts)) {
      Table table =
          new Table(sheet, words.say("drawers"), words.heads("drawer", "number", "taxon", "bones"))
              .withWidths(List.of(0.13f, 0.16f, 0.33f, 0.38f));
      for (Map.Entry<String, List<Animal>> drawer : drawers.entrySet()) {
        for (Animal animal : drawer.getValue()) {
          table.row(
              List.of(
                  drawer.getKey(),
                  animal.id().value(),
                  animal.taxon().map(Object::toString).orElse(words.say("taxon.none")),
                  animal.bones().stream()
                      .map(bone -> words.element(bone.element()))
                      .distinct()
                      .reduce((a, b) -> a + "; " + b)
                      .orElse("")));
        }
      }
      sheet.write(out);
      return sheet.pages();
    }
  }

  /** All calls on bones, for the file: name, who, when, on what. */
  public int callSlips(OutputStream out, List<Dossier> bones) throws IOException {
    try (Sheet sheet = new Sheet(facts)) {
      Table table =
          new Table(
                  sheet,
                  words.say("calls"),
                  words.heads("bone", "what", "called", "by", "basis", "seen"))
              .withWidths(List.of(0.1f, 0.17f, 0.18f, 0.18f, 0.19f, 0.18f));
      for (Dossier bone : bones) {
        for (Call call : bone.calls()) {
          table.row(
              List.of(
                  bone.bone().id().value(),
                  words.bone(bone),
                  words.nameAndKind(call),
                  words.by(call),
                  words.basis(call),
                  words.yesOrNo(call.sawSuggestion())));
        }
      }
      sheet.write(out);
      return sheet.pages();
    }
  }
}

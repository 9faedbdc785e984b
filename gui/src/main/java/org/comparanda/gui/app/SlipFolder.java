package org.comparanda.gui.app;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.comparanda.dossier.Dossier;
import org.comparanda.gui.bench.SlipDesk;
import org.comparanda.gui.capture.KeyTable;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.BoneId;
import org.comparanda.slips.KeyCard;
import org.comparanda.slips.LabelSize;
import org.comparanda.slips.Slips;

/** Slips as PDF in the folder {@code slips} beside the collection, one file a bone. */
final class SlipFolder implements SlipDesk {
  private final Workplace place;
  private final Path folder;

  SlipFolder(Workplace place) {
    this.place = place;
    folder = place.collection().file().resolveSibling("slips");
  }

  @Override
  public Path slip(BoneId bone) {
    List<Dossier> dossiers =
        Dossier.ofLots(List.of(), place.collection().trays(), place.collection().readings())
            .stream()
            .filter(d -> d.bone().id().equals(bone))
            .toList();
    return write(
        fileName(bone.value()),
        out -> new Slips(PageFacts.of(place)).labels(out, dossiers, LabelSize.ORDINARY));
  }

  @Override
  public Path keyCard() {
    Words words = Words.of("bench", place.locale());
    List<KeyCard.Line> lines = new ArrayList<>();
    new KeyTable(words).rows().forEach(row -> lines.add(new KeyCard.Line(row.key(), row.does())));
    return write(
        "keys.pdf",
        out -> new KeyCard(PageFacts.of(place)).write(out, words.get("keys.title"), lines));
  }

  /** Writes a page. */
  private interface Page {
    int write(OutputStream out) throws IOException;
  }

  private Path write(String name, Page page) {
    try {
      Files.createDirectories(folder);
      Path file = folder.resolve(name);
      try (OutputStream out = Files.newOutputStream(file)) {
        page.write(out);
      }
      return file;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A bone number as a file's name; signs that a file can't bear are written as their code. */
  static String fileName(String number) {
    StringBuilder name = new StringBuilder();
    for (int i = 0; i < number.length(); i++) {
      char c = number.charAt(i);
      boolean plain = Character.isLetterOrDigit(c) || c == '-' || c == '_';
      name.append(plain ? String.valueOf(c) : String.format(Locale.ROOT, "%%%02X", (int) c));
    }
    return name.append(".pdf").toString();
  }
}

package org.comparanda.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The first page of every kind of slip, of the demo's collection (simulated), into docs/pictures.
 * No part of the ordinary tests: run it by its name.
 */
class SlipPictures {
  private static final Path PICTURES = Path.of("../docs/pictures");
  private static final int DOTS_PER_INCH = 96;

  @TempDir Path folder;
  private Path room = Path.of("");

  private void done(Object... words) {
    List<Object> all = new ArrayList<>(List.of(words));
    all.addAll(List.of("--collection", room));
    Typed typed = Typed.command(all.toArray());
    assertEquals(0, typed.code(), typed.err());
  }

  private void picture(String name, String kind, Object... options) throws IOException {
    Path pdf = folder.resolve(name + ".pdf");
    List<Object> words = new ArrayList<>(List.of("slips", kind, pdf));
    words.addAll(List.of(options));
    done(words.toArray());
    try (PDDocument pages = Loader.loadPDF(pdf.toFile())) {
      BufferedImage page =
          new PDFRenderer(pages).renderImageWithDPI(0, DOTS_PER_INCH, ImageType.GRAY);
      String file = "slips-%s-light-%dx%d.png".formatted(name, page.getWidth(), page.getHeight());
      ImageIO.write(page, "png", PICTURES.resolve(file).toFile());
    }
  }

  @Test
  void everyKindOfSlip() throws IOException {
    Files.createDirectories(PICTURES);
    room = Room.harrowmere(folder);
    done(
        "tray",
        "call",
        "K-102",
        "Dama cf. dama",
        "--by",
        "demo",
        "--basis",
        "its drawer beside it",
        "--how",
        "by_both",
        "--why",
        "shape of the groove");
    done(
        "tray",
        "call",
        "K-202",
        "Capra cf. hircus",
        "--by",
        "demo",
        "--basis",
        "by eye",
        "--trait",
        "sheep-goat-humerus-corner=no");
    done("tray", "hazards", "harrowmere-easy", "old arsenic: gloves", "--by", "demo");
    picture("labels", "labels", "--lot", "Harrowmere easy");
    picture(
        "labels-small",
        "labels",
        "--lot",
        "Harrowmere easy",
        "--paper",
        "letter",
        "--label",
        "small");
    picture("cards", "cards");
    picture("drawers", "drawers");
    picture("calls", "calls");
    picture("report", "report", "--bone", "K-202");
  }
}

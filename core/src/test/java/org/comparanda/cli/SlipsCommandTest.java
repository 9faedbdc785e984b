package org.comparanda.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.comparanda.storage.Collection;
import org.comparanda.tray.Qualifier;
import org.comparanda.tray.TrayBone;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code slips}: what is on the pages, read back from the PDF. */
class SlipsCommandTest {
  @TempDir Path folder;
  private Path room = Path.of("");

  @BeforeEach
  void demoWithCalls() {
    room = Room.harrowmere(folder);
    try (Collection opened = Collection.open(room, Typed.CLOCK)) {
      opened.trays().record(Room.call("K-102", "Dama dama", Qualifier.CF, "compared"));
      opened.trays().save(Room.tray("pit", "Pit lot", "Field 7, simulated"));
      opened.trays().save(Room.bone("P-2", "pit", TrayBone.Standing.STOPPED, ""));
    }
  }

  private Path slips(String kind, Object... more) {
    Path out = folder.resolve(kind + ".pdf");
    Object[] words = new Object[more.length + 5];
    words[0] = "slips";
    words[1] = kind;
    words[2] = out;
    words[3] = "--collection";
    words[4] = room;
    System.arraycopy(more, 0, words, 5, more.length);
    Typed typed = Typed.command(words);
    assertEquals(0, typed.code(), typed.err());
    return out;
  }

  private static String text(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return new PDFTextStripper().getText(document);
    }
  }

  private String head() {
    try (Collection opened = Collection.open(room, Typed.CLOCK)) {
      return opened.dayBookHead();
    }
  }

  @Test
  void labelsCarryNumberCallBoneAndTheDayBook() throws IOException {
    Path pdf = slips("labels", "--lot", "Harrowmere easy");
    String text = text(pdf);
    assertTrue(text.contains("Dama cf. dama"), text);
    assertTrue(text.contains("called by Demo (simulated), 2026-11-25"), text);
    assertTrue(text.contains("right femur, whole"), text);
    assertTrue(text.contains("not called yet"), text);
    assertTrue(text.contains("Simulated data."), text);
    assertTrue(text.contains("Day Book " + head()), text);
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      for (PDPage page : document.getPages()) {
        PDResources resources = page.getResources();
        for (var name : resources.getFontNames()) {
          assertTrue(resources.getFont(name).isEmbedded());
        }
      }
    }
  }

  // demo-data/tray-easy.csv has the bones K-101 to K-112.
  @Test
  void codesOnThePageReadBackAsTheNumbersOfTheBones() throws Exception {
    try (PDDocument document =
        Loader.loadPDF(slips("labels", "--lot", "Harrowmere easy").toFile())) {
      BufferedImage image = new PDFRenderer(document).renderImageWithDPI(0, 254); // 10 dots a mm
      Set<String> read = new TreeSet<>();
      for (int label = 0; label < 12; label++) {
        read.add(code(image.getSubimage(120 + label % 2 * 920, 120 + label / 2 * 420, 920, 420)));
      }
      assertEquals(
          Set.of(
              "K-101", "K-102", "K-103", "K-104", "K-105", "K-106", "K-107", "K-108", "K-109",
              "K-110", "K-111", "K-112"),
          read);
    }
  }

  private static String code(BufferedImage label) throws Exception {
    int width = label.getWidth();
    int[] pixels = label.getRGB(0, 0, width, label.getHeight(), null, 0, width);
    var luminance = new RGBLuminanceSource(width, label.getHeight(), pixels);
    return new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(luminance))).getText();
  }

  @Test
  void longGroundsOfACallGoOnOverLinesAndPages() throws IOException {
    StringBuilder grounds = new StringBuilder("begins here");
    for (int i = 1; i <= 900; i++) {
      grounds.append(" ground").append(i);
    }
    try (Collection opened = Collection.open(room, Typed.CLOCK)) {
      opened.trays().record(Room.call("K-101", "Ovis aries", Qualifier.NONE, grounds.toString()));
      String unbroken = "x".repeat(400) + "end";
      opened.trays().record(Room.call("K-103", "Ovis aries", Qualifier.NONE, unbroken));
    }
    Path pdf = slips("calls", "--lot", "Harrowmere easy");
    String text = text(pdf);
    assertTrue(text.contains("begins here") && text.contains("ground450"), text);
    assertTrue(text.contains("ground900") && text.contains("end"), text);
    assertTrue(text.replaceAll("[^x]", "").length() >= 400, text);
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      assertTrue(document.getNumberOfPages() > 1);
    }
  }

  @Test
  void paperAndLabelSizeAreAsAsked() throws IOException {
    Path pdf = slips("labels", "--lot", "Harrowmere easy", "--paper", "letter", "--label", "small");
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      assertEquals(1, document.getNumberOfPages());
      assertEquals(612, document.getPage(0).getMediaBox().getWidth(), 0.01); // 8.5 in
      assertEquals(792, document.getPage(0).getMediaBox().getHeight(), 0.01); // 11 in
    }
  }

  @Test
  void reportHasSentenceShareWithTypicalityReadingsAndMethods() throws IOException {
    String text = text(slips("report", "--bone", "K-102"));
    assertTrue(text.contains("share") && text.contains("typicality"), text);
    assertTrue(text.contains("240.4 mm"), text);
    assertTrue(text.contains("Priors: equal"), text);
    assertTrue(text.contains("A suggestion is not an identification."), text);
    assertTrue(text.contains("Dama cf. dama"), text);
  }

  @Test
  void boneThatMayBeHumanIsNeverCompared() throws IOException {
    String text = text(slips("report", "--bone", "P-2"));
    assertTrue(text.contains("Nothing was compared."), text);
    assertFalse(text.contains("typicality"), text);
  }

  @Test
  void cardsDrawersAndCallsSayWhatTheyList() throws IOException {
    String cards = text(slips("cards"));
    assertTrue(cards.contains("12 bones: 1 called, 11 not yet"), cards);
    assertTrue(cards.contains("Hazards: none recorded"), cards);
    assertTrue(cards.contains("1 set aside: may be human"), cards);
    String drawers = text(slips("drawers"));
    assertTrue(drawers.contains("HB-0101"), drawers);
    assertTrue(text(slips("calls")).contains("Dama cf. dama"));
  }
}

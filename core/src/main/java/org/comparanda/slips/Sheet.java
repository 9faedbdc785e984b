package org.comparanda.slips;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.jspecify.annotations.Nullable;

/**
 * Pages of one PDF, drawn from the top left corner in mm. A character that the font lacks is
 * written as a question mark.
 */
final class Sheet implements AutoCloseable {
  private static final float POINTS_PER_MM = 72 / 25.4f;
  private static final float MARGIN_MM = 12;

  private final PDDocument document = new PDDocument();
  private final Map<Letters, PDFont> fonts = new EnumMap<>(Letters.class);
  private final SlipFacts facts;
  private final BoneText words;
  private PDPageContentStream page;
  private int pages;

  Sheet(SlipFacts facts) throws IOException {
    this.facts = facts;
    words = new BoneText(facts);
    for (Letters letters : Letters.values()) {
      fonts.put(letters, font(letters));
    }
    page = opened();
  }

  private PDFont font(Letters letters) throws IOException {
    try (@Nullable InputStream bytes = Sheet.class.getResourceAsStream(letters.file())) {
      if (bytes == null) {
        throw new IOException("The font " + letters.file() + " is missing from the program.");
      }
      return PDType0Font.load(document, bytes);
    }
  }

  private PDPageContentStream opened() throws IOException {
    PDPage next =
        new PDPage(
            new PDRectangle(
                facts.paper().widthMm() * POINTS_PER_MM, facts.paper().heightMm() * POINTS_PER_MM));
    document.addPage(next);
    pages++;
    return new PDPageContentStream(document, next);
  }

  /** Ends this page and begins another. */
  void nextPage() throws IOException {
    foot();
    page.close();
    page = opened();
  }

  float left() {
    return MARGIN_MM;
  }

  float top() {
    return MARGIN_MM;
  }

  float right() {
    return facts.paper().widthMm() - MARGIN_MM;
  }

  /** Where the foot of the page begins. */
  float bottom() {
    return facts.paper().heightMm() - MARGIN_MM - 8;
  }

  float width() {
    return right() - left();
  }

  private void foot() throws IOException {
    float y = facts.paper().heightMm() - MARGIN_MM - 4;
    line(left(), y - 2.5f, right(), y - 2.5f, 0.2f, Ink.LINE);
    String simulated =
        facts.data() == SlipFacts.DataKind.SIMULATED ? words.say("foot.simulated") + " " : "";
    text(
        left(),
        y,
        5.5f,
        Letters.PLAIN,
        Ink.GREY,
        simulated
            + words.say(
                "foot",
                facts.collection(),
                facts.at().toString().substring(0, 10),
                facts.program(),
                pages));
    text(
        left(),
        y + 3,
        5.5f,
        Letters.PLAIN,
        Ink.GREY,
        words.say("foot.daybook", facts.dayBookHead()));
  }

  /** One line of text, its base line at y. */
  void text(float x, float y, float points, Letters letters, Ink ink, String text)
      throws IOException {
    PDFont font = font(letters, text);
    page.beginText();
    page.setNonStrokingColor(ink.shade());
    page.setFont(font, points);
    page.newLineAtOffset(x * POINTS_PER_MM, (facts.paper().heightMm() - y) * POINTS_PER_MM);
    page.showText(printable(font, text));
    page.endText();
  }

  private PDFont font(Letters letters, String text) {
    return java.util.Objects.requireNonNull(fonts.get(letters), text);
  }

  /** One line, shortened with an ellipsis to fit the width. */
  void fitted(float x, float y, float width, float points, Letters letters, Ink ink, String text)
      throws IOException {
    String shown = text;
    while (shown.length() > 1 && widthMm(points, letters, shown) > width) {
      shown = shown.substring(0, shown.length() - 2).stripTrailing() + "…";
    }
    text(x, y, points, letters, ink, shown);
  }

  /** Several lines broken between words; returns the base line after the last. */
  float paragraph(
      float x, float y, float width, float points, Letters letters, Ink ink, String text)
      throws IOException {
    float at = y;
    for (String line : lines(width, points, letters, text)) {
      text(x, at, points, letters, ink, line);
      at += points * 0.5f;
    }
    return at;
  }

  List<String> lines(float width, float points, Letters letters, String text) throws IOException {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : words(width, points, letters, text)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && widthMm(points, letters, longer) > width) {
        lines.add(line);
        line = word;
      } else {
        line = longer;
      }
    }
    lines.add(line);
    return lines;
  }

  /** The words of a text, those that are wider than a line cut to the width of one. */
  private List<String> words(float width, float points, Letters letters, String text)
      throws IOException {
    List<String> words = new ArrayList<>();
    for (String word : List.of(text.strip().split("\\s+", -1))) {
      String rest = word;
      while (rest.length() > 1 && widthMm(points, letters, rest) > width) {
        int cut = rest.length() - 1;
        while (cut > 1 && widthMm(points, letters, rest.substring(0, cut)) > width) {
          cut--;
        }
        words.add(rest.substring(0, cut));
        rest = rest.substring(cut);
      }
      words.add(rest);
    }
    return words;
  }

  float widthMm(float points, Letters letters, String text) throws IOException {
    PDFont font = font(letters, text);
    return font.getStringWidth(printable(font, text)) / 1000 * points / POINTS_PER_MM;
  }

  private static String printable(PDFont font, String text) {
    StringBuilder shown = new StringBuilder();
    text.codePoints()
        .forEach(
            c -> {
              String sign = Character.toString(c);
              shown.append(Character.isWhitespace(c) ? " " : has(font, sign) ? sign : "?");
            });
    return shown.toString();
  }

  private static boolean has(PDFont font, String sign) {
    try {
      font.encode(sign);
      return true;
    } catch (IllegalArgumentException missing) {
      return false;
    } catch (IOException problem) {
      throw new java.io.UncheckedIOException(problem);
    }
  }

  void line(float x1, float y1, float x2, float y2, float widthMm, Ink ink) throws IOException {
    float height = facts.paper().heightMm();
    page.setStrokingColor(ink.shade());
    page.setLineWidth(widthMm * POINTS_PER_MM);
    page.moveTo(x1 * POINTS_PER_MM, (height - y1) * POINTS_PER_MM);
    page.lineTo(x2 * POINTS_PER_MM, (height - y2) * POINTS_PER_MM);
    page.stroke();
  }

  void frame(float x, float y, float width, float height) throws IOException {
    page.setStrokingColor(Ink.LINE.shade());
    page.setLineWidth(0.2f * POINTS_PER_MM);
    box(x, y, width, height);
    page.stroke();
  }

  void fill(float x, float y, float width, float height, Ink ink) throws IOException {
    page.setNonStrokingColor(ink.shade());
    box(x, y, width, height);
    page.fill();
  }

  private void box(float x, float y, float width, float height) throws IOException {
    page.addRect(
        x * POINTS_PER_MM,
        (facts.paper().heightMm() - y - height) * POINTS_PER_MM,
        width * POINTS_PER_MM,
        height * POINTS_PER_MM);
  }

  /** A QR code of the text, side in mm, quiet zone included. */
  void code(float x, float y, float side, String text) throws IOException {
    BitMatrix squares;
    try {
      squares =
          new QRCodeWriter()
              .encode(
                  text,
                  BarcodeFormat.QR_CODE,
                  0,
                  0,
                  Map.of(EncodeHintType.CHARACTER_SET, "UTF-8", EncodeHintType.MARGIN, 2));
    } catch (WriterException problem) {
      throw new IOException("\"" + text + "\" does not fit into a QR code.", problem);
    }
    float step = side / squares.getWidth();
    page.setNonStrokingColor(Ink.BLACK.shade());
    for (int row = 0; row < squares.getHeight(); row++) {
      for (int column = 0; column < squares.getWidth(); column++) {
        if (squares.get(column, row)) {
          box(x + column * step, y + row * step, step * 1.01f, step * 1.01f);
        }
      }
    }
    page.fill();
  }

  void write(OutputStream out) throws IOException {
    foot();
    page.close();
    document.getDocumentInformation().setTitle(words.say("title", facts.collection()));
    document.getDocumentInformation().setProducer(facts.program());
    document.save(out);
  }

  int pages() {
    return pages;
  }

  @Override
  public void close() throws IOException {
    document.close();
  }
}

package org.comparanda.gui.control.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

/** Invented points; the checks are of the drawing, not of the numbers. */
class FigureDrawingTest {
  private static final FigureDrawing PRINT =
      FigureDrawing.of(figure(), Palette.LIGHT, FigureExport.WIDTH, FigureExport.HEIGHT, 8);

  @Test
  void svgIsWellFormedAndHoldsEveryPointAndText() throws Exception {
    Document svg =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new InputSource(new StringReader(FigureExport.svg(PRINT))));
    assertEquals("svg", svg.getDocumentElement().getTagName());
    // Six points of the first kind, one in the legend, the estimate, and it in the legend.
    assertEquals(9, svg.getElementsByTagName("circle").getLength());
    String text = svg.getDocumentElement().getTextContent();
    assertTrue(text.contains("Body mass (kg) <invented>"), text);
    assertTrue(text.contains("Ovis aries (6)"), text);
    assertTrue(text.contains("this bone"), text);
  }

  @Test
  void pdfTableOfObjectsPointsAtEveryObject() {
    byte[] file = FigureExport.pdf(PRINT);
    String pdf = new String(file, StandardCharsets.ISO_8859_1);
    assertTrue(pdf.startsWith("%PDF-1.4"));
    assertTrue(pdf.endsWith("%%EOF\n"));
    Matcher entry = Pattern.compile("(\\d{10}) 00000 n").matcher(pdf);
    int object = 0;
    while (entry.find()) {
      object++;
      int start = Integer.parseInt(entry.group(1));
      assertTrue(pdf.startsWith(object + " 0 obj", start), "object " + object);
    }
    assertEquals(4, object, "catalogue, pages, page, contents");
    assertTrue(pdf.contains("(Ovis aries \\(6\\)) Tj"), "brackets are escaped");
  }

  @Test
  void pointIsFoundWhereItIsDrawnAndNowhereElse() {
    Matcher first =
        Pattern.compile("<circle cx=\"([\\d.]+)\" cy=\"([\\d.]+)\"")
            .matcher(FigureExport.svg(PRINT));
    assertTrue(first.find());
    double x = Double.parseDouble(first.group(1));
    double y = Double.parseDouble(first.group(2));
    assertEquals(Optional.of("A0, drawer C 4"), tipAt(x + 2, y - 2));
    assertEquals(Optional.empty(), tipAt(x, y - 40));
  }

  @Test
  void darkAndLightDifferInColourOnly() {
    FigureDrawing dark =
        FigureDrawing.of(figure(), Palette.DARK, FigureExport.WIDTH, FigureExport.HEIGHT, 8);
    String colour = "#[0-9A-F]{6}";
    assertNotEquals(FigureExport.svg(PRINT), FigureExport.svg(dark));
    assertEquals(
        FigureExport.svg(PRINT).replaceAll(colour, ""),
        FigureExport.svg(dark).replaceAll(colour, ""));
  }

  @Test
  void neighbouringKindsDifferInColourAndInShape() {
    for (int i = 0; i < 48; i++) {
      assertNotEquals(KindLook.of(i).mark(), KindLook.of(i + 1).mark());
      assertNotEquals(KindLook.of(i).light(), KindLook.of(i + 1).light());
    }
    assertEquals(48, IntStream.range(0, 48).mapToObj(KindLook::of).distinct().count());
  }

  private static Optional<String> tipAt(double x, double y) {
    return PRINT.pointAt(new Xy(x, y)).map(Series.Point::tip);
  }

  static Figure figure() {
    List<Series.Point> sheep =
        IntStream.range(0, 6)
            .mapToObj(
                i ->
                    new Series.Point(
                        "A" + i, "A" + i + ", drawer C 4", new Xy(28 + 2 * i, 30 + 5 * i)))
            .toList();
    List<Series.Point> goats = List.of(new Series.Point("B1", "B1", new Xy(33, 70)));
    KindLook first = KindLook.of(0);
    KindLook second = KindLook.of(1);
    return new Figure(
        new Axis("Distal breadth (mm)", AxisScale.LOG, 20, 52),
        new Axis("Body mass (kg) <invented>", AxisScale.LOG, 15, 120),
        List.of(
            new Series(
                "Ovis aries (6)",
                Lettering.Face.ITALIC,
                first.mark(),
                first.light(),
                first.dark(),
                sheep),
            new Series(
                "Capra hircus (1)",
                Lettering.Face.ITALIC,
                second.mark(),
                second.light(),
                second.dark(),
                goats)),
        List.of(new Curve("line", Dash.SOLID, List.of(new Xy(26, 26), new Xy(45, 70)))),
        List.of(
            new Band(
                "95 % for one animal",
                Band.Kind.PREDICTION,
                List.of(new Band.Edge(26, 19, 35), new Band.Edge(45, 52, 94))),
            new Band(
                "95 % for the mean",
                Band.Kind.CONFIDENCE,
                List.of(new Band.Edge(26, 23, 29), new Band.Edge(45, 63, 77)))),
        Optional.of(new BonePlace("this bone", 41, 58, 43, 78)),
        "Simulated demo data.");
  }
}

package org.comparanda.gui.control.falling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.comparanda.gui.control.falling.FallingPicture.Captions;
import org.comparanda.gui.control.falling.FallingPicture.Column;
import org.comparanda.gui.control.falling.FallingPicture.Dot;
import org.comparanda.gui.control.falling.FallingPicture.Fit;
import org.comparanda.gui.control.falling.FallingPicture.Presence;
import org.comparanda.gui.control.falling.FallingPicture.Row;
import org.comparanda.gui.control.plot.KindLook;
import org.comparanda.gui.control.plot.TextWidth;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** Invented taxa; the checks are of the page, not of the numbers. */
class FallingPrintTest {
  @Test
  void thePageHoldsSentenceNamesNumbersAndNotes() throws Exception {
    Document page = page(3);
    String text = page.getDocumentElement().getTextContent().replaceAll("\\s+", " ");
    for (String said :
        List.of("Aus bus 0", "Aus bus 2", "0.50", "0.40", "Bd", "31 mm", "demo", "11 animals")) {
      assertTrue(text.contains(said), said + " in " + text);
    }
    long italic =
        elements(page, "text").stream()
            .filter(t -> t.getAttribute("font-style").equals("italic"))
            .filter(t -> t.getTextContent().equals("Aus bus 1"))
            .count();
    assertEquals(2, italic, "in the sentence and as the name of its row");
  }

  @Test
  void fortyTaxaStandUnderEachOtherInsideThePage() throws Exception {
    Document page = page(40);
    double height =
        Double.parseDouble(page.getDocumentElement().getAttribute("viewBox").split(" ", -1)[3]);
    double last = 0;
    for (int i = 0; i < 40; i++) {
      String name = "Aus bus " + i;
      double y =
          elements(page, "text").stream()
              .filter(t -> t.getTextContent().equals(name))
              .mapToDouble(t -> Double.parseDouble(t.getAttribute("y")))
              .max()
              .orElseThrow();
      assertTrue(y > last + 8, name + " lies under the one before, letters of 8 points");
      last = y;
    }
    assertTrue(height > last);
  }

  @Test
  void scalesAreWrittenInThePersonsNotation() throws Exception {
    List<String> german =
        elements(page(1, 1.0, Locale.GERMAN), "text").stream()
            .map(Element::getTextContent)
            .toList();
    assertTrue(german.contains("1,1"), german.toString());
    assertTrue(german.stream().noneMatch("1.1"::equals), german.toString());
  }

  private static List<Element> elements(Document page, String tag) {
    NodeList all = page.getElementsByTagName(tag);
    return IntStream.range(0, all.getLength()).mapToObj(i -> (Element) all.item(i)).toList();
  }

  private static Document page(int taxa) throws Exception {
    return page(taxa, 30, Locale.ROOT);
  }

  private static Document page(int taxa, double first, Locale notation) throws Exception {
    List<Row> rows = new ArrayList<>();
    for (int i = 0; i < taxa; i++) {
      rows.add(
          new Row(
              "a" + i,
              "Aus bus " + i,
              "11 animals",
              KindLook.of(i),
              Presence.IN_PLAY,
              Optional.of(new Fit(0.5, "0.50", "0.40")),
              Map.of(
                  "Bd",
                  List.of(new Dot(first + i, "HB-1", ""), new Dot(1.1 * first, "HB-2", "")))));
    }
    Column column = new Column("Bd", "Bd", "31 mm", Optional.of(1.03 * first));
    FallingPrint print =
        new FallingPrint(
            new FallingPicture(
                List.of(column), rows, new Captions("share", "typical", "", "", notation)),
            "Fits a few: Aus bus 1, or another.",
            rows.stream().map(Row::name).toList(),
            List.of("K-1. Simulated demo data."));
    String svg = print.print(TextWidth.inPrint()).svg();
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(svg)));
  }
}

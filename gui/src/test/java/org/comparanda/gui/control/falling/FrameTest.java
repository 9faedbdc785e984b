package org.comparanda.gui.control.falling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.comparanda.gui.control.falling.FallingPicture.Captions;
import org.comparanda.gui.control.falling.FallingPicture.Column;
import org.comparanda.gui.control.falling.FallingPicture.Dot;
import org.comparanda.gui.control.falling.FallingPicture.Fit;
import org.comparanda.gui.control.falling.FallingPicture.Row;
import org.comparanda.gui.control.plot.KindLook;
import org.comparanda.gui.control.plot.Palette;
import org.comparanda.gui.control.plot.Print;
import org.comparanda.gui.control.plot.TextWidth;
import org.junit.jupiter.api.Test;

class FrameTest {
  // Every letter as wide as 0.6 of its size: any width will do here.
  private static final TextWidth WIDTH =
      (text, lettering) -> 0.6 * lettering.size() * text.length();

  @Test
  void theMotionEndsExactlyWhereThePictureRests() {
    Frame before = plan(List.of("a", "b", "c"), "Bd").frame();
    Frame after = plan(List.of("c", "a"), "Bd", "BT").frame();
    Frame end = before.towards(after, 1, 400);
    assertEquals(after.columns(), end.columns());
    assertEquals(after.rows().get("a"), end.rows().get("a"));
    assertEquals(0, end.rows().get("b").presence());
  }

  @Test
  void aRowThatLeavesSlidesToTheFloor() {
    Frame before = plan(List.of("a", "b"), "Bd").frame();
    Frame half = before.towards(plan(List.of("a"), "Bd").frame(), 0.5, 400);
    assertTrue(half.rows().get("b").middle() > before.rows().get("b").middle());
    assertEquals(0.5, half.rows().get("b").presence());
  }

  @Test
  void theLineOfANewReadingFallsFromTheTop() {
    Frame before = plan(List.of("a"), "Bd").frame();
    Frame start = before.towards(plan(List.of("a"), "Bd", "BT").frame(), 0, 400);
    assertEquals(0, start.columns().get("BT").fallen());
    assertEquals(1, start.columns().get("Bd").fallen());
  }

  @Test
  void theNamesGetAllTheRoomThatTheyNeed() {
    Plan plan = plan(List.of("Alligator mississippiensis"), "Bd");
    double longest = WIDTH.of("Alligator mississippiensis", plan.nameLettering());
    assertTrue(plan.names() > longest);
    assertTrue(plan.frame().columns().get("Bd").x() > longest);
  }

  @Test
  void fortyTaxaKeepTheirLeastHeight() {
    List<String> names = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      names.add("Taxon " + i);
    }
    Plan plan = plan(names, "Bd");
    // More than 16 rows stand 1.45 lines of 13 px text apart, the height of a line and some air.
    assertEquals(1.45 * 13, plan.rowHeight(), 1e-9);
    assertTrue(plan.leastHeight() >= 40 * 1.45 * 13);
  }

  @Test
  void headingsAndScaleStayWhereTheRowsAreScrolled() {
    Plan plan = forty();
    String atRest = drawn(plan, InView.all(plan));
    String scrolled = drawn(plan, new InView(200, 500));
    double heading = placeOf("Bd", atRest);
    assertEquals(heading + 200, placeOf("Bd", scrolled), 1e-6);
    double scale = placeOf("31", atRest); // a number of the scale, which goes from 30 to 33 mm
    assertEquals(plan.height() - scale, 500 - placeOf("31", scrolled), 1e-6);
    assertEquals(placeOf("Taxon 9", atRest), placeOf("Taxon 9", scrolled), 1e-6);
  }

  @Test
  void whatLiesUnderTheHeadingsIsNotSeen() {
    Plan plan = forty();
    InView view = new InView(200, 500);
    assertFalse(view.shows(200 + plan.top() - 1, plan));
    assertTrue(view.shows(200 + plan.top() + 1, plan));
    assertFalse(view.shows(500 - plan.bottom() + 1, plan));
    assertTrue(InView.all(plan).shows(1, plan));
  }

  private static Plan forty() {
    Plan low = plan(IntStream.range(0, 40).mapToObj(i -> "Taxon " + i).toList(), "Bd");
    return new Plan(low.picture(), 800, low.leastHeight(), 13, WIDTH);
  }

  private static String drawn(Plan plan, InView view) {
    return new Print(
            plan.width(),
            plan.leastHeight(),
            pen -> new FallingDrawing(plan, Palette.LIGHT, view).draw(plan.frame(), pen))
        .svg();
  }

  /** How far down a text stands. */
  private static double placeOf(String text, String svg) {
    Matcher found =
        Pattern.compile("<text x=\"[^\"]*\" y=\"([^\"]*)\"[^>]*>" + text + "</text>").matcher(svg);
    assertTrue(found.find(), text);
    return Double.parseDouble(found.group(1));
  }

  private static Plan plan(List<String> names, String... columns) {
    List<Column> measured = new ArrayList<>();
    for (String column : columns) {
      measured.add(new Column(column, column, "31 mm", Optional.of(31.0)));
    }
    List<Row> rows = new ArrayList<>();
    for (String name : names) {
      Map<String, List<Dot>> strips = new HashMap<>();
      for (String column : columns) {
        strips.put(column, List.of(new Dot(30, "HB-1", ""), new Dot(33, "HB-2", "")));
      }
      Optional<Fit> fit = Optional.of(new Fit(0.5, "0.50", "0.40"));
      rows.add(
          new Row(
              name,
              name,
              "2 animals",
              KindLook.of(rows.size()),
              FallingPicture.Presence.IN_PLAY,
              fit,
              strips));
    }
    return new Plan(
        new FallingPicture(measured, rows, new Captions("share", "typical", "", "", Locale.ROOT)),
        800,
        400,
        13,
        WIDTH);
  }
}

package org.comparanda.gui.control.falling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.comparanda.gui.control.falling.FallingPicture.Captions;
import org.comparanda.gui.control.falling.FallingPicture.Column;
import org.comparanda.gui.control.falling.FallingPicture.Dot;
import org.comparanda.gui.control.falling.FallingPicture.Fit;
import org.comparanda.gui.control.falling.FallingPicture.Row;
import org.comparanda.gui.control.plot.KindLook;
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
    assertEquals(1.85 * 13, plan.rowHeight(), 1e-9); // 1.85 lines of 13 px text, the least row
    assertTrue(plan.leastHeight() >= 40 * 1.85 * 13);
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
        new FallingPicture(measured, rows, new Captions("share", "typical", "", "")),
        800,
        400,
        13,
        WIDTH);
  }
}

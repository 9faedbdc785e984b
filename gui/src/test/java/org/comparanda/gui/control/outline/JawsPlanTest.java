package org.comparanda.gui.control.outline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.comparanda.gui.control.outline.BoneSketch.Box;
import org.comparanda.gui.control.outline.BoneSketch.Jaws;
import org.junit.jupiter.api.Test;

class JawsPlanTest {
  private static final Box BOX = new Box(20, 0, 64, 138);

  @Test
  void aBreadthNearTheLowerEndIsDrawnUnderTheBone() {
    JawsPlan plan = JawsPlan.of(new Jaws(29, 120, 73.5, 120, "Bd"), BOX);
    assertTrue(plan.lineFrom().getY() > 138);
    assertEquals(29, plan.lineFrom().getX(), 1e-9);
    assertEquals(73.5, plan.lineTo().getX(), 1e-9);
  }

  @Test
  void aBreadthInTheMiddleIsDrawnWhereItIsTaken() {
    JawsPlan plan = JawsPlan.of(new Jaws(42, 82, 60, 82, "SD"), BOX);
    assertTrue(plan.inPlace());
    assertEquals(82, plan.lineFrom().getY(), 1e-9);
  }
}

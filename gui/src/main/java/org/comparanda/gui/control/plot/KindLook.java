package org.comparanda.gui.control.plot;

import java.util.List;

/**
 * Colour and shape of one kind of points. Source of the colours: Okabe and Ito (2008), Color
 * Universal Design, without black and yellow; lighter ones of the same hue on dark.
 */
public record KindLook(Mark mark, Tint light, Tint dark) {
  private static final int TURN = 24; // after so many, six colours and eight shapes meet again
  private static final List<Tint> ON_LIGHT =
      List.of(
          Tint.of(0x0072B2),
          Tint.of(0xD55E00),
          Tint.of(0x009E73),
          Tint.of(0xCC79A7),
          Tint.of(0xE69F00),
          Tint.of(0x56B4E9));
  private static final List<Tint> ON_DARK =
      List.of(
          Tint.of(0x4FA8DE),
          Tint.of(0xFF8F50),
          Tint.of(0x35C79B),
          Tint.of(0xE6A9C9),
          Tint.of(0xF4BE55),
          Tint.of(0x98D3F5));

  /**
   * The look of the kind with that place in a fixed order. Six colours and eight shapes turn at
   * different speed, and after 24 kinds the colours are set on by one: so 48 kinds differ, and
   * neighbours differ in both.
   */
  public static KindLook of(int place) {
    int turn = Math.floorDiv(place, TURN);
    int colour = Math.floorMod(place + turn, ON_LIGHT.size());
    Mark[] marks = Mark.values();
    return new KindLook(
        marks[Math.floorMod(place, marks.length)], ON_LIGHT.get(colour), ON_DARK.get(colour));
  }
}

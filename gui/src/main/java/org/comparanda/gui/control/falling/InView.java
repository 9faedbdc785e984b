package org.comparanda.gui.control.falling;

/**
 * The part of the picture that is in view, from the top of the picture down, px. Where rows are
 * more than fit, headings and scale stand at its edges and the rows pass beneath.
 */
record InView(double from, double to) {
  /** All of it. */
  static InView all(Plan plan) {
    return new InView(0, plan.height());
  }

  /** Where rows are seen. */
  boolean shows(double y, Plan plan) {
    return (from <= 0 || y > from + plan.top()) && (to >= plan.height() || y < to - plan.bottom());
  }
}

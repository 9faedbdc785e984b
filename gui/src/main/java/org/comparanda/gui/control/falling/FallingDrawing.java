package org.comparanda.gui.control.falling;

import java.util.List;
import org.comparanda.gui.control.falling.FallingPicture.Fit;
import org.comparanda.gui.control.falling.FallingPicture.Presence;
import org.comparanda.gui.control.falling.Frame.ColumnPlace;
import org.comparanda.gui.control.falling.Frame.RowPlace;
import org.comparanda.gui.control.falling.Swarm.Spot;
import org.comparanda.gui.control.plot.Axis;
import org.comparanda.gui.control.plot.AxisScale;
import org.comparanda.gui.control.plot.Dash;
import org.comparanda.gui.control.plot.Lettering;
import org.comparanda.gui.control.plot.Letters;
import org.comparanda.gui.control.plot.LoweredPen;
import org.comparanda.gui.control.plot.Mark;
import org.comparanda.gui.control.plot.Palette;
import org.comparanda.gui.control.plot.Pen;
import org.comparanda.gui.control.plot.Ticks;
import org.comparanda.gui.control.plot.Tint;
import org.comparanda.gui.control.plot.Xy;

/** Draws one moment of the falling line with any pen. */
record FallingDrawing(Plan plan, Palette palette, InView view) {
  void draw(Frame frame, Pen pen) {
    frame.columns().values().forEach(c -> guides(c, pen));
    frame.rows().values().forEach(r -> row(r, frame, pen));
    frame.columns().values().forEach(c -> reading(c, pen));
    head(frame, new LoweredPen(pen, Math.max(0, view.from())));
    foot(frame, new LoweredPen(pen, Math.min(0, view.to() - plan.bottom() - floor())));
  }

  /** What stands over the rows, and over those that are scrolled away. */
  private void head(Frame frame, Pen pen) {
    if (view.from() > 0) {
      blank(0, plan.top() - 0.8 * text(), pen);
    }
    headings(pen);
    frame.columns().values().forEach(c -> heading(c, pen));
    frame.columns().values().forEach(c -> arrow(c, pen));
  }

  /** What stands under them. */
  private void foot(Frame frame, Pen pen) {
    if (view.to() < plan.height()) {
      blank(floor(), plan.bottom(), pen);
    }
    frame.columns().values().forEach(c -> scale(c, pen));
    crowd(frame, pen);
  }

  private void blank(double y, double high, Pen pen) {
    List<Xy> corners =
        List.of(
            new Xy(0, y),
            new Xy(plan.width(), y),
            new Xy(plan.width(), y + high),
            new Xy(0, y + high));
    pen.area(corners, palette.ground(), palette.ground(), 0);
  }

  private void heading(ColumnPlace c, Pen pen) {
    pen.text(
        c.column().heading(),
        new Xy(c.x(), 1.05 * text()),
        letters(text(), Lettering.Face.BOLD, Lettering.Anchor.START),
        palette.ink());
    pen.text(
        c.column().under(),
        new Xy(c.x(), 2.2 * text()),
        letters(0.88 * text(), Lettering.Face.PLAIN, Lettering.Anchor.START),
        palette.accent());
  }

  private List<Double> ticks(ColumnPlace c) {
    Axis axis = new Axis(c.column().key(), AxisScale.PLAIN, c.low(), c.high());
    int about = (int) Math.max(2, Math.min(6, c.width() / (3.6 * text())));
    return Ticks.of(axis, about).labelled();
  }

  private void guides(ColumnPlace c, Pen pen) {
    double from = plan.top() - 0.3 * text();
    for (double tick : ticks(c)) {
      double x = c.place(tick);
      pen.path(List.of(new Xy(x, from), new Xy(x, floor())), palette.hair(), 1, Dash.SOLID);
    }
  }

  /** The numbers under a column; one that would run into the one before is left out. */
  private void scale(ColumnPlace c, Pen pen) {
    Lettering small = letters(0.85 * text(), Lettering.Face.PLAIN, Lettering.Anchor.MIDDLE);
    double free = Double.NEGATIVE_INFINITY;
    for (double tick : ticks(c)) {
      String number = Letters.number(tick, plan.picture().captions().notation());
      double half = plan.measure().of(number, small) / 2;
      double x = c.place(tick);
      if (x - half > free) {
        pen.text(number, new Xy(x, floor() + 1.25 * text()), small, palette.muted());
        free = x + half + 0.4 * text();
      }
    }
  }

  private void headings(Pen pen) {
    Lettering small = letters(0.88 * text(), Lettering.Face.PLAIN, Lettering.Anchor.START);
    pen.text(
        plan.picture().captions().share(), new Xy(bars(), 1.05 * text()), small, palette.muted());
    pen.text(
        plan.picture().captions().typical(),
        new Xy(plan.width() - 0.4 * text(), 1.05 * text()),
        letters(0.88 * text(), Lettering.Face.PLAIN, Lettering.Anchor.END),
        palette.muted());
  }

  private void row(RowPlace r, Frame frame, Pen pen) {
    double y = r.middle();
    double there = r.presence();
    double name = plan.tall() ? y - 0.15 * text() : y + 0.36 * text();
    pen.text(
        r.row().name(),
        new Xy(0.2 * text(), name),
        plan.nameLettering(),
        (greyed(r) ? palette.muted() : palette.ink()).withAlpha(there));
    note(r, pen, name);
    for (ColumnPlace c : frame.columns().values()) {
      pen.path(
          List.of(new Xy(c.x(), y), new Xy(c.x() + c.width(), y)),
          palette.hair().withAlpha(there),
          1,
          Dash.SOLID);
      dots(r, c, pen);
    }
    r.row().fit().ifPresent(fit -> numbers(r, fit, pen));
  }

  private void note(RowPlace r, Pen pen, double name) {
    double x =
        plan.tall()
            ? 0.2 * text()
            : plan.names() - 1.6 * text() - plan.measure().of(r.row().note(), plan.noteLettering());
    double y = plan.tall() ? name + 1.3 * text() : name;
    pen.text(
        r.row().note(),
        new Xy(x, y),
        plan.noteLettering(),
        palette.muted().withAlpha(r.presence()));
  }

  private void dots(RowPlace r, ColumnPlace c, Pen pen) {
    Tint fill = fill(r).withAlpha(0.88 * r.presence());
    Tint line = palette.ink().withAlpha((greyed(r) ? 0.45 : 0.75) * r.presence());
    Mark mark = r.row().look().mark();
    for (Spot spot : r.swarm().in(c.column().key())) {
      mark.draw(pen, place(r, c, spot), plan.dot(), fill, line);
    }
  }

  /** Where a mark lies. */
  Xy place(RowPlace r, ColumnPlace c, Spot spot) {
    return new Xy(c.place(spot.value()), r.middle() + spot.lane() * plan.laneStep());
  }

  /** What a mark stands for, where that is more than one animal. */
  private void crowd(Frame frame, Pen pen) {
    int most = frame.rows().values().stream().mapToInt(r -> r.swarm().most()).max().orElse(1);
    if (most > 1) {
      pen.text(
          plan.picture().captions().crowd(most),
          new Xy(0.2 * text(), floor() + 1.25 * text()),
          plan.noteLettering(),
          palette.muted());
    }
  }

  private void numbers(RowPlace r, Fit fit, Pen pen) {
    double thick = 0.85 * text();
    double wide = 4 * text();
    double y = r.middle() - thick / 2;
    double there = r.presence();
    Tint edge = palette.muted().withAlpha(there);
    bar(pen, bars(), y, wide, thick, palette.hair().withAlpha(there), edge);
    double filled = Math.max(0.15 * text(), wide * r.share());
    bar(pen, bars(), y, filled, thick, fill(r).withAlpha(there), palette.ink().withAlpha(there));
    double line = r.middle() + 0.36 * text();
    pen.text(
        fit.shareText(),
        new Xy(bars() + wide + 0.5 * text(), line),
        letters(text(), Lettering.Face.PLAIN, Lettering.Anchor.START),
        palette.ink().withAlpha(there));
    pen.text(
        fit.typicalText(),
        new Xy(plan.width() - 0.4 * text(), line),
        letters(text(), Lettering.Face.BOLD, Lettering.Anchor.END),
        palette.ink().withAlpha(there));
  }

  private static boolean greyed(RowPlace r) {
    return r.row().presence() == Presence.IN_DRAWER;
  }

  private Tint fill(RowPlace r) {
    return greyed(r) ? palette.muted() : palette.fillOf(r.row().look());
  }

  /** Its edges lie on whole pixels: between two they would be faint. */
  private static void bar(
      Pen pen, double left, double top, double wide, double thick, Tint tint, Tint edge) {
    double x = Math.floor(left) + 0.5;
    double y = Math.floor(top) + 0.5;
    List<Xy> corners =
        List.of(
            new Xy(x, y), new Xy(x + wide, y), new Xy(x + wide, y + thick), new Xy(x, y + thick));
    pen.area(corners, tint, edge, 0.9);
  }

  private void reading(ColumnPlace c, Pen pen) {
    if (c.column().reading().isEmpty()) {
      return;
    }
    double x = c.place(c.value());
    double from = plan.top() - 0.35 * text();
    double to = from + (floor() - from) * c.fallen();
    pen.path(List.of(new Xy(x, from), new Xy(x, to)), palette.accent(), 2.2, Dash.SOLID);
  }

  private void arrow(ColumnPlace c, Pen pen) {
    if (c.column().reading().isEmpty()) {
      return;
    }
    double x = c.place(c.value());
    double from = plan.top() - 0.35 * text();
    double half = 0.42 * text();
    List<Xy> arrow =
        List.of(
            new Xy(x - half, from - half), new Xy(x + half, from - half), new Xy(x, from + half));
    pen.area(arrow, palette.accent(), palette.accent(), 0);
  }

  private double bars() {
    return plan.width() - plan.numbers() + 0.6 * text();
  }

  private double text() {
    return plan.text();
  }

  private double floor() {
    return plan.top() + plan.rowHeight() * Math.max(1, plan.picture().rows().size());
  }

  private static Lettering letters(double size, Lettering.Face face, Lettering.Anchor anchor) {
    return new Lettering(size, face, anchor, Lettering.Turn.LEVEL);
  }
}

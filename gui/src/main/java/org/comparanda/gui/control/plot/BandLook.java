package org.comparanda.gui.control.plot;

import java.util.Optional;

/** How a kind of band is told from the others without colour. */
record BandLook(Tint fill, Optional<Dash> edge) {
  static BandLook of(Band.Kind kind, Palette palette) {
    return switch (kind) {
      case PREDICTION -> new BandLook(palette.muted().withAlpha(0.07), Optional.of(Dash.DASHED));
      case CONFIDENCE -> new BandLook(palette.muted().withAlpha(0.07), Optional.of(Dash.SOLID));
      case PREDICTION_BESIDE ->
          new BandLook(palette.muted().withAlpha(0), Optional.of(Dash.DOTTED));
    };
  }

  /** How wide the edge is drawn, so that a slanting one is seen too; dots need more than a dash. */
  double edgeWidth() {
    return edge.equals(Optional.of(Dash.DOTTED)) ? 1.7 : 1.5;
  }
}

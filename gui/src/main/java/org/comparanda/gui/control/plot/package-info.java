/**
 * A scatter plot with lines and bands: figure (plain records), drawing, and pens that put the same
 * drawing on the screen, into SVG and into PDF. Knows no bone and no taxon.
 */
@NullMarked
package org.comparanda.gui.control.plot;

import org.jspecify.annotations.NullMarked;

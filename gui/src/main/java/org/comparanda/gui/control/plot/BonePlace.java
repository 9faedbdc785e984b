package org.comparanda.gui.control.plot;

/**
 * Where the bone in hand lies: the one thing in the accent colour.
 *
 * @param name as the legend says it
 * @param x its reading
 * @param y its estimate
 * @param low lower end of the interval for a single animal
 * @param high upper end
 */
public record BonePlace(String name, double x, double y, double low, double high) {}

package org.comparanda.gui.tray;

/**
 * How far a lot has come.
 *
 * @param share of its bones that are called, 0 to 1
 * @param count so many of so many
 * @param forecast working days left with their interval, or why there is none
 */
public record LotLine(String lot, double share, String count, String forecast) {}

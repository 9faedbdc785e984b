package org.comparanda.gui.tray;

import org.comparanda.tray.Tray;

/**
 * A tray in the list.
 *
 * @param bones on it
 * @param called of them
 * @param pieces of scrap
 */
public record TrayLine(Tray tray, int bones, int called, long pieces) {}

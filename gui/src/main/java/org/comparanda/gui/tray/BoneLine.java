package org.comparanda.gui.tray;

import org.comparanda.tray.TrayBone;

/**
 * A bone in the table of a tray.
 *
 * @param what element, side and portion in words
 * @param call the call that holds; empty without one
 * @param by who made it
 */
public record BoneLine(TrayBone bone, String what, String call, String by) {}

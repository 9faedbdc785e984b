package org.comparanda.gui.secondlook;

import org.comparanda.measurement.BoneId;

/**
 * A bone in one of the lists: its number and where it lies, nothing of what anybody called it.
 *
 * @param says for a waiting bone why it was picked or which look it would be, for another how the
 *     calls stand to each other
 */
public record QueueLine(BoneId bone, String tray, String says) {}

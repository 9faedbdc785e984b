package org.comparanda.secondlook;

import org.comparanda.tray.TrayBone;

/**
 * A bone that waits for a person's look.
 *
 * @param why why it was drawn
 * @param looks how many second looks it has already
 */
public record Waiting(TrayBone bone, Queued.Why why, int looks) {}

package org.comparanda.gui.app;

import java.time.Clock;
import java.util.Locale;
import java.util.concurrent.Executor;

/**
 * What the screens are wired from.
 *
 * @param work runs what takes long, off the window's thread
 * @param ui runs what touches the window
 * @param locale language and notation
 * @param clock for the time of readings and calls
 * @param look theme, size of the text, motion
 */
public record Workplace(Executor work, Executor ui, Locale locale, Clock clock, Look look) {}

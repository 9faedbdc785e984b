package org.comparanda.gui.app;

import java.util.function.Supplier;
import javafx.scene.layout.Region;

/**
 * One screen of the rail.
 *
 * @param key key of its name in the words of {@code app}, also the style id of its button
 * @param view makes its view, once, when it is first opened
 */
public record Screen(String key, Supplier<? extends Region> view) {}

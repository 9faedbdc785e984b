package org.comparanda.gui.control.plot;

/** A place: in data units on a figure, in points (1/72 in, or logical pixels) on a drawing. */
public record Xy(double x, double y) {}

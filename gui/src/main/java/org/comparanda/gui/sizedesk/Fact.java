package org.comparanda.gui.sizedesk;

/** A label and what stands beside it. */
public record Fact(String label, String text) {}

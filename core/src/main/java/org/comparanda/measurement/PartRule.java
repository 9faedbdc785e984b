package org.comparanda.measurement;

import org.comparanda.bone.ElementKey;

/**
 * A part is never longer than its whole: {@code part} ≤ {@code whole} on one bone of the element.
 */
public record PartRule(ElementKey element, MeasurementCode part, MeasurementCode whole) {}

package org.comparanda.gui.capture;

import java.util.Optional;
import java.util.function.Function;

/**
 * A question with what its answer does.
 *
 * @param question what is shown
 * @param answer does what was answered; gives the sentence when the answer can't be taken, and the
 *     question then stays
 */
public record Ask(Question question, Function<String, Optional<String>> answer) {}

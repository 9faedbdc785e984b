/**
 * Warnings while a value is typed: one small class and one sentence each. They warn and never
 * block.
 */
@NullMarked
package org.comparanda.capture.warning;

import org.jspecify.annotations.NullMarked;

/**
 * The Day Book: what changed, in one chain of hashes per bench, joined every day. Whoever holds a
 * head hash from a slip can prove that nothing before it was changed, dropped or rebuilt.
 */
@NullMarked
package org.comparanda.daybook;

import org.jspecify.annotations.NullMarked;

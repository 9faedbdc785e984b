/**
 * What is measured (code, definition, unit), one reading of it, and the protocol that lists them.
 */
@NullMarked
package org.comparanda.measurement;

import org.jspecify.annotations.NullMarked;

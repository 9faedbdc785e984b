/** Bones and calls as a Darwin Core Archive. Calls only, never suggestions. */
@NullMarked
package org.comparanda.exchange.dwca;

import org.jspecify.annotations.NullMarked;

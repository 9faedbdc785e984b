/** All that is recorded of one bone, in one piece, for slips and exports. */
@NullMarked
package org.comparanda.dossier;

import org.jspecify.annotations.NullMarked;

/** Reads what other programs computed and compares; nothing here is computed by us. */
package org.comparanda.outside;

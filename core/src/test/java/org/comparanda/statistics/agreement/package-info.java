/** Checks of agreement against other programs and published sets. */
package org.comparanda.statistics.agreement;

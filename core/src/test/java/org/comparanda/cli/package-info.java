/** The commands from end to end, in this process. */
package org.comparanda.cli;

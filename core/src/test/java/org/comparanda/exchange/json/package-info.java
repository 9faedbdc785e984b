/** The JSON texts, byte by byte and by shape. */
package org.comparanda.exchange.json;

/**
 * Makes the pictures of docs/pictures anew, from answers computed on the demo collection. Not part
 * of the ordinary tests: {@code mvn -q verify -Ppictures}.
 */
package org.comparanda.gui.pictures;

package org.comparanda.suggestion;

import org.comparanda.taxon.TaxonName;

/** A taxon that cannot occur here, with the reason; it is in no fit, and every answer says so. */
public record SetAside(TaxonName taxon, String reason) {}

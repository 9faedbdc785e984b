package org.comparanda.secondlook;

import java.util.Optional;
import org.comparanda.taxon.TaxonName;
import org.comparanda.tray.Call;

/**
 * A bone's first call and what the numbers said beside it.
 *
 * @param call the call
 * @param suggested the one taxon that the numbers named; empty where they named none or several
 * @param typicality of the called taxon; empty where nothing was fitted
 */
public record FirstLook(Call call, Optional<TaxonName> suggested, Optional<Double> typicality) {}

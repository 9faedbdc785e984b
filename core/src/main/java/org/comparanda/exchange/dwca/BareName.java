package org.comparanda.exchange.dwca;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.comparanda.tray.Call;

/**
 * A call cut into a name that holds nothing but the name, and its qualifier; both as the terms
 * scientificName and identificationQualifier ask.
 */
record BareName(String name, String qualifier) {
  private static final Set<String> SIGNS =
      Set.of("cf", "aff", "sp", "spp", "indet", "gen", "et", "?");

  static BareName of(Call call) {
    List<String> name = new ArrayList<>();
    List<String> signs = new ArrayList<>();
    for (String word : Arrays.asList(call.taxon().value().trim().split("\\s+"))) {
      (SIGNS.contains(word.toLowerCase(Locale.ROOT).replace(".", "")) ? signs : name).add(word);
    }
    if (!call.qualifier().sign().isEmpty()) {
      signs.add(call.qualifier().sign());
    }
    return new BareName(String.join(" ", name), String.join(" ", signs));
  }
}

package org.comparanda.gui.app;

import org.comparanda.gui.houserules.HouseRulesView;
import org.comparanda.gui.houserules.HouseRulesViewModel;
import org.comparanda.gui.houserules.RulesRoom;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.PersonId;

/** Wires the House Rules screen. */
record HouseRulesScreen(Workplace place) {
  HouseRulesView view(String note) {
    RulesRoom room =
        new RulesRoom(
            place.collection().houseRules(),
            place.collection().grants()::rights,
            place.collection().people(),
            place.memory().recall(RememberedThings.PERSON).map(PersonId::new),
            Words.of("houserules", place.locale()),
            place.locale(),
            place.clock());
    return new HouseRulesView(new HouseRulesViewModel(room, place.work(), place.ui()), note);
  }
}

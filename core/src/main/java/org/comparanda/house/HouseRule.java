package org.comparanda.house;

import java.time.Instant;
import org.comparanda.measurement.PersonId;

/** What the house set a rule to, who and when. Earlier settings stay on record. */
public record HouseRule(RuleName name, String content, PersonId by, Instant at) {}

package org.comparanda.house;

import java.time.Instant;
import org.comparanda.measurement.PersonId;

/**
 * What the house set a rule to, who, when and why. Earlier settings stay on record.
 *
 * @param why may be empty
 */
public record HouseRule(RuleName name, String content, PersonId by, Instant at, String why) {}

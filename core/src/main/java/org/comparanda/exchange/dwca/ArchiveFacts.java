package org.comparanda.exchange.dwca;

import java.time.Instant;
import java.util.function.Function;
import org.comparanda.dossier.Openness;
import org.comparanda.measurement.PersonId;
import org.comparanda.measurement.Protocol;
import org.comparanda.taxon.TaxonTree;

/**
 * What an archive says beside its bones.
 *
 * @param title of the data set
 * @param program name and version of this program
 * @param at when it is written
 * @param dayBookHead head hash of the Day Book, which fixes all that the archive was made from
 * @param openness what was opened, and by whom
 * @param name the name of a person as it may be printed
 */
public record ArchiveFacts(
    String title,
    String program,
    Instant at,
    String dayBookHead,
    Openness openness,
    Protocol protocol,
    TaxonTree taxa,
    Function<PersonId, String> name) {}

package org.comparanda.photo;

import java.time.Instant;
import java.util.Optional;
import org.comparanda.measurement.PersonId;

/**
 * One picture attached to a bone or an animal.
 *
 * @param id running number in its collection
 * @param hash SHA-256 of the file as it came, in hexadecimal; names the stored file
 * @param form how the picture is written
 * @param width in pixels, as stored
 * @param height in pixels, as stored
 * @param name name of the file that it came from, or what it is called
 * @param person who attached it, where it is known
 */
public record Photo(
    long id,
    PhotoSubject subject,
    String hash,
    PictureForm form,
    int width,
    int height,
    String name,
    Optional<PersonId> person,
    Instant at) {}

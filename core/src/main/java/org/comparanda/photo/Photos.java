package org.comparanda.photo;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.comparanda.measurement.PersonId;
import org.comparanda.statistics.Outcome;

/** Repository of pictures: rows in the collection, files beside it, named by their content. */
public interface Photos {
  /** All of them, in the order they were attached. */
  List<Photo> all();

  /** Those of one bone or animal, in the order they were attached. */
  List<Photo> of(PhotoSubject subject);

  /**
   * Stores a picture as it came and attaches it. Not possible for what is no sound JPEG or PNG, for
   * a bone that may be human, and for a bone or animal that is not there. The same picture attached
   * to the same subject again stays one.
   *
   * @param name name of the file that it came from
   */
  Outcome<Photo> attach(PhotoSubject subject, String name, byte[] bytes, Optional<PersonId> person);

  /** Where a small copy for lists lies, once one was made; never the picture itself. */
  Path thumbnail(Photo photo);

  /** The file as it came; it may be gone if someone took it out of the folder. */
  Path file(Photo photo);
}

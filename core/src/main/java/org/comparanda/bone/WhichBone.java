package org.comparanda.bone;

import java.util.List;
import java.util.Optional;

/**
 * The key "Which bone is it?" for people in training: questions on shape that lead to an element,
 * or to a stop. Every link leads to a question of the key.
 *
 * <p>Errors: {@link IllegalArgumentException} if a link leads nowhere.
 *
 * @param first id of the first question
 * @param questions all questions, in the order of the file
 */
public record WhichBone(String first, List<Question> questions) {
  public WhichBone {
    questions = List.copyOf(questions);
    question(first, questions);
    for (Question question : questions) {
      for (Choice choice : question.choices()) {
        if (choice.next() instanceof Ask ask) {
          question(ask.question(), questions);
        }
      }
    }
  }

  /** The question to begin with. */
  public Question firstQuestion() {
    return question(first, questions);
  }

  /** The question that a choice leads to; empty at an element or a stop. */
  public Optional<Question> after(Choice choice) {
    return choice.next() instanceof Ask ask
        ? Optional.of(question(ask.question(), questions))
        : Optional.empty();
  }

  private static Question question(String id, List<Question> questions) {
    return questions.stream()
        .filter(q -> q.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("There is no question \"" + id + "\"."));
  }

  /** One question with its choices. */
  public record Question(String id, String text, String hint, List<Choice> choices) {
    public Question {
      choices = List.copyOf(choices);
    }
  }

  /**
   * One choice.
   *
   * @param shows element whose outline illustrates the choice, if any
   */
  public record Choice(String text, Optional<ElementKey> shows, Next next) {}

  /** Where a choice leads. */
  public sealed interface Next permits Ask, Found, Stop {}

  /** On to another question. */
  public record Ask(String question) implements Next {}

  /** It is this element. */
  public record Found(ElementKey element) implements Next {}

  /** No further alone. */
  public record Stop(Reason reason, String sentence) implements Next {}

  /** Why the key stops. */
  public enum Reason {
    ASK,
    MAY_BE_HUMAN
  }
}

package dev.offtake.desk;

import dev.offtake.cause.Interview;
import dev.offtake.cause.ReadingsRead;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.Problem;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Asks for readings one by one: the power, then each needle and light by its name alone. An empty
 * line means not read, a wrong one is asked again, the end of the input ends the questions.
 */
final class Asker {
  private final BleedSystem system;
  private final Interview interview;
  private final BufferedReader in;
  private final PrintWriter err;

  /**
   * Prepares.
   *
   * @param system what was read on
   * @param in answers, a line each
   * @param err where the questions go
   */
  Asker(BleedSystem system, BufferedReader in, PrintWriter err) {
    this.system = system;
    interview = new Interview(system);
    this.in = in;
    this.err = err;
  }

  /** Asks everything; nothing was read where the input ends before a power is said. */
  ReadingsRead ask() throws IOException {
    Optional<String> power = power();
    if (power.isEmpty()) {
      return new ReadingsRead(Optional.empty(), List.of());
    }
    err.println("One reading after the other; Enter where nobody looked.");
    List<String> answers = new ArrayList<>();
    List<String> questions = interview.questions();
    for (int i = 0; i < questions.size(); i++) {
      Optional<String> answer = answer(power.get(), i, questions.get(i));
      if (answer.isEmpty()) {
        break;
      }
      answers.add(answer.get());
    }
    return interview.read(power.get(), answers);
  }

  private Optional<String> power() throws IOException {
    String known = String.join(", ", system.settings().keySet());
    String question = "Power" + (known.isEmpty() ? "" : " (" + known + ")");
    while (true) {
      Optional<String> said = line(question);
      if (said.isEmpty()) {
        return said;
      }
      if (!said.get().isEmpty() && right(interview.read(said.get(), List.of()))) {
        return said;
      }
    }
  }

  /** The answer; empty at the end of the input. */
  private Optional<String> answer(String power, int number, String question) throws IOException {
    while (true) {
      Optional<String> said = line(question);
      if (said.isEmpty()
          || said.get().isEmpty()
          || right(interview.one(power, number, said.get()))) {
        return said;
      }
    }
  }

  private boolean right(ReadingsRead read) {
    for (Problem problem : read.problems()) {
      err.println("  " + problem.wrong() + ". " + problem.mend() + ".");
    }
    return read.problems().isEmpty();
  }

  private Optional<String> line(String question) throws IOException {
    err.print(question + ": ");
    err.flush();
    Optional<String> said = Optional.ofNullable(in.readLine()).map(String::strip);
    if (said.isEmpty()) {
      err.println();
    }
    return said;
  }
}

package dev.offtake.cause.find;

import dev.offtake.system.Assumption;
import java.util.List;
import java.util.Optional;

/**
 * A scene of a check with all that can be read in it, under each suspect.
 *
 * @param scene its number on the stage
 * @param showings for each suspect what each instrument would show; empty where there is no answer
 * @param hangsOn what the file does not say and the numbers hang on
 * @param refused the line or the limit that it would break, in words; empty for none
 */
record Played(
    int scene, List<List<Showing>> showings, Optional<Assumption> hangsOn, String refused) {}

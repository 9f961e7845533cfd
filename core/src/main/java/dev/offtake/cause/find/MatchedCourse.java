package dev.offtake.cause.find;

import dev.offtake.cause.Recording;

/**
 * What is left of a recorded course.
 *
 * @param recording which
 * @param channel of it
 * @param before root of the mean square difference as the file and the profile have it, SI
 * @param after the same of the matched system
 * @param most largest difference that is left, recorded less matched, SI
 * @param at when it is largest, s
 */
public record MatchedCourse(
    Recording recording,
    Recording.Channel channel,
    double before,
    double after,
    double most,
    double at) {}

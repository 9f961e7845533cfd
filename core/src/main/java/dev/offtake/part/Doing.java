package dev.offtake.part;

/**
 * What a part is doing and the reason, in words for the shop.
 *
 * @param regime short and stable name of the state, such as {@code shut}; a change of regime is an
 *     event
 * @param word what is printed beside the name, such as {@code 1/3 open}
 * @param why the inequality that makes it so, one sentence without a full stop
 */
public record Doing(String regime, String word, String why) {}

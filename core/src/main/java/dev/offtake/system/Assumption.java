package dev.offtake.system;

/**
 * Something that was taken for granted because the file does not say it.
 *
 * @param subject full name of what it is about
 * @param key line of the file that would say it
 * @param says the assumption, one sentence with its value
 * @param unknown whether the file itself says that nobody knows, else it just does not tell
 */
public record Assumption(String subject, String key, String says, boolean unknown) {}

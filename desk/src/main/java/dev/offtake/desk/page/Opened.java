package dev.offtake.desk.page;

import dev.offtake.system.BleedSystem;

/**
 * What the page is about.
 *
 * @param system as its file describes it
 * @param file name of the file, without its folders
 * @param shelf readings and profiles that belong to it
 */
public record Opened(BleedSystem system, String file, Shelf shelf) {}

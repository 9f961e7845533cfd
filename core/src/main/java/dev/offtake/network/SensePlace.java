package dev.offtake.network;

/**
 * Where a sense line sits: the leg of a part whose bore turns total into static pressure.
 *
 * @param part number of the part in the network
 * @param leg number of the leg in the part
 * @param bore inner diameter, m
 */
record SensePlace(int part, int leg, double bore) {}

/** Air and the day. */
@NullMarked
package dev.offtake.air;

import org.jspecify.annotations.NullMarked;

/** Flow laws with their derivatives. */
@NullMarked
package dev.offtake.flow;

import org.jspecify.annotations.NullMarked;

/** x */
@NullMarked
package dev.offtake.measure.cases;

import org.jspecify.annotations.NullMarked;

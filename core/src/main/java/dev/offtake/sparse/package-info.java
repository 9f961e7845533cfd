/** Sparse matrices of a fixed pattern, factored again and again. */
@NullMarked
package dev.offtake.sparse;

import org.jspecify.annotations.NullMarked;

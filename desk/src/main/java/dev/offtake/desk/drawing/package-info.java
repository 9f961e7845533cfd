/**
 * The drawing of any system file: what is joined to what, as a person would sketch it.
 *
 * <p>A {@link dev.offtake.desk.drawing.Plan} says what is drawn: a box for each point and each part
 * that air goes through, a wire for each end of a leg, and small marks for what only watches.
 * {@link dev.offtake.desk.drawing.Layout} places the boxes with the Eclipse Layout Kernel (layers
 * upwards, ports, orthogonal routes), the left side at the left and the right side mirrored to it.
 * {@link dev.offtake.desk.drawing.PipeTree} cuts the routes around a point into pieces, each of
 * which carries the air of the legs behind it. {@link dev.offtake.desk.drawing.Drawing} writes all
 * of it as SVG with an index for the page's script, which only changes attributes.
 *
 * <p>Promises: the same system always gives the same picture, whatever its numbers are; no two
 * boxes overlap; sources lie below and users above what they are joined to as far as the system has
 * an upwards; each name is escaped; no style attribute is written, so that a strict content
 * security policy can stay in force.
 *
 * <p>Symbols are drawn after ISO 1219-1:2012 and ISO 14617 (parts 8 and 10), simplified and in the
 * drawing's own weight.
 */
@NullMarked
package dev.offtake.desk.drawing;

import org.jspecify.annotations.NullMarked;

package dev.offtake.measure.cases;

/**
 * A case for {@code find}: readings of a plant whose truth is known.
 *
 * @param number what it was drawn from; the same number gives the same case
 * @param truth what is wrong
 * @param readings the text of a readings file
 * @param shift how far the truth moves the readings, were they without noise, out of healthy
 *     scatter: sigmas (Mahalanobis); 0 when healthy
 * @param sheet the same readings, by occasion and item
 * @param aircraft on which more can be read
 */
public record Case(
    long number, Truth truth, String readings, double shift, Sheet sheet, Aircraft aircraft) {
  /** The bin of the shift. */
  public Bin bin() {
    return Bin.of(shift);
  }
}

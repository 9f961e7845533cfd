package dev.offtake.part;

import java.util.List;

/** The law of a valve at work: a kind tells how far it would open, and what moves it. */
abstract class ValveElement extends Element {
  /** The stream through the valve. */
  final ValveStream stream;

  private final List<Branch> branches;

  /** Makes the law around a stream. */
  ValveElement(ValveStream stream) {
    this.stream = stream;
    branches = List.of(stream.branch);
  }

  /** Opening that the valve would have if nothing held it, 0..1. */
  abstract double free(Evaluation e);

  /** Tells the stream, by {@link ValveStream#movedBy}, how the free opening answers. */
  void slopes(Evaluation e) {}

  @Override
  public final List<Branch> branches() {
    return branches;
  }

  @Override
  public List<Lag> lags() {
    return stream.lags();
  }

  @Override
  public final void follow(Evaluation e) {
    stream.position(e, free(e));
  }

  @Override
  public final void evaluate(Evaluation e) {
    stream.pass(e, free(e));
    slopes(e);
  }

  @Override
  public void observe(Evaluation e, double[] out, int at) {
    out[at] = stream.position(e, free(e));
  }
}

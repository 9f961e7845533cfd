package dev.offtake.explain;

import dev.offtake.quantity.QuantityProblem;
import dev.offtake.solve.Settler;
import dev.offtake.solve.Solution;
import dev.offtake.study.Column;
import dev.offtake.study.Ribbon;
import dev.offtake.study.Sweep;
import dev.offtake.system.BleedSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleConsumer;
import org.jspecify.annotations.Nullable;

/**
 * Where the readings of healthy systems may lie along a curve: the ribbon beside its line.
 *
 * @param stops edges of each column, for each stop of the sweep; empty where there is no answer
 */
public record RibbonAnswer(List<Optional<List<Ribbon.Edges>>> stops) {
  /** Keeps its stops. */
  public RibbonAnswer {
    stops = List.copyOf(stops);
  }

  /**
   * Follows the healthy system along the way up of a curve.
   *
   * @param question all that stands still, nothing broken
   * @param request what is moved and shown
   * @param progress is told the share that is done, 0..1
   * @throws QuantityProblem when the quantity, its range or a column is not known
   */
  public static RibbonAnswer of(
      Question question, CurveAnswer.Request request, DoubleConsumer progress)
      throws QuantityProblem {
    BleedSystem system = question.system();
    Sweep sweep = Over.read(question, request.over(), request.points());
    List<Column> columns = Shown.read(system, request.show());
    Settler settler = new Settler(question.network());
    List<Optional<List<Ribbon.Edges>>> stops = new ArrayList<>();
    @Nullable Solution last = null;
    for (double stop : sweep.stops()) {
      Solution here =
          last == null
              ? settler.solve(sweep.knob().at(stop))
              : settler.goOn(last, sweep.knob().at(stop));
      stops.add(here.solved() ? Ribbon.at(here, columns) : Optional.empty());
      last = here.solved() ? here : last;
      progress.accept((double) stops.size() / sweep.stops().size());
    }
    return new RibbonAnswer(stops);
  }

  /** The edges at a stop; empty where there is no answer. */
  public Optional<Ribbon.Edges> at(int stop, int column) {
    return stops.get(stop).map(edges -> edges.get(column));
  }
}

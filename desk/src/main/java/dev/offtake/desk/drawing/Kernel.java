package dev.offtake.desk.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.elk.alg.layered.LayeredLayoutProvider;
import org.eclipse.elk.alg.layered.options.FixedAlignment;
import org.eclipse.elk.alg.layered.options.LayerConstraint;
import org.eclipse.elk.alg.layered.options.LayeredMetaDataProvider;
import org.eclipse.elk.alg.layered.options.LayeredOptions;
import org.eclipse.elk.alg.layered.options.NodePlacementStrategy;
import org.eclipse.elk.alg.layered.options.OrderingStrategy;
import org.eclipse.elk.core.data.LayoutMetaDataService;
import org.eclipse.elk.core.math.ElkPadding;
import org.eclipse.elk.core.options.Direction;
import org.eclipse.elk.core.options.EdgeRouting;
import org.eclipse.elk.core.options.PortConstraints;
import org.eclipse.elk.core.options.PortSide;
import org.eclipse.elk.core.util.BasicProgressMonitor;
import org.eclipse.elk.graph.ElkBendPoint;
import org.eclipse.elk.graph.ElkEdge;
import org.eclipse.elk.graph.ElkEdgeSection;
import org.eclipse.elk.graph.ElkNode;
import org.eclipse.elk.graph.ElkPort;
import org.eclipse.elk.graph.util.ElkGraphUtil;
import org.jspecify.annotations.Nullable;

/** One run of the layout kernel over some of a plan's boxes. */
final class Kernel {
  private static final double MARGIN = 24;

  static {
    // Makes the options of the kernel known, the types of their values among them.
    LayoutMetaDataService.getInstance()
        .registerLayoutMetaDataProviders(new LayeredMetaDataProvider());
  }

  private final Plan plan;
  private final ElkNode root = ElkGraphUtil.createGraph();
  private final Map<Integer, ElkNode> nodes = new HashMap<>();
  private final Map<ElkNode, Map<Wire.Port, ElkPort>> ports = new HashMap<>();
  private final Map<Integer, ElkEdge> edges = new HashMap<>();

  /**
   * Lays out.
   *
   * @param plan all there is
   * @param order numbers of the boxes to place, from left to right when the order is kept
   * @param kept whether boxes of one layer must stand in that order
   */
  Kernel(Plan plan, List<Integer> order, boolean kept) {
    this.plan = plan;
    options(kept);
    order.forEach(this::node);
    for (int i = 0; i < plan.wires().size(); i++) {
      Wire wire = plan.wires().get(i);
      if (nodes.containsKey(wire.point()) && nodes.containsKey(wire.part())) {
        edges.put(i, edge(wire));
      }
    }
    new LayeredLayoutProvider().layout(root, new BasicProgressMonitor());
  }

  private void options(boolean kept) {
    root.setProperty(LayeredOptions.DIRECTION, Direction.UP);
    root.setProperty(LayeredOptions.EDGE_ROUTING, EdgeRouting.ORTHOGONAL);
    root.setProperty(LayeredOptions.RANDOM_SEED, 1);
    root.setProperty(LayeredOptions.THOROUGHNESS, kept ? 1 : 10);
    root.setProperty(LayeredOptions.SEPARATE_CONNECTED_COMPONENTS, false);
    root.setProperty(LayeredOptions.PADDING, new ElkPadding(MARGIN));
    root.setProperty(LayeredOptions.SPACING_NODE_NODE, 10.0);
    root.setProperty(LayeredOptions.SPACING_EDGE_NODE, 10.0);
    root.setProperty(LayeredOptions.SPACING_EDGE_EDGE, 16.0);
    root.setProperty(LayeredOptions.SPACING_NODE_NODE_BETWEEN_LAYERS, 12.0);
    root.setProperty(LayeredOptions.SPACING_EDGE_NODE_BETWEEN_LAYERS, 9.0);
    root.setProperty(LayeredOptions.SPACING_EDGE_EDGE_BETWEEN_LAYERS, 14.0);
    root.setProperty(LayeredOptions.NODE_PLACEMENT_STRATEGY, NodePlacementStrategy.BRANDES_KOEPF);
    root.setProperty(LayeredOptions.NODE_PLACEMENT_BK_FIXED_ALIGNMENT, FixedAlignment.BALANCED);
    if (kept) {
      root.setProperty(LayeredOptions.CONSIDER_MODEL_ORDER_STRATEGY, OrderingStrategy.PREFER_NODES);
      root.setProperty(LayeredOptions.CROSSING_MINIMIZATION_FORCE_NODE_MODEL_ORDER, true);
    }
  }

  private void node(int number) {
    Box box = plan.boxes().get(number);
    ElkNode node = ElkGraphUtil.createNode(root);
    node.setDimensions(box.width(), box.height());
    node.setProperty(LayeredOptions.PORT_CONSTRAINTS, PortConstraints.FIXED_POS);
    boolean source =
        !box.point() && plan.wires().stream().noneMatch(w -> w.part() == number && w.upwards());
    if (source) {
      node.setProperty(LayeredOptions.LAYERING_LAYER_CONSTRAINT, LayerConstraint.FIRST);
    }
    nodes.put(number, node);
    ports.put(node, new HashMap<>());
  }

  private ElkEdge edge(Wire wire) {
    Wire.Port atPoint = wire.upwards() ? Wire.Port.ABOVE : Wire.Port.BELOW;
    ElkPort point = port(wire.point(), atPoint);
    ElkPort part = port(wire.part(), wire.port());
    return wire.upwards()
        ? ElkGraphUtil.createSimpleEdge(point, part)
        : ElkGraphUtil.createSimpleEdge(part, point);
  }

  private ElkPort port(int number, Wire.Port where) {
    ElkNode node = nodes.get(number);
    Map<Wire.Port, ElkPort> own = ports.get(node);
    if (node == null || own == null) {
      throw new IllegalStateException("a wire meets a box that is not placed");
    }
    Box box = plan.boxes().get(number);
    return own.computeIfAbsent(
        where,
        any -> {
          ElkPort port = ElkGraphUtil.createPort(node);
          port.setLocation(box.portX(where), box.portY(where));
          port.setProperty(LayeredOptions.PORT_SIDE, side(where));
          return port;
        });
  }

  private static PortSide side(Wire.Port where) {
    return switch (where) {
      case ABOVE, SIDE_OUT -> PortSide.NORTH;
      case BELOW, SIDE_IN, LEFT, RIGHT -> PortSide.SOUTH;
    };
  }

  /** Left edge of a box that was placed, px. */
  double x(int box) {
    return node(nodes, box).getX();
  }

  private static ElkNode node(Map<Integer, ElkNode> nodes, int box) {
    ElkNode node = nodes.get(box);
    if (node == null) {
      throw new IllegalStateException("box " + box + " was not placed");
    }
    return node;
  }

  /** Width of what was placed, px. */
  double width() {
    return root.getWidth();
  }

  /** Everything, when all boxes were given. */
  Placed placed() {
    int n = plan.boxes().size();
    double[] x = new double[n];
    double[] y = new double[n];
    for (int i = 0; i < n; i++) {
      x[i] = node(nodes, i).getX();
      y[i] = node(nodes, i).getY();
    }
    List<Placed.Route> routes = new ArrayList<>();
    for (int i = 0; i < plan.wires().size(); i++) {
      routes.add(route(plan.wires().get(i), edges.get(i)));
    }
    return new Placed(plan, x, y, routes, root.getWidth(), root.getHeight());
  }

  private static Placed.Route route(Wire wire, @Nullable ElkEdge edge) {
    if (edge == null) {
      throw new IllegalStateException("a wire was not routed");
    }
    ElkEdgeSection section = edge.getSections().get(0);
    List<double[]> corners = new ArrayList<>();
    corners.add(new double[] {section.getStartX(), section.getStartY()});
    for (ElkBendPoint bend : section.getBendPoints()) {
      corners.add(new double[] {bend.getX(), bend.getY()});
    }
    corners.add(new double[] {section.getEndX(), section.getEndY()});
    if (!wire.upwards()) {
      Collections.reverse(corners);
    }
    return new Placed.Route(
        corners.stream().mapToDouble(c -> snap(c[0])).toArray(),
        corners.stream().mapToDouble(c -> c[1]).toArray());
  }

  /** To a tenth of a pixel, so that pipes that stand at one place do so to the last digit, px. */
  private static double snap(double x) {
    // The kernel works in halves and quarters: none of them is on the edge between two tenths.
    return Num.round(x + 0.0137);
  }
}

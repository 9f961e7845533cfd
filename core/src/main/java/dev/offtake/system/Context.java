package dev.offtake.system;

import dev.offtake.air.Day;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What a part is read against, and where what is noted about it goes. */
final class Context {
  final Problems problems;
  final PointBook points;
  final Logic logic;
  final Set<String> parts;
  final Map<String, List<String>> switches;
  final Map<String, Day> days;
  final Papers papers;
  final Problems doubts = new Problems();
  final List<Statement> statements = new ArrayList<>();
  final List<Assumption> assumptions = new ArrayList<>();
  final List<Conflict> conflicts = new ArrayList<>();

  Context(
      Problems problems,
      PointBook points,
      Logic logic,
      Set<String> parts,
      Map<String, List<String>> switches,
      Map<String, Day> days,
      Papers papers) {
    this.problems = problems;
    this.points = points;
    this.logic = logic;
    this.parts = parts;
    this.switches = switches;
    this.days = days;
    this.papers = papers;
  }
}

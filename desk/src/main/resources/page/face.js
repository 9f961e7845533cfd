import { s } from './dom.js';

const FROM = -225;
const SWEEP = 270;
const polar = (degrees, radius) => {
  const turn = (degrees * Math.PI) / 180;
  return [100 + radius * Math.cos(turn), 100 + radius * Math.sin(turn)];
};

/**
 * A gauge's round face with its real scale. Its needles stand where someone read them and nowhere
 * else: a face that has not been read has no needle, because people read what they are shown.
 */
export class Face {
  /** @param gauge as `/api/system` tells it */
  constructor(gauge) {
    this.gauge = gauge;
    this.low = gauge.low ?? 0;
    this.high = gauge.high ?? (gauge.temperature ? 600 : 100);
    this.hands = s('g.hands');
    this.svg = s('svg.face', { viewBox: '0 0 200 200', role: 'img', 'aria-label': `${gauge.name}, ${this.low} to ${this.high} ${gauge.unit}` },
      s('circle.rim', { cx: 100, cy: 100, r: 96 }), this.scale(), s('text.unit', { x: 100, y: 150 }, gauge.unit), this.hands,
      s('circle.hub', { cx: 100, cy: 100, r: 5 }));
  }

  angle(value) {
    const share = (value - this.low) / (this.high - this.low);
    return FROM + SWEEP * Math.min(1.02, Math.max(-0.02, share));
  }

  marks() {
    if (this.gauge.marks?.length) {
      return this.gauge.marks;
    }
    const rough = (this.high - this.low) / 8;
    const power = 10 ** Math.floor(Math.log10(rough));
    const step = [1, 2, 5, 10].map((one) => one * power).find((one) => one >= rough);
    const marks = [];
    for (let mark = Math.ceil(this.low / step) * step; mark <= this.high + 1e-9; mark += step) {
      marks.push(Number(mark.toPrecision(6)));
    }
    return marks;
  }

  scale() {
    const marks = this.marks();
    const between = marks.length > 1 ? (marks[1] - marks[0]) / 5 : 1;
    const fine = [];
    for (let mark = marks[0]; mark <= this.high + 1e-9; mark += between) {
      fine.push(this.tick(mark, 86, 92, 'fine'));
    }
    return s('g.scale', {}, fine, marks.map((mark) => {
      const [x, y] = polar(this.angle(mark), 68);
      return [this.tick(mark, 80, 92, 'strong'), s('text', { x, y: y + 5 }, String(mark))];
    }));
  }

  tick(value, from, to, kind) {
    const [x1, y1] = polar(this.angle(value), from);
    const [x2, y2] = polar(this.angle(value), to);
    return s(`line.${kind}`, { x1, y1, x2, y2 });
  }

  /**
   * Puts needles.
   *
   * @param {Array<{mark: string, from: number, to: number}>} needles what was read; `to` differs for one that swings
   */
  show(needles) {
    this.hands.replaceChildren(...needles.filter((one) => Number.isFinite(one.from)).flatMap((one) => this.hand(one)));
  }

  hand({ mark, from, to = from }) {
    const parts = [];
    if (to !== from) {
      const [x1, y1] = polar(this.angle(from), 62);
      const [x2, y2] = polar(this.angle(to), 62);
      parts.push(s('path.swing', { d: `M100 100 L${x1} ${y1} A62 62 0 ${this.angle(to) - this.angle(from) > 180 ? 1 : 0} 1 ${x2} ${y2}Z` }));
    }
    const middle = this.angle((from + to) / 2);
    const [tip, side] = [polar(middle, 74), polar(middle + 180, 16)];
    parts.push(s('line.hand', { x1: side[0], y1: side[1], x2: tip[0], y2: tip[1] }));
    if (mark) {
      const [x, y] = polar(middle, 48);
      parts.push(s('circle.flag', { cx: x, cy: y, r: 8 }), s('text.flag', { x, y: y + 4 }, mark.slice(0, 2)));
    }
    return parts;
  }
}

/** The needle that a reading in words puts on a face; none for words without a number. */
export function needleOf(text) {
  const numbers = (text ?? '').match(/^(?:swinging )?(-?\d+(?:\.\d+)?)(?:\.\.(-?\d+(?:\.\d+)?))?/);
  return numbers ? { from: Number(numbers[1]), to: Number(numbers[2] ?? numbers[1]) } : { from: NaN };
}

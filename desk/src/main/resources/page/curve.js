import { api } from './api.js';
import { needleOf } from './face.js';
import { dayOf, powerOf, readingsOf } from './book.js';
import { h, refill } from './dom.js';
import { standing, standsAlike } from './standing.js';

/** Colours of the lines: Okabe and Ito's, told apart by dash and mark as well. */
const LINES = ['--oki-blue', '--oki-vermilion', '--oki-green', '--oki-purple'];
const MOST = 4;

/** Curves over power: healthy ribbon, broken line, limits, changeovers, what was read. */
export class Curves {
  constructor(page) {
    this.page = page;
    this.chosen = page.system.points.filter((point) => /duct$/.test(point.name)).slice(0, 2).map((point) => point.name);
    if (!this.chosen.length) {
      this.chosen = page.system.points.slice(0, 1).map((point) => point.name);
    }
  }

  async open() {
    this.place = h('div.chart', { role: 'img', 'aria-label': 'Curves, being worked out' });
    this.words = h('div.chart-words');
    this.most = h('p.short', { role: 'status', hidden: true }, `${MOST} curves at most: take one off first.`);
    this.picker = h('details.picker', {}, h('summary', {}, 'Choose points'), this.most, this.list());
    refill(this.words, h('p.quiet.working', {}, 'Working out the curves …'));
    this.page.panel.open('curve', 'Curve over power', [this.picker, this.place, this.words], { wide: true, close: () => this.leave() });
    this.sized = new ResizeObserver(() => this.size());
    this.sized.observe(this.place);
    this.ask();
  }

  leave() {
    this.sized?.disconnect();
    this.chart?.destroy();
    this.chart = null;
  }

  list() {
    return h('ul.pick.columns', {}, this.page.system.points.map((point) => h('li', {}, h('label.check', {},
      h('input', { type: 'checkbox', checked: this.chosen.includes(point.name), onchange: (event) => this.choose(point.name, event.target) }),
      ' ' + point.name))));
  }

  choose(name, box) {
    const others = this.chosen.filter((one) => one !== name);
    const many = box.checked && others.length >= MOST;
    this.most.hidden = !many;
    if (many) {
      box.checked = false;
      return;
    }
    this.chosen = box.checked ? [...others, name] : others;
    this.ask();
  }

  async ask() {
    if (!this.page.panel.is('curve')) {
      return;
    }
    this.waiting?.abort();
    const own = (this.waiting = new AbortController());
    this.place.classList.add('old');
    if (!this.chosen.length) {
      refill(this.words, h('p.quiet', {}, 'Choose a point.'));
      return;
    }
    try {
      const { power, core, lent, ...rest } = this.page.asking.question;
      const [told, { default: Plot }] = await Promise.all([
        api.curve({ ...rest, units: this.page.units }, this.chosen, own.signal), import('/uplot/uPlot.esm.js')]);
      if (own === this.waiting && this.page.panel.is('curve')) {
        this.place.classList.remove('old');
        this.draw(told, Plot);
      }
    } catch (reason) {
      if (reason.name !== 'AbortError') {
        refill(this.words, h('p.short', {}, reason.message), h('p', {}, reason.mend ?? ''));
      }
    }
  }

  draw(told, Plot) {
    this.chart?.destroy();
    this.told = told;
    const paint = getComputedStyle(document.documentElement);
    const colour = (name) => paint.getPropertyValue(name).trim();
    const columns = [told.x.values];
    const lines = [{ label: `${told.x.name}, ${told.x.unit}` }];
    const bands = [];
    told.series.forEach((one, at) => {
      const stroke = colour(LINES[at % LINES.length]);
      const first = lines.length;
      const add = (label, values, how) => { columns.push(values ?? told.x.values.map(() => null)); lines.push({ label, stroke, ...how }); };
      add(`${one.name}, ${one.unit}`, one.healthy, { width: 2, dash: [[], [8, 3], [2, 3], [10, 3, 2, 3]][at % 4] });
      add('highest', one.high, { width: 0, points: { show: false } });
      add('lowest', one.low, { width: 0, points: { show: false } });
      bands.push({ series: [first + 1, first + 2], fill: stroke + '2E' });
      if (one.broken) {
        add(`${one.name}, broken`, one.broken, { width: 3.5 });
      }
    });
    const ink = colour('--ink');
    const axis = (label) => ({ label, stroke: ink, grid: { stroke: ink + '1F' }, ticks: { stroke: ink + '4D' }, font: '14px "Atkinson Hyperlegible Mono"', labelFont: '15px "Atkinson Hyperlegible Next"' });
    this.chart = new Plot({
      width: this.place.clientWidth || 600, height: this.tall(), bands, series: lines, legend: { show: false },
      scales: { x: { time: false } }, axes: [axis(`${told.x.name}, ${told.x.unit}`), axis([...new Set(told.series.map((one) => one.unit))].join(', '))],
      cursor: { drag: { x: false, y: false } }, hooks: { draw: [(chart) => this.over(chart, ink)] },
    }, columns, this.place);
    this.place.setAttribute('aria-label', `Curves of ${this.chosen.join(', ')} over ${told.x.name}; the changeovers stand below`);
    refill(this.words, this.legend(told), this.events(told));
  }

  tall() {
    return Math.max(240, Math.min(460, innerHeight * 0.45));
  }

  size() {
    this.chart?.setSize({ width: this.place.clientWidth, height: this.tall() });
  }

  /** Limits hatched, changeovers, the power of now, and what was read. */
  over(chart, ink) {
    const { ctx } = chart;
    const { left, top, width, height } = chart.bbox;
    ctx.save();
    ctx.beginPath();
    ctx.rect(left, top, width, height);
    ctx.clip();
    ctx.strokeStyle = ink;
    ctx.fillStyle = ink;
    ctx.font = `${13 * devicePixelRatio}px "Atkinson Hyperlegible Next"`;
    ctx.textAlign = 'left';
    ctx.textBaseline = 'alphabetic';
    const upright = (value, from, wide) => {
      const x = chart.valToPos(value, 'x', true);
      ctx.lineWidth = wide;
      ctx.beginPath();
      ctx.moveTo(x, from);
      ctx.lineTo(x, top + height);
      ctx.stroke();
    };
    // A change is a tick at the foot, so that many of them do not bar the view.
    const foot = top + height - 12 * devicePixelRatio;
    (this.told.events ?? []).forEach((event) => upright(event.x, event.broken ? foot - 8 * devicePixelRatio : foot, event.broken ? 3 : 1.5));
    const scale = Math.abs(this.told.x.values.at(-1)) > 3 ? 100 : 1;
    upright(this.page.asking.core * scale, top, 2 * devicePixelRatio);
    joined(this.told.limits ?? [], this.page.system.sides ?? []).forEach((limit) => this.limit(chart, limit));
    this.readings(chart);
    ctx.restore();
  }

  limit(chart, limit) {
    const { ctx } = chart;
    const { left, width } = chart.bbox;
    const y = chart.valToPos(limit.value, 'y', true);
    ctx.setLineDash([]);
    ctx.lineWidth = 1;
    ctx.beginPath();
    ctx.moveTo(left, y);
    ctx.lineTo(left + width, y);
    for (let x = left; x < left + width; x += 9 * devicePixelRatio) {
      ctx.moveTo(x, y);
      ctx.lineTo(x + 6 * devicePixelRatio, y - 6 * devicePixelRatio);
    }
    ctx.stroke();
    this.write(chart, limit.says, left + 8, y - 9 * devicePixelRatio);
  }

  /** Words over the lines, with a clear edge, and never beyond the right end. */
  write(chart, text, x, y) {
    const { ctx, bbox } = chart;
    const at = Math.min(x, bbox.left + bbox.width - ctx.measureText(text).width - 6);
    const [line, wide] = [ctx.strokeStyle, ctx.lineWidth];
    ctx.lineJoin = 'round';
    ctx.lineWidth = 4 * devicePixelRatio;
    ctx.strokeStyle = getComputedStyle(document.documentElement).getPropertyValue('--raised').trim();
    ctx.strokeText(text, at, y);
    ctx.fillText(text, at, y);
    [ctx.strokeStyle, ctx.lineWidth] = [line, wide];
  }

  readings(chart) {
    const { ctx } = chart;
    ctx.setLineDash([]);
    ctx.lineWidth = 2 * devicePixelRatio;
    for (const occasion of this.page.wrong.book.occasions.filter((one) => this.shownAt(one))) {
      const power = this.page.system.powers.find((one) => one.name === powerOf(occasion));
      for (const [what, text] of power ? readingsOf(occasion) : []) {
        const series = this.told.series.find((one) => what === one.name);
        const { from, to } = needleOf(text);
        if (series && Number.isFinite(from)) {
          const scale = Math.abs(this.told.x.values.at(-1)) > 3 ? 100 : 1;
          const x = chart.valToPos(power.core * scale, 'x', true);
          const y = chart.valToPos((from + to) / 2, 'y', true);
          ctx.beginPath();
          ctx.arc(x, y, 6 * devicePixelRatio, 0, 7);
          ctx.stroke();
          this.write(chart, 'read', x + 10 * devicePixelRatio, y - 10 * devicePixelRatio);
        }
      }
    }
  }

  /** Whether an occasion was read in the line-up, with the switches and on the day that the curves hold for. */
  shownAt(occasion) {
    const { system, asking: { question } } = this.page;
    const named = (name) => system.powers.find((power) => power.name === name);
    const day = (own, power) => own || named(power)?.day || system.standardDay;
    const read = powerOf(occasion);
    return day(dayOf(occasion), read) === day(question.day, question.power)
      && standsAlike(standing(system, read, occasion['line-up'], occasion.set), standing(system, question.power, question.lineup, question.sets));
  }

  legend(told) {
    return h('ul.legend', {}, told.series.map((one, at) => {
      const swatch = h('span.swatch', { 'data-line': at % 4, 'aria-hidden': 'true' });
      return h('li', {}, swatch, ` ${one.name}, ${one.unit}`, one.broken ? ' (thick: broken)' : '');
    }), h('li.quiet', {}, 'ribbon: what the tolerances allow'));
  }

  events(told) {
    const { events = [] } = told;
    const some = (broken) => events.filter((event) => event.broken === broken);
    const [sound, broken] = [some(false), some(true)];
    const list = (title, which) => (which.length
      ? [h('h3', {}, title), h('ul.changeovers', {}, which.map((event) => h('li', {}, h('b', {}, this.where(told, event)), ' ', event.says)))] : null);
    return [events.length ? h('p.quiet', {}, 'In brackets: where the tolerances may put it.') : null, list(broken.length ? 'Changeovers with nothing broken' : 'Changeovers', sound), list('Changeovers with what is broken', broken)];
  }

  /** At which power something changes over, the range that the tolerances allow, and the way where it counts. */
  where(told, event) {
    const words = (value) => value.toFixed(1);
    const [low, high] = [words(event.low ?? event.x), words(event.high ?? event.x)];
    const range = low === high ? '' : ` (${low} to ${high})`;
    const way = { up: ', coming up', down: ', coming down' }[event.way] ?? '';
    return `${told.x.name} ${words(event.x)} ${told.x.unit}${range}${way}:`;
  }
}

/** Limits of one value told once: their names would be printed over each other. */
export function joined(limits, sides) {
  const by = new Map();
  for (const { value, says } of limits) {
    const key = value.toFixed(3);
    by.set(key, { value, says: [...new Set([...(by.get(key)?.says ?? []), says])] });
  }
  return [...by.values()].map(({ value, says }) => ({ value, says: together(says, sides) }));
}

/** "left starter needs 30 psig" and "right starter needs 30 psig" as one. */
function together(says, sides) {
  const side = (one) => sides.find((name) => one.startsWith(name + ' '));
  const bare = new Set(says.map((one) => (side(one) ? one.slice(side(one).length + 1) : one)));
  return says.length > 1 && bare.size === 1 && says.every(side) ? `each side: ${[...bare][0]}` : says.join(', ');
}

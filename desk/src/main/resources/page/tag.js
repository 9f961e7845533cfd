import { api } from './api.js';
import { button, h, refill } from './dom.js';

/** A part's or a point's tag: what it does and why, its numbers, how it can break, what follows. */
export class Tag {
  constructor(page) {
    this.page = page;
    this.system = page.system;
    this.asking = page.asking;
  }

  /** Opens the tag of a part or a point. */
  open(name, quiet = false) {
    const part = this.system.parts.findIndex((one) => one.name === name);
    const point = this.system.points.findIndex((one) => one.name === name);
    if (part < 0 && point < 0) {
      return;
    }
    this.name = name;
    this.part = part;
    this.point = part < 0 ? point : -1;
    this.now = h('div.now', { 'aria-live': 'polite' });
    this.ways = h('div.ways-to-break');
    this.follows = h('div.follows');
    this.broken = h('div.broken-part');
    this.slider = undefined;
    const inside = part < 0
      ? [this.now, this.readOf(name)]
      : [this.kind(), this.now, this.broken, this.follows, this.ways, this.numbers(), this.readOf(name)];
    this.page.drawing.point([name]);
    this.page.panel.open('tag', name, inside, { quiet, close: () => this.page.drawing.point([]) });
    this.show(this.page.state, this.page.asking.question);
  }

  kind() {
    const part = this.system.parts[this.part];
    const ways = (part.legs ?? []).map((leg) => `${leg.from} ${leg.oneWay === false ? '↔' : '→'} ${leg.to}`);
    return h('p.kind', {}, [part.kind, ...ways].join(', '));
  }

  /** Puts the state of now into an open tag. */
  show(state, question) {
    if (!this.page.panel.is('tag') || !state) {
      return;
    }
    if (this.part < 0) {
      this.showPoint(state.points?.[this.point]);
      return;
    }
    const does = state.parts?.[this.part];
    if (does) {
      refill(this.now,
        h('p.does', {}, does.word, was(does.was)),
        h('p.why', {}, does.why),
        does.says ? h('p', {}, does.says) : null,
        does.short ? h('p.short', {}, 'Goes short: ' + does.short) : null,
        does.limit ? h('p.short', {}, 'Beyond a limit: ' + does.limit) : null);
    }
    this.showWays(question);
    this.showFollows(question);
  }

  showPoint(point) {
    if (point) {
      refill(this.now,
        h('p.does', {}, `${point.says}, ${point.degrees}`, was(point.was)),
        h('p.why', {}, point.fed ? `Air comes ${point.from}.` : 'Still: no air passes.'));
    }
  }

  numbers() {
    const part = this.system.parts[this.part];
    if (!part.numbers?.length) {
      return null;
    }
    const rows = part.numbers.map((number) => h('tr', {},
      h('th', { scope: 'row' }, number.key),
      h('td', {}, [number.says, number.tolerance].filter(Boolean).join(' '),
        (number.conflict ?? []).map((other) => h('div.conflict', {}, 'also: ' + other))),
      h('td.source', {}, number.source || 'assumed')));
    return h('details', { open: true }, h('summary', {}, 'Numbers and where they come from'),
      h('table.numbers', {}, h('thead', {}, h('tr', {}, ['what', 'value', 'source'].map((head) => h('th', { scope: 'col' }, head)))),
        h('tbody', {}, rows)));
  }

  showWays() {
    const part = this.system.parts[this.part];
    const broken = this.asking.brokenOf(part.name);
    const key = `${part.name}|${broken}`;
    if (this.ways.dataset.key === key) {
      return;
    }
    const shown = this.ways.dataset.key;
    this.ways.dataset.key = key;
    if (broken && shown?.startsWith(`${part.name}|`)) {
      this.page.panel.body.scrollTop = 0;
    }
    const locks = part.locks ?? [];
    this.showBroken(part, broken);
    refill(this.ways,
      part.modes?.length ? h('h3', {}, broken ? 'Break it in another way' : 'How it can break') : null,
      h('ul.modes', {}, (part.modes ?? []).map((mode) => this.mode(part, mode, broken))),
      locks.length && !this.system.pocket ? this.lock(part, locks) : null);
  }

  mode(part, mode, broken) {
    const on = this.modeOf(part, broken) === mode;
    return h('li', {}, button([h('b', {}, mode.name), mode.says ? h('span', {}, mode.says) : null],
      () => this.asking.break(part.name, usual(mode)), { 'aria-pressed': on }, '.mode'));
  }

  modeOf(part, broken) {
    return (part.modes ?? []).find(
      (mode) => mode.words === broken || (mode.extent?.steps ?? []).some((step) => step.words === broken));
  }

  /**
   * What is broken of the part, how far, and its mending. The same failure to another extent only
   * moves what stands there, so that a thumb keeps hold of the slider.
   */
  showBroken(part, broken) {
    const mode = this.modeOf(part, broken);
    if (!broken || !this.slider || this.slider.mode !== mode) {
      this.slider = broken ? this.made(part, mode) : undefined;
      refill(this.broken, this.slider?.host);
    }
    this.slider?.show(broken);
  }

  made(part, mode) {
    const steps = (!this.system.pocket && mode?.extent?.steps) || [];
    const what = h('span');
    const says = h('span.extent-says');
    let at = 0;
    const to = (which) => this.asking.break(part.name, steps[Math.min(steps.length - 1, Math.max(0, which))].words);
    const less = button('−', () => to(at - 1), { 'aria-label': 'Less' }, '.round');
    const more = button('+', () => to(at + 1), { 'aria-label': 'More' }, '.round');
    const range = h('input', { type: 'range', min: 0, max: steps.length - 1, 'aria-label': 'How far', oninput: () => to(Number(range.value)) });
    const host = h('div.broken-now', {}, h('p', {}, h('b', {}, 'Broken: '), what),
      steps.length > 1 ? h('div.extent', {}, less, range, more, says) : null,
      button('Mend it', () => this.asking.mend(part.name), {}, '.firm'));
    const show = (broken) => {
      what.textContent = broken.slice(part.name.length + 1);
      const words = mode && broken === mode.words ? usual(mode) : broken;
      at = Math.max(0, steps.findIndex((step) => step.words === words));
      if (steps.length > 1) {
        range.value = at;
        range.setAttribute('aria-valuetext', steps[at].says);
        says.textContent = steps[at].says;
        less.disabled = at === 0;
        more.disabled = at === steps.length - 1;
      }
    };
    return { mode, host, show };
  }

  lock(part, locks) {
    const held = this.asking.question.sets[part.name];
    return h('details', {}, h('summary', {}, 'Lock it by hand'),
      h('div.choices', {}, locks.map((lock) => button(lock, () => this.asking.set(part.name, lock), { 'aria-pressed': held === lock }))),
      held ? button('Unlock', () => {
        const { [part.name]: gone, ...sets } = this.asking.question.sets;
        this.asking.change({ sets });
      }) : null);
  }

  /** What follows from all that is broken; asked once for each question, the old answer greyed meanwhile. */
  async showFollows(question) {
    const name = this.name;
    if (!question.broken.length) {
      refill(this.follows);
      this.followed = '';
      return;
    }
    const key = JSON.stringify(question);
    if (key === this.followed) {
      return;
    }
    this.followed = key;
    this.follows.classList.add('old');
    await new Promise((done) => setTimeout(done, 180));
    if (key !== this.followed) {
      return;
    }
    this.waiting?.abort();
    this.waiting = new AbortController();
    try {
      const told = await api.broken({ ...question, units: this.page.units }, this.waiting.signal);
      if (key === this.followed && name === this.name) {
        this.follows.classList.remove('old');
        refill(this.follows, follows(told));
      }
    } catch (reason) {
      if (reason.name !== 'AbortError') {
        refill(this.follows, h('p.short', {}, `What follows could not be worked out. ${reason.message}`));
      }
    }
  }

  /** Needles that read here. */
  readOf(name) {
    const reading = this.system.gauges.filter((gauge) => gauge.needles.some((needle) => needle.key.startsWith(name + ' ')));
    return reading.length ? h('p.seen', {}, 'Read by: ', reading.map((gauge) => `${gauge.name}${gauge.seen ? ` (${gauge.seen})` : ''}`).join(', ')) : null;
  }
}

/** A mode in words, to its usual extent where it has one. */
function usual(mode) {
  const steps = mode.extent?.steps ?? [];
  return (steps.find((step) => step.usual) ?? steps[0])?.words ?? mode.words;
}

/** A healthy value behind the one of now. */
export function was(text) {
  return text ? h('span.was', {}, ` (was ${text})`) : null;
}

/** What follows, along the air, and who would notice. */
export function follows(told) {
  return [
    h('h3', {}, 'What follows'),
    h('p.headline', {}, told.headline),
    told.follows?.length ? h('ol', {}, told.follows.map((step) => h('li', {}, step))) : null,
    told.notice?.length ? [h('h3', {}, 'Who would notice'),
      h('ul.notice', {}, told.notice.map((one) => h('li', {}, h('b', {}, one.power), ' ', h('span.verdict', {}, one.verdict), ' ', one.says)))] : null,
    told.look?.length ? [h('h3', {}, 'Look also'), h('ul', {}, told.look.map((one) => h('li', {}, one.says)))] : null,
  ];
}

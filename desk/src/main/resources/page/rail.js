import { STEPS } from './ahead.js';
import { button, h, refill, say } from './dom.js';

/** How far the small and the large steps of the rail go, shares of core speed. */
const STEP = 0.0025;
const LEAP = 0.02;

const percent = (share) => `${(100 * share).toFixed(1).replace(/\.0$/, '')} %`;

/** The power rail: named stops, notches where something changes over, a grip, plus and minus. */
export class Rail {
  /**
   * @param {Element} host
   * @param {import('./asking.js').Asking} asking
   * @param {function(number)} nearing told the core speed that a pointer is over, before it takes hold
   */
  constructor(host, asking, nearing) {
    this.asking = asking;
    this.nearing = nearing;
    this.host = host;
    this.system = asking.system;
    this.low = this.system.core.low;
    this.high = this.system.core.high;
    this.notches = h('div.notches', { 'aria-hidden': 'true' });
    this.stops = h('div.stops');
    this.told = h('span.told');
    this.grip = h('div.grip', {
      role: 'slider', tabindex: '0', 'aria-label': 'Power, core speed in percent',
      'aria-valuemin': (100 * this.low).toFixed(0), 'aria-valuemax': (100 * this.high).toFixed(0),
      onkeydown: (event) => this.key(event),
    }, this.told);
    this.track = h('div.track', {}, h('div.line'), this.notches, this.grip);
    this.track.addEventListener('pointerdown', (event) => this.take(event));
    this.track.addEventListener('pointerenter', (event) => this.near(event));
    refill(host,
      button('−', () => this.step(-STEP), { 'aria-label': 'Less power' }, '.round'),
      h('div.middle', {}, this.stops, this.track),
      button('+', () => this.step(STEP), { 'aria-label': 'More power' }, '.round'));
    this.layStops();
    new ResizeObserver(() => this.layStops()).observe(this.track);
    asking.listen(() => {
      this.followed = undefined;
      this.show();
    });
  }

  at(core) {
    return (100 * (core - this.low)) / (this.high - this.low);
  }

  /** Puts the stops over their places, moved apart where they would touch, in as many rows as it takes. */
  layStops() {
    const width = this.track.clientWidth || 600;
    if (width === this.laid) {
      return;
    }
    this.laid = width;
    const narrow = width < 480;
    this.stops.classList.toggle('list', narrow);
    const made = [...this.system.powers]
      .sort((a, b) => a.core - b.core)
      .map((power) => h('button.stop', {
        type: 'button', 'data-power': power.name, disabled: this.locked, title: power.says ?? '',
        onclick: () => this.asking.change({ power: power.name }),
      }, power.name));
    refill(this.stops, made);
    if (!narrow) {
      this.spread(made, width);
    }
    this.show();
  }

  spread(made, width) {
    const ends = [-Infinity, -Infinity];
    for (const stop of made) {
      const power = this.system.powers.find((one) => one.name === stop.dataset.power);
      const centre = (this.at(power.core) / 100) * width;
      const half = stop.offsetWidth / 2;
      const row = centre - half > ends[0] + 6 ? 0 : centre - half > ends[1] + 6 ? 1 : ends[0] <= ends[1] ? 0 : 1;
      const left = Math.max(centre - half, ends[row] + 6, 0);
      ends[row] = left + 2 * half;
      stop.style.left = `${Math.min(left, width - 2 * half)}px`;
      stop.style.setProperty('--cord', `${centre - Math.min(left, width - 2 * half)}px`);
      stop.dataset.row = row;
    }
    this.stops.classList.toggle('two-rows', ends[1] > -Infinity);
  }

  /** Shows the changeovers; `changes` as the server tells them. Only a handover shows its range. */
  notch(changes) {
    const mark = (event, kind) => {
      const made = h(`span.mark.${kind}`, { title: `${percent(event.core)}: ${event.says}` });
      made.style.left = `${this.at(event.core)}%`;
      return made;
    };
    const range = (event) => {
      const from = this.at(event.low ?? event.core);
      const made = h('span.notch', { title: event.says });
      made.style.left = `${from}%`;
      made.style.width = `${this.at(event.high ?? event.core) - from}%`;
      return made;
    };
    const up = changes.up ?? [];
    refill(this.notches,
      up.filter((event) => event.handover).map(range),
      up.map((event) => mark(event, event.handover ? 'handover' : 'change')),
      (changes.down ?? []).filter((event) => event.handover).map((event) => mark(event, 'handover')),
      (changes.limits ?? []).map((event) => mark(event, 'limit')));
  }

  /** Core speed that the grip shows, a share. */
  get core() {
    return this.followed ?? this.asking.core;
  }

  /** Shows another power than the one that is asked, as something that runs by itself has it; none: the asked one. */
  follow(core) {
    this.followed = core;
    this.show();
  }

  /** Holds the power where it is, or lets go of it. */
  lock(locked) {
    if (locked === (this.locked ?? false)) {
      return;
    }
    this.locked = locked;
    this.host.classList.toggle('locked', locked);
    this.grip.setAttribute('aria-disabled', locked);
    this.host.querySelectorAll('button').forEach((one) => { one.disabled = locked; });
  }

  show() {
    const { core } = this;
    const named = this.followed === undefined ? this.asking.power : '';
    // A transform, so that nothing is laid out anew while a hand moves.
    this.grip.style.transform = `translateX(${(this.at(core) / 100) * (this.laid ?? 600)}px)`;
    this.grip.setAttribute('aria-valuenow', (100 * core).toFixed(1));
    this.grip.setAttribute('aria-valuetext', `core ${percent(core)}${named ? ', ' + named : ''}`);
    say(this.told, percent(core));
    for (const stop of this.stops.children) {
      const pressed = String(stop.dataset.power === named);
      if (stop.getAttribute('aria-pressed') !== pressed) {
        stop.setAttribute('aria-pressed', pressed);
      }
    }
  }

  /** Moves by the steps that the grip tells; a named stop is taken when it comes to rest close to it. */
  go(core, moving) {
    const held = this.held(core);
    if (this.system.pocket) {
      this.asking.change({ power: this.nearest(held).name }, moving);
      return;
    }
    const near = this.system.powers.find((power) => Math.abs(power.core - held) < (moving ? 0.0006 : 0.003));
    this.asking.change(near && this.asking.sameAir(near) ? { power: near.name } : { core: held }, moving);
  }

  /** A pocket sheet holds its named powers only: the grip rests at these. */
  nearest(core, among = this.system.powers) {
    return [...among].sort((one, other) => Math.abs(one.core - core) - Math.abs(other.core - core))[0];
  }

  step(by) {
    if (this.system.pocket) {
      const beyond = this.nearest(this.core, this.system.powers.filter((power) => (power.core - this.core) * by > 1e-6));
      if (beyond) {
        this.asking.change({ power: beyond.name });
      }
      return;
    }
    const core = Math.min(this.high, Math.max(this.low, this.core + by));
    this.asking.change({ core: Math.round(core * 10000) / 10000 });
  }

  key(event) {
    const steps = {
      ArrowRight: STEP, ArrowUp: STEP, ArrowLeft: -STEP, ArrowDown: -STEP,
      PageUp: LEAP, PageDown: -LEAP, Home: -9, End: 9,
    };
    if (event.key in steps && !this.locked) {
      event.preventDefault();
      this.step(steps[event.key]);
    }
  }

  near(event) {
    if (!this.locked && event.buttons === 0) {
      this.nearing(this.held(this.under(event)));
    }
  }

  /** The core speed under a pointer. */
  under(event, box = this.track.getBoundingClientRect()) {
    return this.low + ((event.clientX - box.left) / box.width) * (this.high - this.low);
  }

  /** The nearest core speed that a hand can hold. */
  held(core) {
    return Math.min(this.high, Math.max(this.low, Math.round(core * STEPS) / STEPS));
  }

  take(event) {
    if (event.button > 0 || this.locked) {
      return;
    }
    event.preventDefault();
    const box = this.track.getBoundingClientRect();
    this.track.setPointerCapture(event.pointerId);
    this.grip.classList.add('held');
    this.grip.focus({ preventScroll: true });
    this.go(this.under(event, box), true);
    const move = (moved) => this.go(this.under(moved, box), true);
    const leave = (left) => {
      this.track.removeEventListener('pointermove', move);
      this.track.removeEventListener('pointerup', leave);
      this.track.removeEventListener('pointercancel', leave);
      this.grip.classList.remove('held');
      this.go(this.under(left, box), false);
    };
    this.track.addEventListener('pointermove', move);
    this.track.addEventListener('pointerup', leave);
    this.track.addEventListener('pointercancel', leave);
  }
}

// The living drawing: shows states on an SVG that was laid out once. Nothing is ever moved because a
// value changes; a state only changes attributes, and only those that differ from before.

import { Camera } from './drawing-camera.js';
import { Ties } from './drawing-tags.js';
import { Walkway } from './drawing-keys.js';
import { asPng, asSvg } from './drawing-export.js';

const STILL = 1e-4; // kg/s: less is no air to speak of
const DEAD = 1.5e-3; // kg/s: a leg that carries less is drawn dead, its leak stands in words
const WIDTHS = [0.02, 0.1, 0.3, 0.6]; // kg/s: a pipe gets wider beyond each
const RUN = 4200; // ms that dashes run after a change

const TICKS = [1, 2, 3, 4, 5, 6].map(ticks);
const HEAD = 'M9 0L-6 7.5V-7.5Z';
const BACK = 'M-9 0L6 7.5V-7.5Z';

/** Marks across a pipe, one for each step of temperature. */
function ticks(step) {
  let d = '';
  for (let i = 0; i < step; i++) {
    const x = (i - (step - 1) / 2) * 5;
    d += `M${x - 1.1} -9.5h2.2v19h-2.2z`;
  }
  return d;
}

/** Sets an attribute or a text only where it differs from what was set before. */
class Slot {
  constructor(element, name) {
    this.element = element;
    this.name = name;
    this.held = name ? element?.getAttribute(name) : element?.textContent;
  }

  set(value) {
    if (this.element && this.held !== value) {
      this.held = value;
      if (this.name) this.element.setAttribute(this.name, value);
      else if (this.element.firstChild) this.element.firstChild.data = value; // the same node: nothing is attached anew
      else this.element.textContent = value;
    }
  }
}

export class Drawing {
  #press = () => {};
  #running = 0;
  #shown = '';

  /**
   * @param host element to draw into
   * @param picture {svg, index} as /api/drawing gives them
   * @param system as /api/system gives it: names, kinds and roles of points and parts
   */
  constructor(host, { svg, index }, system) {
    this.host = host;
    this.index = index;
    this.system = system;
    const parsed = new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement;
    this.svg = host.ownerDocument.importNode(parsed, true);
    host.replaceChildren(this.svg);
    this.camera = new Camera(this.svg, index);
    this.ties = new Ties(this.svg, index, name => this.#press(name, this.#kind(name)));
    this.#bind();
    this.walkway = new Walkway(this.svg, index, this.camera);
    this.#listen();
    this.fit();
  }

  #bind() {
    const find = id => this.svg.querySelector(`#${id}`);
    this.points = [];
    this.parts = this.system.parts.map(() => []);
    for (const place of this.index.places) {
      const element = find(place.id);
      const slots = this.#slots(element, place.name, place.room);
      if ('point' in place) this.points[place.point] = slots;
      else this.parts[place.part].push(slots);
    }
    for (const mark of this.index.marks) {
      const element = find(mark.id);
      const name = this.system.parts[mark.part].name;
      this.parts[mark.part].push({ ...this.#slots(element, name, 0), needle: mark.needle, plain: mark.label });
    }
    this.pieces = this.index.pieces.map((piece, i) => this.#piece(piece, i));
    this.#fork();
  }

  #slots(element, name, room) {
    const inner = (look, attribute) =>
      new Slot(element.querySelector(`:scope > .${look}, :scope > .symbol > .${look}, :scope > .value > .${look}`), attribute);
    return {
      element, name, room,
      base: element.getAttribute('class'),
      look: new Slot(element, 'class'),
      aria: new Slot(element, 'aria-label'),
      value: inner('now'), label: inner('label'), warmth: inner('warmth'), was: inner('was'), reads: inner('reads'),
      open: inner('open', 'transform'), ball: inner('ball', 'transform'),
    };
  }

  /** Lets each piece know what it touches where it begins. */
  #fork() {
    const first = new Map(); // number of each point's first piece: `before` counts from there
    this.index.pieces.forEach((piece, i) => first.has(piece.point) || first.set(piece.point, i));
    const after = new Map();
    this.index.pieces.forEach((piece, i) => {
      const at = piece.before < 0 ? -1 : first.get(piece.point) + piece.before;
      if (at >= 0) {
        if (!after.has(at)) after.set(at, [this.pieces[at]]);
        after.get(at).push(this.pieces[i]);
        this.pieces[i].touches = after.get(at);
      }
    });
  }

  #piece({ point, legs }, i) {
    const slot = (look, name) =>
      new Slot(this.svg.querySelector(`.${look}[data-piece="${i}"]`), name);
    return {
      point, legs, width: 0, touches: [],
      casing: slot('casing', 'class'), air: slot('air', 'class'), dash: slot('dash', 'class'),
      ticks: slot('ticks', 'd'), arrow: slot('arrow', 'd'),
    };
  }

  #listen() {
    const press = element => {
      const name = element?.dataset.name;
      if (name) this.#press(name, this.#kind(name));
    };
    this.svg.addEventListener('click', event => {
      if (!this.camera.dragged) press(event.target.closest('.place'));
    });
    this.svg.addEventListener('keydown', event => {
      if (event.key === 'Enter' || event.key === ' ') {
        const place = event.target.closest('.place');
        if (place) {
          event.preventDefault();
          press(place);
        }
      }
    });
  }

  #kind(name) {
    return this.system.parts.some(part => part.name === name) ? 'part' : 'point';
  }

  /** Calls back with the name and 'point' or 'part' of what is pressed. */
  onPress(callback) {
    this.#press = callback;
  }

  /**
   * Shows a state as /api/state gives it; the healthy one, where given, is shown as "was". While a
   * hand is moving the air does not run, which would draw everything twice, and what a screen
   * reader says waits for its rest.
   */
  show(state, healthy = null, moving = false) {
    if (!state.points || !state.parts) return;
    this.moving = moving;
    const changed = this.#draw(state, healthy);
    if (moving) this.#stand();
    else if (changed !== this.#shown) {
      this.#shown = changed;
      this.#run();
    }
  }

  /** Draws a state; how the air goes, in letters. */
  #draw(state, healthy) {
    this.last = [state, healthy];
    let ways = '';
    for (const piece of this.pieces) ways += this.#air(piece, state);
    for (const piece of this.pieces) this.#dead(piece);
    this.points.forEach((slots, i) => slots && this.#point(slots, state.points[i], healthy?.points?.[i]));
    const needles = new Map((state.needles ?? []).map(needle => [needle.gauge + '|' + needle.mark, needle]));
    this.parts.forEach((places, i) => {
      for (const slots of places) this.#part(slots, i, state.parts[i], healthy?.parts?.[i], needles);
    });
    return ways;
  }

  #air(piece, state) {
    let flow = 0;
    for (const [part, leg, sign] of piece.legs) flow += sign * (state.parts[part].flow?.[leg] ?? 0);
    const much = Math.abs(flow);
    let width = 0;
    if (much > DEAD) width = 1 + WIDTHS.filter(limit => much > limit).length;
    const step = state.points[piece.point]?.step ?? 1;
    const back = width > 0 && flow < 0;
    const key = `${width}${back ? '-' : '+'}`;
    piece.casing.set(`casing w${width}`);
    piece.width = width;
    if (width) piece.air.set(`air w${width} h${step}`);
    piece.dash.set(`dash w${width}${back ? ' back' : ''}`);
    piece.ticks.set(width ? TICKS[step - 1] : '');
    piece.arrow.set(width ? (back ? BACK : HEAD) : '');
    return key;
  }

  /** A dead leg begins beside the fed pipe that it leaves. */
  #dead(piece) {
    if (piece.width) return;
    const off = piece.touches.some(other => other.width > 0);
    piece.air.set(off ? 'air w0 off' : 'air w0');
  }

  /** A place that someone is asked about: its name stays, what it does does not show. */
  #asked(slots) {
    slots.value.set('?');
    slots.was.set('');
    slots.warmth.set('');
    if (slots.plain) slots.label.set(slots.plain);
    this.#opening(slots, 0);
    slots.look.set(`${slots.base} asked${this.#kept(slots)}`);
    slots.aria.set(`${slots.name}, what is asked`);
  }

  #point(slots, point, healthy) {
    if (!point) return;
    if (slots.hidden) {
      this.#asked(slots);
      return;
    }
    const says = [point.says, point.degrees].filter(Boolean).join(', ');
    const was = point.was ?? (healthy && healthy.says !== point.says ? healthy.says : '');
    slots.value.set(point.says ?? '');
    slots.warmth.set(point.degrees ?? '');
    slots.was.set(was ? ` (was ${was.replace(/ psig$/, '')})` : '');
    slots.look.set(slots.base + (point.fed ? ' fed' : ' still') + (point.limit ? ' limit' : '') + (was ? ' changed' : '') + this.#kept(slots));
    const from = point.from ? `, from ${point.from}` : '';
    if (!this.moving) slots.aria.set(`${slots.name}, ${says}${was ? `, was ${was}` : ''}${point.fed ? from : ', no flow'}`);
  }

  #part(slots, number, part, healthy, needles) {
    if (!part) return;
    if (slots.hidden && !slots.reads.element) {
      this.#asked(slots);
      return;
    }
    const known = this.system.parts[number];
    if (slots.reads.element) {
      this.#gauge(slots, part, needles);
      return;
    }
    const word = this.#word(part, known.role);
    const before = healthy ? this.#word(healthy, known.role) : '';
    const was = before && before !== word ? before : part.was ?? '';
    const short = this.#fits(part.limit && !part.tripped ? part.limit : word, slots.room);
    slots.value.set(short);
    slots.was.set(was && slots.room >= 7 * short.length + 6 * (was.length + 4) ? ` (was ${was})` : '');
    if (slots.plain) slots.label.set(this.#labelled(slots.plain, part));
    this.#opening(slots, part.open);
    slots.look.set(slots.base + this.#looks(part) + (was ? ' changed' : '') + this.#kept(slots));
    const limit = part.limit ? `, ${part.limit}` : '';
    if (!this.moving) slots.aria.set(`${slots.name}, ${part.word}${limit}${was ? `, was ${was}` : ''}${part.broken ? `, broken: ${part.broken}` : ''}`);
    this.ties.broken(slots.name, part.broken);
  }

  #word(part, role) {
    if (part.short && role === 'user') return part.short;
    const idle = part.regime === 'off' || part.regime === 'shut';
    const air = (part.flow ?? []).some(flow => Math.abs(flow) > STILL);
    const flows = role === 'source' || role === 'user' || (role === 'passage' && air);
    return flows && part.says && !idle ? part.says : part.word.replace(/\babout /, '≈');
  }

  /** A mark says what passes it, where air passes it. */
  #labelled(label, part) {
    const air = (part.flow ?? []).some(flow => Math.abs(flow) > STILL);
    return air && part.says ? part.says : label;
  }

  #looks(part) {
    const air = (part.flow ?? []).some(flow => Math.abs(flow) > STILL);
    return (air ? ' fed' : '') + (part.lit ? ' lit' : '') + (part.tripped ? ' tripped' : '') +
      (part.limit ? ' limit' : '') + (part.short ? ' short' : '') + (part.broken ? ' broken' : '');
  }

  #opening(slots, open) {
    if (!slots.open.element) return;
    const share = Math.min(1, Math.max(0, open ?? 0));
    slots.open.set(`scale(${Math.round(share * 50) / 50} 1)`);
    slots.ball.set(`translate(0 ${-Math.round(share * 7)})`);
  }

  #gauge(slots, part, needles) {
    const own = [...needles.values()].filter(needle => needle.gauge === slots.name);
    const needle = own[slots.needle ?? 0];
    const says = needle?.says ?? part.word ?? '';
    slots.reads.set((says.match(/[-−<>]?\d+/) ?? [''])[0]);
    slots.label.set(needle?.pegged ? 'pegged' : slots.plain);
    slots.look.set(slots.base + (needle?.pegged ? ' limit' : '') + this.#kept(slots));
    const mark = needle?.mark ? ` ${needle.mark}` : '';
    if (!this.moving) slots.aria.set(`${slots.name}${mark}, ${says}${needle?.pegged ? ', at the end of its scale' : ''}`);
    this.ties.broken(slots.name, part.broken);
  }

  /** Words that fit into their room; the whole is in the accessible name and in the part's tag. */
  #fits(text, room) {
    const most = Math.floor(room / 6.4);
    return text.length <= most || !room ? text : `${text.slice(0, most - 1).trimEnd()}…`;
  }

  #kept(slots) {
    return slots.pointed ? ' pointed' : '';
  }

  #run() {
    this.#stand();
    this.svg.classList.add('running');
    this.#running = setTimeout(() => this.#stand(), RUN);
  }

  #stand() {
    clearTimeout(this.#running);
    if (this.svg.classList.contains('running')) this.svg.classList.remove('running');
  }

  /** Emphasises places and brings them into view; no names: back to normal. */
  point(names = []) {
    const wanted = new Set(names);
    let first = null;
    for (const slots of [...this.points, ...this.parts.flat()]) {
      if (!slots) continue;
      slots.pointed = wanted.has(slots.name);
      if (slots.pointed && !first) first = slots;
      slots.look.set(slots.look.held.replace(/ pointed$/, '') + this.#kept(slots));
    }
    this.svg.classList.toggle('pointing', first !== null);
    const boxes = this.index.places.filter(place => wanted.has(place.name)).map(place => place.box);
    if (!first) this.camera.keep([]);
    else if (boxes.length) this.camera.keep(boxes);
    else this.camera.keep([this.camera.boxOf(first.element)]);
  }

  /** Hides what places do, and where the air goes, while someone guesses; no names: shows it again. */
  hide(names = []) {
    const wanted = new Set(names);
    const all = [...this.points, ...this.parts.flat()].filter(Boolean);
    const before = all.filter(slots => slots.hidden).length;
    for (const slots of all) slots.hidden = wanted.has(slots.name);
    this.svg.classList.toggle('guessing', names.length > 0);
    this.moving = false;
    if (this.last && (before || names.length)) this.#draw(...this.last);
  }

  /** Shows all of the drawing, however small. */
  whole() {
    this.camera.whole();
  }

  zoom(factor) {
    this.camera.zoom(factor);
  }

  /** Calls back whenever it changes whether all of the drawing is in view. */
  onView(callback) {
    this.camera.onView(callback);
  }

  /** Ties a tag with a text to a place, and takes it off again. */
  tag(name, text) {
    this.ties.tie(name, text);
  }

  untag(name) {
    this.ties.untie(name);
  }

  /** Shows as much of the drawing as can be read. */
  fit() {
    this.camera.fit();
  }

  /** Where a place is on the screen; null when it is not drawn. */
  place(name) {
    const slots = [...this.points, ...this.parts.flat()].find(one => one?.name === name);
    return slots ? slots.element.getBoundingClientRect() : null;
  }

  /** The whole drawing as the text of an SVG file that needs nothing else. */
  exportSvg() {
    return asSvg(this.svg, this.index);
  }

  /** The whole drawing as a PNG: a promise of a Blob. */
  exportPng(scale = 2) {
    return asPng(this.exportSvg(), this.index, scale);
  }
}

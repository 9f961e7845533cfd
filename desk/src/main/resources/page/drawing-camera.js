// Zoom and pan of the drawing: wheel, pinch, drag, double tap, and steps for keys and buttons.

const LEAST = 0.25;
const MOST = 4;
const READABLE = 0.7; // names of 15 px stay above 10 px
const ON_A_DESK = 0.62; // on a wide screen, which is near, 9 px will do to have all of it in view
const WIDE = 1200;

export class Camera {
  constructor(svg, { width, height, places }) {
    this.svg = svg;
    this.view = svg.querySelector('.view');
    this.size = { width, height };
    this.places = places;
    this.scale = 1;
    this.x = 0;
    this.y = 0;
    this.fitted = true;
    this.dragged = false;
    this.kept = [];
    this.fingers = new Map();
    svg.removeAttribute('viewBox');
    this.#listen();
    new ResizeObserver(() => this.#resized()).observe(svg);
    addEventListener('beforeprint', () => this.#print());
    addEventListener('afterprint', () => this.#printed());
  }

  /** With other room: all over where nobody has moved it, and what was pointed at stays in view. */
  #resized() {
    if (this.printing) return;
    if (this.fitted) this.fit();
    this.#reveal();
    this.#seen();
  }

  /** Paper takes the whole drawing, wherever a hand has moved it on the screen. */
  #print() {
    this.printing = true;
    this.svg.setAttribute('viewBox', `0 0 ${this.size.width} ${this.size.height}`);
    this.view.removeAttribute('transform');
  }

  #printed() {
    this.printing = false;
    this.svg.removeAttribute('viewBox');
    this.#apply();
  }

  /** Calls back with whether all of the drawing is in view, now and when that changes. */
  onView(callback) {
    this.told = callback;
    this.sees = undefined;
    this.#seen();
  }

  #seen() {
    const { clientWidth: w, clientHeight: h } = this.svg;
    if (!w || !h) return;
    const { width, height } = this.size;
    const near = 2;
    const sees = this.x >= -near && this.y >= -near && this.x + width * this.scale <= w + near && this.y + height * this.scale <= h + near;
    if (sees !== this.sees) {
      this.sees = sees;
      this.told?.(sees);
    }
  }

  #listen() {
    const { svg } = this;
    svg.addEventListener('wheel', event => {
      event.preventDefault();
      this.zoom(Math.exp(-event.deltaY * (event.ctrlKey ? 0.01 : 0.0016)), this.#at(event));
    }, { passive: false });
    svg.addEventListener('pointerdown', event => this.#down(event));
    svg.addEventListener('pointermove', event => this.#move(event));
    for (const end of ['pointerup', 'pointercancel', 'pointerleave']) {
      svg.addEventListener(end, event => this.fingers.delete(event.pointerId));
    }
    svg.addEventListener('dblclick', event => {
      event.preventDefault();
      if (!event.target.closest('.place, .tie')) this.fit(); // two taps on a part only open it
    });
  }

  #at(event) {
    const box = this.svg.getBoundingClientRect();
    return { x: event.clientX - box.left, y: event.clientY - box.top };
  }

  #down(event) {
    if (event.pointerType === 'mouse' && event.button !== 0) return;
    this.dragged = false;
    this.travel = 0;
    this.fingers.set(event.pointerId, this.#at(event));
  }

  #move(event) {
    const before = this.fingers.get(event.pointerId);
    if (!before) return;
    const now = this.#at(event);
    const others = [...this.fingers].filter(([id]) => id !== event.pointerId).map(([, at]) => at);
    this.travel += Math.hypot(now.x - before.x, now.y - before.y);
    if (this.travel > 6 && !this.dragged) {
      this.dragged = true;
      this.svg.setPointerCapture(event.pointerId);
    }
    if (this.dragged && others.length) this.#pinch(before, now, others[0]);
    else if (this.dragged) this.pan(now.x - before.x, now.y - before.y);
    this.fingers.set(event.pointerId, now);
  }

  #pinch(before, now, other) {
    const far = at => Math.max(20, Math.hypot(at.x - other.x, at.y - other.y));
    this.zoom(far(now) / far(before), { x: (now.x + other.x) / 2, y: (now.y + other.y) / 2 });
    this.pan((now.x - before.x) / 2, (now.y - before.y) / 2);
  }

  /** Makes everything larger by a factor around a place of the screen (the middle without one). */
  zoom(factor, at = this.#middle()) {
    const scale = Math.min(MOST, Math.max(LEAST, this.scale * factor));
    const grown = scale / this.scale;
    this.x = at.x - (at.x - this.x) * grown;
    this.y = at.y - (at.y - this.y) * grown;
    this.scale = scale;
    this.#changed();
  }

  pan(dx, dy) {
    this.x += dx;
    this.y += dy;
    this.#changed();
  }

  #middle() {
    return { x: this.svg.clientWidth / 2, y: this.svg.clientHeight / 2 };
  }

  #changed() {
    this.fitted = false;
    this.#hold();
    this.#apply();
    this.#seen();
  }

  /** Never loses the drawing out of sight. */
  #hold() {
    const keep = 80;
    const { width, height } = this.size;
    this.x = Math.min(this.svg.clientWidth - keep, Math.max(keep - width * this.scale, this.x));
    this.y = Math.min(this.svg.clientHeight - keep, Math.max(keep - height * this.scale, this.y));
  }

  #apply() {
    if (this.printing) return;
    const round = value => Math.round(value * 1000) / 1000;
    this.view.setAttribute('transform', `translate(${round(this.x)} ${round(this.y)}) scale(${round(this.scale)})`);
  }

  /** All of it where it can be read so; else at a readable size, from its lower left. */
  fit() {
    const { clientWidth: w, clientHeight: h } = this.svg;
    if (!w || !h) return;
    const { width, height } = this.size;
    const whole = Math.min(w / width, h / height, 1.4);
    this.scale = Math.max(whole, Math.min(w >= WIDE ? ON_A_DESK : READABLE, w / 420));
    const at = (room, size) => size * this.scale <= room ? (room - size * this.scale) / 2 : 0;
    this.x = at(w, width);
    this.y = height * this.scale <= h ? at(h, height) : h - height * this.scale;
    this.#apply();
    this.fitted = true;
    this.#seen();
  }

  /** All of it, small as that may be. */
  whole() {
    const { clientWidth: w, clientHeight: h } = this.svg;
    const { width, height } = this.size;
    this.scale = Math.min(w / width, h / height, 1.4);
    this.x = (w - width * this.scale) / 2;
    this.y = (h - height * this.scale) / 2;
    this.fitted = false;
    this.#apply();
    this.#seen();
  }

  /** Keeps boxes in view from now on, whatever room there is; none: shows again what there is. */
  keep(boxes) {
    const had = this.kept.length > 0;
    this.kept = boxes;
    if (!boxes.length && had && this.fitted) this.fit();
    this.#reveal();
  }

  /** What is moved so is not moved by a hand: with other room the drawing is laid out anew. */
  #reveal() {
    const fitted = this.fitted;
    if (this.kept.length) this.reveal(this.kept);
    this.fitted = fitted;
  }

  /** Brings boxes [x, y, width, height] of the drawing into view, moving no more than needed. */
  reveal(boxes) {
    const left = Math.min(...boxes.map(b => b[0]));
    const top = Math.min(...boxes.map(b => b[1]));
    const right = Math.max(...boxes.map(b => b[0] + b[2]));
    const bottom = Math.max(...boxes.map(b => b[1] + b[3]));
    const { clientWidth: w, clientHeight: h } = this.svg;
    const edge = 12;
    const shift = (from, to, room) => {
      if (to - from > room - 2 * edge || from < edge) return edge - from;
      return to > room - edge ? room - edge - to : 0;
    };
    const dx = shift(left * this.scale + this.x, right * this.scale + this.x, w);
    const dy = shift(top * this.scale + this.y, bottom * this.scale + this.y, h);
    if (dx || dy) this.pan(dx, dy);
  }

  revealElement(element) {
    this.reveal([this.boxOf(element)]);
  }

  /** Where an element is on the drawing. */
  boxOf(element) {
    const own = element.getBoundingClientRect();
    const at = this.svg.getBoundingClientRect();
    const back = value => value / this.scale;
    return [back(own.left - at.left - this.x), back(own.top - at.top - this.y), back(own.width), back(own.height)];
  }
}

// Keys on the drawing: one stop for Tab, arrows follow the pipes, plus and minus zoom, 0 shows all.

const TOWARDS = { ArrowUp: [0, -1], ArrowDown: [0, 1], ArrowLeft: [-1, 0], ArrowRight: [1, 0] };

export class Walkway {
  constructor(svg, index, camera) {
    this.svg = svg;
    this.camera = camera;
    this.stops = [...svg.querySelectorAll('.place')];
    this.spots = new Map(this.stops.map(stop => [stop, spot(stop)]));
    this.joined = this.#joined(index);
    this.#enter(this.stops[0]);
    svg.addEventListener('focusin', event => {
      const stop = event.target.closest('.place');
      if (stop) {
        this.#enter(stop);
        if (stop.matches(':focus-visible')) camera.revealElement(stop);
      }
    });
    svg.addEventListener('keydown', event => this.#key(event));
  }

  #joined({ places, marks, joins }) {
    const find = id => this.svg.querySelector(`#${id}`);
    const joined = new Map(this.stops.map(stop => [stop, new Set()]));
    const join = (a, b) => {
      if (a && b) {
        joined.get(a).add(b);
        joined.get(b).add(a);
      }
    };
    for (const [point, part] of joins) join(find(places[point].id), find(places[part].id));
    const byName = new Map(places.map(place => [place.name, find(place.id)]));
    for (const mark of marks) join(find(mark.id), byName.get(mark.host));
    return joined;
  }

  /** The stop that Tab comes back to. */
  #enter(stop) {
    this.entry?.setAttribute('tabindex', '-1');
    this.entry = stop;
    stop?.setAttribute('tabindex', '0');
  }

  #key(event) {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const towards = TOWARDS[event.key];
    const stop = event.target.closest('.place');
    if (event.shiftKey && towards) this.camera.pan(-towards[0] * 60, -towards[1] * 60);
    else if (towards && stop) this.#next(stop, towards)?.focus();
    else if (towards) this.entry?.focus();
    else if (event.key === '+' || event.key === '=') this.camera.zoom(1.25);
    else if (event.key === '-') this.camera.zoom(0.8);
    else if (event.key === '0') this.camera.fit();
    else if (event.key === 'Home') this.stops[0]?.focus();
    else if (event.key === 'End') this.stops[this.stops.length - 1]?.focus();
    else return;
    event.preventDefault();
  }

  /** What is joined by a pipe in that direction; without one, the nearest place there. */
  #next(stop, towards) {
    const mark = one => one.classList.contains('mark');
    const wanted = towards[1] && !mark(stop) ? one => !mark(one) : () => true; // marks lie beside
    return this.#best(stop, [...this.joined.get(stop)].filter(wanted), towards, 3) ??
      this.#best(stop, this.stops.filter(wanted), towards, 1.2);
  }

  #best(stop, among, [tx, ty], wide) {
    const here = this.spots.get(stop);
    let best = null;
    let least = Infinity;
    for (const other of among) {
      const there = this.spots.get(other);
      const along = (there.x - here.x) * tx + (there.y - here.y) * ty;
      const aside = Math.abs((there.x - here.x) * ty) + Math.abs((there.y - here.y) * tx);
      if (along > 1 && aside <= wide * along + 1 && along + 2 * aside < least) {
        least = along + 2 * aside;
        best = other;
      }
    }
    return best;
  }
}

function spot(stop) {
  const [x, y] = stop.getAttribute('transform').match(/-?[\d.]+/g).map(Number);
  return { x, y };
}

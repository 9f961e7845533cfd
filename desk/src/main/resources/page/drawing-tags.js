// The tie-on tag: cut corners, a punched hole, a thin cord to the place that it speaks of.

const SVG = 'http://www.w3.org/2000/svg';
const LINE = 17;
const MOST = 24; // characters of a line
const CUT = 9;

export class Ties {
  constructor(svg, index, press) {
    this.layer = svg.querySelector('.tags');
    this.index = index;
    this.press = press;
    this.tied = new Map();
    this.cards = new Map();
    this.faulty = new Map();
  }

  /** Ties the tag of what is broken; an empty text takes it off. */
  broken(name, text) {
    if ((this.faulty.get(name) ?? '') === (text ?? '')) return;
    if (text) this.faulty.set(name, text);
    else this.faulty.delete(name);
    this.#draw(name);
  }

  tie(name, text) {
    this.tied.set(name, text);
    this.#draw(name);
  }

  untie(name) {
    this.tied.delete(name);
    this.#draw(name);
  }

  #draw(name) {
    const id = `tie ${name}`;
    for (const old of [...this.layer.children]) if (old.dataset.tie === id) old.remove();
    this.cards.delete(name);
    const text = this.tied.get(name) ?? this.faulty.get(name);
    const place = this.#place(name);
    if (!text || !place) return;
    const tag = make('g', { class: 'tie', 'aria-hidden': 'true', 'data-tie': id });
    const lines = wrap(text);
    const width = Math.max(...lines.map(line => line.length)) * 7.4 + 34;
    const height = lines.length * LINE + 12;
    const at = this.#spot(place, width, height);
    this.cards.set(name, [at.x, at.y, width, height]);
    tag.append(
      make('path', { class: 'cord', d: cord(place, at, width, height) }),
      make('path', { class: 'shade', d: card(at.x + 3, at.y + 3, width, height, at.flip) }),
      make('path', { class: 'card', d: card(at.x, at.y, width, height, at.flip) }),
      make('circle', { class: 'hole', cx: at.flip ? at.x + width - 11 : at.x + 11, cy: at.y + height / 2, r: 4 }),
      ...lines.map((line, i) => words(line, at.x + (at.flip ? 8 : 22), at.y + 19 + i * LINE)));
    tag.addEventListener('click', () => this.press(name));
    this.layer.append(tag);
  }

  #place(name) {
    const place = this.index.places.find(one => one.name === name);
    if (place) return place;
    const mark = this.index.marks.find(one => this.layer.ownerSVGElement.querySelector(`#${one.id}`)?.dataset.name === name);
    if (!mark) return null;
    const [x, y] = this.layer.ownerSVGElement.querySelector(`#${mark.id}`).getAttribute('transform').match(/-?[\d.]+/g).map(Number);
    return { x, y, words: 'left' };
  }

  /** The nearest free room around a place; where there is none, what covers least. */
  #spot(place, width, height) {
    let best = null;
    for (const far of [26, 44, 66, 92, 124]) {
      for (const [dx, dy] of [[1, 0.7], [-1, 0.7], [1, -0.7], [-1, -0.7], [1, 0], [-1, 0]]) {
        const flip = dx < 0;
        const x = place.x + (flip ? -far - width : far);
        const y = place.y + dy * far - height / 2;
        const cost = this.#covers({ x, y, width, height }) * 1.5 + far * 8;
        if (!best || cost < best.cost) best = { x, y, flip, cost };
      }
    }
    return best;
  }

  /** Area of places, of other tags and beyond the edge that a card would cover. */
  #covers({ x, y, width, height }) {
    const shared = ([left, top, w, h]) =>
      Math.max(0, Math.min(x + width, left + w) - Math.max(x, left)) *
      Math.max(0, Math.min(y + height, top + h) - Math.max(y, top));
    const inside = shared([0, 0, this.index.width, this.index.height]);
    let area = 5 * (width * height - inside);
    for (const place of this.index.places) area += shared(place.box);
    for (const card of this.cards.values()) area += 3 * shared(card);
    return area;
  }
}

function make(name, attributes) {
  const element = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
  return element;
}

function words(text, x, y) {
  const element = make('text', { x, y });
  element.textContent = text;
  return element;
}

function wrap(text) {
  const lines = [''];
  for (const word of String(text).split(/\s+/)) {
    const longer = lines[lines.length - 1] ? `${lines[lines.length - 1]} ${word}` : word;
    if (longer.length > MOST && lines[lines.length - 1]) lines.push(word);
    else lines[lines.length - 1] = longer;
  }
  return lines;
}

/** A card whose corners at the hole are cut. */
function card(x, y, w, h, flip) {
  return flip
    ? `M${x} ${y}H${x + w - CUT}L${x + w} ${y + CUT}V${y + h - CUT}L${x + w - CUT} ${y + h}H${x}Z`
    : `M${x + CUT} ${y}H${x + w}V${y + h}H${x + CUT}L${x} ${y + h - CUT}V${y + CUT}Z`;
}

/** From the place to the hole, hanging a little. */
function cord(place, at, width, height) {
  const x = at.flip ? at.x + width - 11 : at.x + 11;
  const y = at.y + height / 2;
  return `M${place.x} ${place.y}Q${(place.x + x) / 2} ${y + 14} ${x} ${y}`;
}

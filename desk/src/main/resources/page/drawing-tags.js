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
    for (const old of this.layer.children) if (old.dataset.tie === id) old.remove();
    const text = this.tied.get(name) ?? this.faulty.get(name);
    const place = this.#place(name);
    if (!text || !place) return;
    const tag = make('g', { class: 'tie', 'aria-hidden': 'true', 'data-tie': id });
    const lines = wrap(text);
    const width = Math.max(...lines.map(line => line.length)) * 7.4 + 34;
    const height = lines.length * LINE + 12;
    const at = this.#spot(place, width, height);
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

  /** Beside the symbol, on the side away from the words, a little lower; inside the drawing. */
  #spot(place, width, height) {
    const wordsLeft = place.words !== 'right';
    let x = wordsLeft ? place.x + 34 : place.x - 34 - width;
    let flip = !wordsLeft;
    if (x < 4) { x = place.x + 34; flip = false; }
    if (x + width > this.index.width - 4) { x = place.x - 34 - width; flip = true; }
    const y = Math.min(this.index.height - height - 4, place.y + 20);
    return { x, y, flip };
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

import { button, h, refill } from './dom.js';

/** Choosing a part to break: pressed on the drawing, or found in the list. */
export class Breaking {
  constructor(page) {
    this.page = page;
  }

  open() {
    const { system, panel } = this.page;
    const field = h('input', {
      type: 'search', 'aria-label': 'Find a part', placeholder: 'Find a part', autocomplete: 'off', maxlength: 80,
      oninput: () => this.list(field.value),
    });
    this.found = h('div.found');
    this.parts = system.parts.filter((part) => part.modes?.length);
    panel.open('break', 'Break a part', [
      h('p', {}, 'Press a part on the drawing, or choose one here.'),
      h('div.search', {}, field), this.found,
    ]);
    this.list('');
  }

  list(wanted) {
    const words = wanted.toLowerCase().split(/\s+/).filter(Boolean);
    const fits = this.parts.filter((part) => words.every((word) => `${part.name} ${part.kind}`.toLowerCase().includes(word)));
    const sides = [...new Set(fits.map((part) => part.side ?? ''))];
    refill(this.found,
      fits.length ? null : h('p', {}, `No part is called “${wanted}”.`),
      sides.map((side) => h('section', {},
        sides.length > 1 ? h('h3', {}, side || 'between the sides') : null,
        h('ul.pick', {}, fits.filter((part) => (part.side ?? '') === side).map((part) => this.pick(part, side))))));
  }

  pick(part, side) {
    const short = side && part.name.startsWith(side + ' ') ? part.name.slice(side.length + 1) : part.name;
    const broken = this.page.asking.brokenOf(part.name);
    return h('li', {}, button([h('b', {}, short), h('span', {}, broken ? broken.slice(part.name.length + 1) : part.kind)],
      () => this.page.tag.open(part.name), { 'aria-label': part.name }));
  }
}

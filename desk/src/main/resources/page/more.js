import { button, h } from './dom.js';

/** What is wanted seldom: paper, pictures, units, light and dark. */
export class More {
  constructor(page) {
    this.page = page;
  }

  open() {
    const { page } = this;
    page.panel.open('more', 'More', [
      h('h3', {}, 'Take with you'),
      h('div.choices', {},
        h('a.button', { href: '/pocket', download: '' }, 'Pocket sheet'),
        button('Drawing as SVG', () => page.download('drawing.svg', 'image/svg+xml', page.drawing.exportSvg())),
        button('Drawing as PNG', async () => page.download('drawing.png', 'image/png', await page.drawing.exportPng())),
        button('Print', () => print())),
      h('h3', {}, 'Units'),
      h('div.choices', { role: 'group', 'aria-label': 'units' }, [['psig, °F, lb/min', 'shop'], ['bar, °C, kg/s', 'metric']].map(([name, units]) =>
        button(name, () => page.changeUnits(units), { 'aria-pressed': page.units === units }))),
      h('h3', {}, 'Light'),
      h('div.choices', { role: 'group', 'aria-label': 'light' }, ['as the device', 'light', 'dark'].map((name) =>
        button(name, () => { page.changeLight(name); this.open(); }, { 'aria-pressed': page.light === name }))),
      h('h3', {}, 'The system'),
      h('p', {}, page.system.title), h('p', {}, page.system.about),
      (page.system.warnings ?? []).map((line) => h('p.short', {}, line)),
      h('p.quiet', {}, page.system.standsOn),
      (page.system.cautions ?? []).map((line) => h('p.caution', {}, line)),
    ]);
  }
}

import { h } from './dom.js';
import { was } from './tag.js';

/** All numbers of the state as tables: for those who read, print, or cannot see the drawing. */
export class Numbers {
  constructor(page) {
    this.page = page;
  }

  open(quiet = false) {
    this.page.panel.open('numbers', 'Numbers', this.tables(this.page.state), { quiet, wide: false });
  }

  show() {
    if (this.page.panel.is('numbers')) {
      this.open(true);
    }
  }

  tables(state) {
    if (!state?.solved) {
      return [h('p', {}, state?.problem ?? 'There is no answer to show.')];
    }
    const { system } = this.page;
    const parts = system.parts.map((part, at) => ({ part, does: state.parts[at] }));
    const of = (role) => parts.filter(({ part }) => part.role === role);
    return [
      ...(state.headline ?? []).map((line) => h('p', {}, line)),
      table('Points', ['point', 'pressure', 'temperature'],
        system.points.map((point, at) => [point.name, [state.points[at].says, was(state.points[at].was)], state.points[at].degrees])),
      table('Gives', ['tap or supply', 'does'], of('source').map(row)),
      table('Valves', ['valve', 'does', 'because'], of('valve').map(({ part, does }) => [part.name, [does.word, was(does.was)], does.why])),
      table('Users', ['user', 'does', 'room left'], of('user').map(({ part, does }) => [part.name, [does.word, was(does.was)], does.short ?? does.why])),
      state.needles?.length ? table('Gauges', ['gauge', 'reads', 'shows'], state.needles.map((needle) => [`${needle.gauge} ${needle.mark}`, needle.reads, [needle.says, was(needle.was)]])) : null,
      state.lights?.length ? table('Lights', ['light', 'is'], state.lights.map((light) => [light.name, [light.lit ? 'lit' : 'off', was(light.was)]])) : null,
      h('p.balance', {}, state.balance),
      ...(state.memory ?? []).map((line) => h('p', {}, line)),
      state.stability ? h('p', {}, state.stability) : null,
      h('p.caution', {}, state.caution),
    ];
  }
}

function row({ part, does }) {
  return [part.name, [does.word, was(does.was)]];
}

function table(caption, heads, rows) {
  return rows.length ? h('table.numbers', {}, h('caption', {}, caption),
    h('thead', {}, h('tr', {}, heads.map((head) => h('th', { scope: 'col' }, head)))),
    h('tbody', {}, rows.map(([first, ...others]) => h('tr', {}, h('th', { scope: 'row' }, first), others.map((cell) => h('td', {}, cell)))))) : null;
}

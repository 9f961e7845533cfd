import { button, h } from './dom.js';

/** The day, the line-up, the switches; supplies and users among them. */
export class SetupPanel {
  constructor(page) {
    this.page = page;
    page.asking.listen(() => page.panel.is('setup') && this.open(true));
  }

  open(quiet = false) {
    const { system, asking, panel } = this.page;
    const question = asking.question;
    const power = system.powers.find((one) => one.name === question.power);
    const day = question.day || power?.day || 'standard day';
    const lineUp = question.lineup || power?.lineUp || 'usual';
    const focus = quiet ? document.activeElement?.dataset?.choice : undefined;
    panel.open('setup', 'Day and switches', [
      h('h3', {}, 'Day'),
      this.choices('day', this.days(), day, (name) => asking.change({ day: name, lent: undefined })),
      this.otherDay(day),
      system.lineUps?.length > 1 ? [h('h3', {}, 'Line-up'),
        this.choices('line-up', system.lineUps.map((one) => one.name), lineUp,
          (name) => asking.change({ lineup: name, sets: {}, lent: undefined }))] : null,
      system.pocket ? h('p.quiet', {}, 'A pocket sheet holds the line-ups of the file only; other switches are told by the page.') : this.groups(),
      button('All as they sit', () => asking.change({ day: undefined, lineup: undefined, sets: {}, lent: undefined }), { 'data-choice': 'all' }, '.firm'),
    ], { quiet });
    if (focus) {
      panel.body.querySelector(`[data-choice="${CSS.escape(focus)}"]`)?.focus({ preventScroll: true });
    }
  }

  days() {
    return [...new Set(['standard day', ...this.page.system.days.map((one) => one.name)])];
  }

  choices(what, names, now, choose) {
    return h('div.choices', { role: 'group', 'aria-label': what },
      names.map((name) => button(name, () => choose(name), { 'aria-pressed': name === now, 'data-choice': `${what}: ${name}` })));
  }

  otherDay(day) {
    const field = h('input', {
      type: 'text', 'aria-label': 'Another day, such as 2000 ft, 95 degF', placeholder: 'or: 2000 ft, 95 degF', maxlength: 120,
      value: this.days().includes(day) ? '' : day, 'data-choice': 'other day',
    });
    return h('form.inline', {
      onsubmit: (event) => {
        event.preventDefault();
        this.page.asking.change({ day: field.value.trim() || undefined, lent: undefined });
      },
    }, field, h('button', { type: 'submit' }, 'Take it'));
  }

  groups() {
    const { system } = this.page;
    const sides = [...new Set(system.switches.map((one) => one.side ?? ''))];
    return sides.map((side) => [
      h('h3', {}, sides.length > 1 ? `Switches, ${side || 'both sides'}` : 'Switches'),
      h('dl.switches', {}, system.switches.filter((one) => (one.side ?? '') === side).map((one) => this.switch(one, side))),
    ]);
  }

  switch(one, side) {
    const { asking, state } = this.page;
    const now = asking.question.sets[one.name] ?? state?.positions?.[one.name] ?? one.sits;
    const short = side && one.name.startsWith(side + ' ') ? one.name.slice(side.length + 1) : one.name;
    return [h('dt', {}, short), h('dd', {}, this.choices(one.name, one.positions, now, (position) => asking.set(one.name, position)))];
  }
}

import { api } from './api.js';
import { button, h, refill } from './dom.js';

/** From start to take-off and back, one event at a time; an apprentice may guess first. */
export class Walk {
  constructor(page) {
    this.page = page;
    this.at = 0;
    this.guessing = false;
  }

  async open() {
    const { page } = this;
    const { question } = page.asking;
    this.before = question;
    this.body = h('div.walk');
    page.panel.open('walk', 'Walk through', [this.body], { close: () => this.leave() });
    this.body.addEventListener('keydown', (event) => this.key(event));
    refill(this.body, h('p.quiet', {}, 'Running up to take-off and back …'));
    try {
      const { power, core, lent, ...rest } = question;
      this.steps = (await api.walk({ ...rest, units: page.units })).steps;
      this.at = 0;
      this.show();
    } catch (reason) {
      refill(this.body, h('p.short', {}, reason.message), h('p', {}, reason.mend ?? ''));
    }
  }

  leave() {
    this.hide(false, []);
    this.page.drawing.point([]);
  }

  /** While someone guesses, what is asked about is not shown, and the power stays where it is. */
  hide(hidden, names) {
    document.body.dataset.guessing = hidden ? 'true' : 'false';
    this.page.drawing.hide(hidden ? names : []);
    this.page.rail.lock(hidden);
  }

  key(event) {
    if (event.target.matches('input')) {
      return;
    }
    if (event.key === 'ArrowRight' || event.key === 'ArrowLeft') {
      event.preventDefault();
      this.to(this.at + (event.key === 'ArrowRight' ? 1 : -1));
    }
  }

  to(at) {
    if (at >= 0 && at < this.steps.length) {
      this.at = at;
      this.guessed = undefined;
      this.show();
    }
  }

  show() {
    const step = this.steps[this.at];
    const hidden = this.guessing && step.guess && this.guessed === undefined;
    const { asking, drawing } = this.page;
    asking.change(step.power ? { power: step.power } : { core: step.core });
    this.hide(hidden, [...(step.places ?? []), ...(step.guess?.choices ?? [])]);
    drawing.point((step.places ?? []).filter((name) => !hidden || step.guess.ask.includes(name)));
    const next = button('Next', () => this.to(this.at + 1), { disabled: this.at === this.steps.length - 1 }, '.key.next');
    refill(this.body,
      h('p.where', {}, `${this.at + 1} of ${this.steps.length} · ${step.title}`),
      hidden ? this.question(step) : this.told(step),
      h('div.steps', {}, button('Back', () => this.to(this.at - 1), { disabled: this.at === 0 }, '.key'), next),
      h('label.check', {}, h('input', {
        type: 'checkbox', checked: this.guessing,
        onchange: (event) => { this.guessing = event.target.checked; this.guessed = undefined; this.show(); },
      }), ' Guess first'),
      h('div.inline', {}, button('Print the strip', () => this.print(true), {}, '.quiet'), button('Print without answers', () => this.print(false), {}, '.quiet')));
    this.body.querySelector(hidden ? '.choice' : '.next')?.focus({ preventScroll: true });
  }

  question(step) {
    return h('fieldset.guess', {}, h('legend', {}, step.guess.ask),
      step.guess.choices.map((choice, at) => button(choice, () => { this.guessed = at; this.show(); }, {}, '.key.choice')));
  }

  told(step) {
    const guess = step.guess && this.guessed !== undefined
      ? h('p.judged', {}, this.guessed === step.guess.right ? 'Right: ' : `Not so, it is “${step.guess.choices[step.guess.right]}”: `, step.guess.because)
      : null;
    return h('div', { 'aria-live': 'polite' }, guess, h('p.headline', {}, step.happens ?? step.says),
      step.why ? h('p', {}, step.why) : null, step.happens ? h('p', {}, step.says) : null,
      step.broken ? h('p.beside', {}, h('b', {}, 'Broken: '), step.broken.says) : null);
  }

  /** Prints the steps as a strip. */
  print(answers) {
    const strip = h('section.strip', {}, h('h1', {}, `${this.page.system.title}: walk through`),
      this.steps.map((step, at) => h('article', {}, h('h2', {}, `${at + 1}  ${step.title}`),
        !answers && step.guess
          ? [h('p', {}, step.guess.ask), h('ul.boxes', {}, step.guess.choices.map((choice) => h('li', {}, choice)))]
          : [[step.happens, step.why, step.says].filter(Boolean).map((line) => h('p', {}, line)), step.broken ? h('p', {}, 'Broken: ' + step.broken.says) : null])),
      h('p', {}, document.getElementById('caution').textContent));
    this.page.printOnly(strip);
  }
}

import { Ahead } from './ahead.js';
import { api, Latest } from './api.js';
import { Asking } from './asking.js';
import { Breaking } from './breaking.js';
import { Curves } from './curve.js';
import { button, calm, h, refill, say, sentences, unmark } from './dom.js';
import { Drawing } from './drawing.js';
import { More } from './more.js';
import { Numbers } from './numbers.js';
import { Panel } from './panel.js';
import { Play } from './play.js';
import { Rail } from './rail.js';
import { readingsOf } from './book.js';
import { SetupPanel } from './setup.js';
import { Tag } from './tag.js';
import { Walk } from './walk.js';
import { Wrong } from './wrong.js';

const find = (id) => document.getElementById(id);
const UNITS = 'offtake units';
const LIGHT = 'offtake light';

/** Full lines of the large size that the sentence has room for, with what is lost at their ends. */
const LINES = 1.6;

/** More lines than this surely have no room. */
const MOST_LINES = 2.1;

/** Share of the large size that long sentences are set in, and their lines: as in page.css. */
const SMALL = 0.72;
const SMALL_LINES = 2.9;
const NARROW = 760;
const NARROW_LINES = 5;

/** The whole page: what is asked goes down to whoever shows something, answers come back up. */
class Page {
  constructor() {
    this.units = localStorage.getItem(UNITS) ?? 'shop';
    this.changeLight(localStorage.getItem(LIGHT) ?? 'as the device');
    this.state = null;
  }

  async start() {
    try {
      [this.system, this.drawn] = await Promise.all([api.system(this.units), api.drawing(this.units)]);
    } catch (reason) {
      this.trouble(reason);
      setTimeout(() => this.start(), 2000);
      return;
    }
    this.trouble(null);
    this.asking = new Asking(this.system);
    this.drawing = new Drawing(find('drawing'), this.drawn, this.system);
    this.panel = new Panel(find('panel'));
    this.tag = new Tag(this);
    this.numbers = new Numbers(this);
    this.wrong = new Wrong(this);
    this.ways = {
      wrong: this.wrong, break: new Breaking(this), setup: new SetupPanel(this), numbers: this.numbers,
      curve: new Curves(this), walk: new Walk(this), play: new Play(this), more: new More(this),
    };
    this.hideWays();
    this.look();
    this.measureSentence();
    this.drawing.onPress((name) => this.tag.open(name));
    document.querySelectorAll('[data-way]').forEach((way) => way.addEventListener('click', () => this.ways[way.dataset.way].open()));
    this.rail = new Rail(find('power'), this.asking, (core) => this.lead(this.asking.changed({ core })));
    this.ahead = new Ahead((question, cores) => api.states(question, cores), this.system.core,
      () => this.states.again());
    this.states = new Latest((question) => this.answer(question), (question) => this.ahead.known(question),
      (state, question) => this.show(state, question), (reason) => this.fail(reason));
    this.changes = calm(250, () => this.askChanges());
    this.curves = calm(300, () => this.ways.curve.ask());
    this.asking.listen((question, moving) => this.ask(question, moving));
    document.addEventListener('visibilitychange', () => !document.hidden && !this.panel.is('play') && this.ask(this.asking.question));
    document.body.dataset.ready = 'true';
  }

  /** What there is nothing for is not offered: a pocket sheet neither searches nor draws curves. */
  hideWays() {
    const none = this.system.pocket ? ['wrong', 'curve', 'play'] : this.system.profiles?.length ? [] : ['play'];
    document.querySelectorAll('[data-way]').forEach((way) => { way.hidden = none.includes(way.dataset.way); });
  }

  async answer(question) {
    const state = await api.state(question);
    this.ahead.keep(question, state);
    return state;
  }

  ask(question, moving = false) {
    this.moving = moving;
    this.hold(moving);
    const wanted = { ...question, units: this.units };
    if (!this.states.want(wanted)) {
      find('stage').classList.add('waiting');
    }
    const { power, core, ...air } = question;
    const key = JSON.stringify([air, this.air(question)]);
    if (key !== this.asked) {
      this.asked = key;
      this.ahead.stop();
      this.changes();
      this.curves();
    }
    if (moving) {
      this.lead(question);
    } else {
      this.showBroken(question);
    }
  }

  /**
   * While a hand moves, texts keep their room: a text that may grow has the whole page laid out anew
   * at each step, every word of the drawing too.
   */
  hold(moving) {
    if (moving === (this.held ?? false)) {
      return;
    }
    this.held = moving;
    const texts = [find('sentence'), find('asked')];
    const rooms = texts.map((text) => [text.offsetWidth, text.offsetHeight]);
    texts.forEach((text, i) => {
      const [width, height] = rooms[i].map((pixels) => `${pixels}px`);
      Object.assign(text.style, moving ? { width, height, contain: 'strict' } : { width: '', height: '', contain: '' });
    });
  }

  /** A hand comes to the rail, or moves along it: what it may come to is asked for before. */
  lead(question) {
    if (!this.system.pocket) {
      this.ahead.lead({ ...question, units: this.units });
    }
  }

  /** Day and line-up that belong to the named power. */
  air(question) {
    const named = this.system.powers.find((power) => power.name === question.power);
    return [named?.day, named?.lineUp];
  }

  async askChanges() {
    this.waiting?.abort();
    this.waiting = new AbortController();
    const question = this.asking.question;
    const named = this.system.powers.find((power) => power.name === question.power);
    const { power, core, ...air } = question;
    try {
      const asked = { ...air, day: air.day || named?.day || undefined, lineup: air.lineup || named?.lineUp || undefined, units: this.units };
      this.rail.notch(await api.changes(asked, this.waiting.signal));
    } catch (reason) {
      if (reason.name !== 'AbortError') {
        this.rail.notch({});
      }
    }
  }

  show(state, question) {
    this.trouble(state.problem ? { message: state.problem, mend: state.mend ?? '' } : null);
    unmark(find('stage'), 'waiting', 'old');
    unmark(document.body, 'stale', ...(state.solved ? ['unsolved'] : []));
    if (!state.solved) {
      document.body.classList.add('unsolved');
    }
    const [first] = state.headline ?? [];
    this.sentence(first ?? state.problem ?? '');
    say(find('more-sentences'), '');
    say(find('asked'), (state.asked ?? []).join('  |  '));
    if (!state.solved) {
      return;
    }
    this.state = state;
    this.drawing.show(state, null, this.moving);
    this.tag.show(state, question);
    this.numbers.show();
    document.dispatchEvent(new Event('shown'));
  }

  /** An answer that does not come: the old one stays, greyed, and what to do is said. */
  fail(reason) {
    if (reason.name === 'AbortError') {
      return;
    }
    find('stage').classList.remove('waiting');
    find('stage').classList.add('old');
    document.body.classList.add('stale');
    if (!this.state) {
      // What the address asks cannot be answered: nothing is being read any more.
      this.sentence('No answer to what was asked.');
    }
    this.trouble(reason);
    if (reason.lost) {
      this.ahead.forget();
      clearTimeout(this.again);
      this.again = setTimeout(() => this.ask(this.asking.question), 1500);
    }
  }

  trouble(reason) {
    const told = find('trouble');
    told.toggleAttribute('hidden', !reason);
    say(told, reason ? sentences(reason.message, reason.mend) : '');
  }

  showBroken(question) {
    refill(find('broken'), question.broken.map((words) => h('li.tie', {},
      h('span', {}, words),
      button('Mend', () => this.asking.mendWords(words), { 'aria-label': `Mend: ${words}` }, '.quiet'))),
    question.broken.length > 1 ? h('li', {}, button('Mend all', () => this.asking.change({ broken: [] }), {}, '.quiet')) : null);
  }

  /** Ties what was read on an occasion to its place on the drawing. */
  showReadings(occasion) {
    (this.readTags ?? []).forEach((name) => this.drawing.untag(name));
    this.readTags = [];
    for (const [what, text] of occasion ? readingsOf(occasion) : []) {
      const name = what.replace(/ (pressure|temperature)$/, '');
      const known = this.system.points.some((point) => point.name === name) || this.system.lights.some((light) => light.name === name);
      if (known && text !== 'not read') {
        this.drawing.tag(name, 'read ' + text);
        this.readTags.push(name);
      }
    }
  }

  /** The one large sentence; where it is long it is set smaller, so that the drawing keeps its place. */
  sentence(text) {
    const host = find('sentence');
    const told = this.fitting(text);
    if (host.textContent === told) {
      return;
    }
    host.textContent = told;
    this.fitSentence(host);
  }

  /** As many whole sentences as have room at the smaller size; the numbers and the tags tell the rest. */
  fitting(text) {
    const lines = innerWidth <= NARROW ? NARROW_LINES : SMALL_LINES;
    const room = (lines * (this.lineOf ?? 60)) / SMALL;
    const sentences = text.split(/(?<=[.!?]) /);
    while (sentences.length > 1 && sentences.join(' ').length > room) {
      sentences.pop();
    }
    return sentences.join(' ');
  }

  /** Only where the letters counted leave it open is it measured, which lays the page out. */
  fitSentence(host) {
    const lines = host.textContent.length / (this.lineOf ?? 60);
    host.toggleAttribute('data-long', lines > MOST_LINES);
    if (lines > LINES && lines <= MOST_LINES && host.scrollHeight > host.clientHeight + 1) {
      host.setAttribute('data-long', '');
    }
  }

  /** Measures how many letters a line of the large sentence takes, whenever its room changes. */
  measureSentence() {
    const host = find('sentence');
    new ResizeObserver(() => {
      // The same size as in page.css, whichever of its two is set now; a letter is not half as wide as it is high.
      const great = Math.min(30, Math.max(21, 0.023 * innerWidth));
      this.lineOf = host.clientWidth / (0.47 * great);
      this.fitSentence(host);
    }).observe(host);
  }

  /** Ways to see all of the drawing, and larger: there only while not all of it is in view. */
  look() {
    const look = find('look');
    refill(look,
      button('All', () => this.drawing.whole(), { 'aria-label': 'All of the drawing' }, '.small'),
      button('+', () => this.drawing.zoom(1.25), { 'aria-label': 'Larger drawing' }, '.small'),
      button('−', () => this.drawing.zoom(0.8), { 'aria-label': 'Smaller drawing' }, '.small'));
    this.drawing.onView((all) => { look.hidden = all; });
  }

  /** Says something short to those who do not see it. */
  say(text) {
    say(find('more-sentences'), text);
  }

  changeUnits(units) {
    localStorage.setItem(UNITS, units);
    location.reload();
  }

  changeLight(light) {
    this.light = light;
    localStorage.setItem(LIGHT, light);
    document.documentElement.dataset.light = light === 'as the device' ? (matchMedia('(prefers-color-scheme: dark)').matches ? 'dark' : 'light') : light;
  }

  download(name, type, content) {
    const address = URL.createObjectURL(content instanceof Blob ? content : new Blob([content], { type }));
    const link = h('a', { href: address, download: name });
    document.body.append(link);
    link.click();
    link.remove();
    setTimeout(() => URL.revokeObjectURL(address), 10000);
  }

  /** Prints one element alone. */
  printOnly(element) {
    document.body.append(element);
    document.body.classList.add('printing-strip');
    addEventListener('afterprint', () => {
      document.body.classList.remove('printing-strip');
      element.remove();
    }, { once: true });
    print();
  }
}

matchMedia('(prefers-color-scheme: dark)').addEventListener('change', () => page.changeLight(page.light));
const page = new Page();
page.start();

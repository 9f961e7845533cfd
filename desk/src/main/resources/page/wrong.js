import { api } from './api.js';
import { Answer } from './answer.js';
import { Book, headOf, readingsOf } from './book.js';
import { button, calm, h, refill } from './dom.js';
import { Face, needleOf } from './face.js';
import { standing } from './standing.js';

const WORDS = ['LOW', 'NORMAL', 'HIGH', 'SWINGING', 'NOT READ'];

/** From the third reading on the answer stands at the side. */
const ENOUGH = 3;

/**
 * Something is wrong: which power, then the gauges one at a time, for fingers in gloves. While
 * someone reads, nothing on the page shows what a gauge should read.
 */
export class Wrong {
  constructor(page) {
    this.page = page;
    this.book = new Book(page.system, () => this.search());
    this.answer = new Answer(page, this.book);
    this.search = calm(350, () => this.ask());
    this.left = h('div.reading');
    this.allItems = this.listItems();
    this.items = this.allItems;
    this.lineUp = '';
    this.sets = {};
  }

  /** What can be read, the flight deck first, test ports last. */
  listItems() {
    const needles = this.page.system.gauges.flatMap((gauge) => gauge.needles.map((needle) => ({
      what: needle.key, gauge, mark: needle.mark, port: /port/.test(gauge.seen ?? ''),
    })));
    const lights = this.page.system.lights.map((light) => ({ what: light.name, light: true }));
    const seen = this.page.system.seen?.length ? [{ what: 'what works', seen: this.page.system.seen }] : [];
    return [...needles.filter((one) => !one.port), ...lights, ...seen, ...needles.filter((one) => one.port)];
  }

  /** What is asked of an occasion: a check may ask for something that has no gauge of its own, such as a test port. */
  itemsFor(what) {
    const known = this.allItems.some((item) => item.what === what || item.seen?.includes(what));
    if (!what || known) {
      return this.allItems;
    }
    const like = this.page.system.gauges.find((gauge) => gauge.temperature === / temperature$/.test(what));
    const gauge = { name: what, seen: 'test gauge', unit: like?.unit ?? '', temperature: like?.temperature, low: 0, high: like?.high ?? 100, needles: [{ mark: '', key: what }] };
    return [{ what, gauge, mark: '', port: true }, ...this.allItems];
  }

  /** Goes to where a check asks to read: its power, its line-up, its switches, its gauge. */
  readThis(reads) {
    const set = Object.fromEntries((reads.set ?? []).map((one) => one.split(/: (.*)/s).slice(0, 2)));
    const head = { at: reads.at, 'line-up': reads['line-up'] ?? '', set };
    this.items = this.itemsFor(reads.what);
    this.goOn(this.book.occasion(head), this.items.findIndex((item) => item.what === reads.what || item.seen?.includes(reads.what)));
    this.left.scrollIntoView({ block: 'start' });
  }

  open() {
    document.body.dataset.reading = 'true';
    this.page.panel.open('wrong', 'Something is wrong', [h('div.wrong', {}, this.left, this.answer.host)], {
      wide: true,
      close: () => delete document.body.dataset.reading,
    });
    this.askPower();
    if (this.book.count >= ENOUGH) {
      this.search();
    } else {
      this.answer.waitFor(ENOUGH - this.book.count);
    }
  }

  askPower() {
    const { system } = this.page;
    const squawk = h('input', {
      type: 'text', maxlength: 200, value: this.book.document.squawk ?? '', placeholder: 'Left duct low at idle',
      'aria-label': 'The complaint, in the words of who made it',
      onchange: (event) => this.book.setSquawk(event.target.value.trim()),
    });
    this.items = this.allItems;
    this.choose = h('div.stands');
    this.showStands();
    refill(this.left,
      h('label.field', {}, 'What is the complaint? ', h('small', {}, 'may stay empty'), squawk),
      h('h3', {}, 'At which power was it read?'),
      this.choose,
      h('div.gloves.powers', {}, system.powers.map((power) => button(power.name, () => this.begin(power.name), {}, '.key'))),
      this.soFar(),
      this.bringBack(),
      system.readings?.length ? this.stories() : null);
  }

  /** Line-up, and switches that stood otherwise while it was read. */
  showStands(open = Object.keys(this.sets).length > 0) {
    const { system } = this.page;
    const lineUps = (system.lineUps ?? []).map((one) => one.name);
    const moved = Object.entries(this.sets).map(([name, position]) => `${name} ${position}`);
    const again = (change) => { Object.assign(this, change); this.showStands(); };
    const stands = standing(system, '', this.lineUp, this.sets);
    const as = standing(system, '', this.lineUp);
    const move = (name, position) => {
      const { [name]: gone, ...others } = this.sets;
      again({ sets: position === as[name] ? others : { ...others, [name]: position } });
      this.choose.querySelector(`[data-choice="${CSS.escape(`${name}: ${position}`)}"]`)?.focus({ preventScroll: true });
    };
    refill(this.choose,
      lineUps.length > 1 ? h('div.choices', { role: 'group', 'aria-label': 'line-up' }, lineUps.map((name) => {
        const own = name === 'usual' ? '' : name;
        return button(name, () => again({ lineUp: own, sets: {} }), { 'aria-pressed': this.lineUp === own });
      })) : null,
      moved.length ? h('p.moved', {}, h('b', {}, 'With '), moved.join(', '), ' ', button('as it sits', () => again({ sets: {} }), {}, '.quiet')) : null,
      system.switches.length ? h('details.moves', { open: open || this.choose.querySelector('.moves')?.open }, h('summary', {}, 'A switch stood otherwise'),
        h('dl.switches', {}, system.switches.map((one) => [h('dt', {}, one.name), h('dd', {},
          h('div.choices', { role: 'group', 'aria-label': one.name }, one.positions.map((position) =>
            button(position, () => move(one.name, position), { 'aria-pressed': stands[one.name] === position, 'data-choice': `${one.name}: ${position}` }))))]))) : null);
  }

  /** What was thrown away or replaced last, as long as nothing else was. */
  bringBack() {
    const many = this.book.countBefore;
    return many ? button(`Bring back the ${many === 1 ? 'reading' : `${many} readings`} from before`, () => {
      this.book.bringBack();
      this.answer.waitFor(Math.max(1, ENOUGH - this.book.count));
      this.askPower();
    }, {}, '.bring-back') : null;
  }

  /** A story's name tells it from others with the same complaint. */
  story({ file, squawk, about }) {
    const name = file.replace(/^.*\//, '').replace(/\.[^.]*$/, '');
    return [squawk || 'No complaint', about, name].filter(Boolean).join(' · ');
  }

  stories() {
    const list = h('select', { 'aria-label': 'Readings files' }, this.page.system.readings.map((one) => h('option', { value: one.file }, this.story(one))));
    return h('details', { open: !this.book.count }, h('summary', {}, 'Or take readings from a file'),
      h('div.inline', {}, list, button('Take them', async () => {
        try {
          this.book.load(await api.readings(list.value));
          this.askPower();
        } catch (reason) {
          this.page.trouble(reason);
        }
      })));
  }

  soFar() {
    const told = this.book.occasions.filter((one) => readingsOf(one).length);
    if (!told.length) {
      return null;
    }
    return h('section.so-far', {}, h('h3', {}, 'Read so far'),
      told.map((occasion) => h('div.occasion', {},
        button(headOf(occasion), () => this.goOn(occasion, 0), {}, '.quiet'),
        h('dl', {}, readingsOf(occasion).map(([what, text]) => [h('dt', {}, what), h('dd', {}, text || 'not read')])))),
      button('Throw these readings away', () => { this.book.throwAway(); this.answer.waitFor(ENOUGH); this.askPower(); }, {}, '.quiet'));
  }

  begin(power) {
    this.goOn(this.book.occasion({ at: power, 'line-up': this.lineUp, set: this.sets }), 0);
  }

  goOn(occasion, at) {
    this.occasion = occasion;
    this.at = at;
    if (at >= this.items.length) {
      this.atEnd();
      return;
    }
    const item = this.items[at];
    this.typed = item.gauge ? needleText(occasion[item.what]) : '';
    this.swings = (occasion[item.what] ?? '').startsWith('swinging');
    this.left.onkeydown = null;
    const keys = item.seen ? this.seenKeys(item) : item.light ? this.lightKeys(item) : this.gaugeKeys(item);
    refill(this.left, this.head(item), keys, this.steps());
    this.left.querySelector('.key')?.focus({ preventScroll: true });
  }

  head(item) {
    return h('div.ask', {},
      h('p.where', {}, headOf(this.occasion)),
      h('h3', {}, item.seen ? 'What works, as far as you can see?' : item.light ? `Is the ${item.what} on?` : `What does it read: ${item.what}?`),
      item.gauge ? h('p.gauge-name', {}, [item.gauge.name, item.mark && `needle ${item.mark}`, item.gauge.seen].filter(Boolean).join(', ')) : null);
  }

  lightKeys(item) {
    return h('div.gloves.lights', {}, [['ON', 'on'], ['OFF', 'off'], ['NOT READ', 'not read']].map(([name, text]) =>
      button(name, () => this.put(text), { 'aria-pressed': this.occasion[item.what] === text }, '.key')));
  }

  /** Users that a person sees working or not, all at once: seldom more than two of them count. */
  seenKeys(item) {
    const rows = h('dl.switches.seen-keys');
    const show = () => refill(rows, item.seen.map((name) => [h('dt', {}, name), h('dd', {},
      h('div.choices', { role: 'group', 'aria-label': name }, [['ON', 'on'], ['OFF', 'off'], ['NOT SEEN', '']].map(([word, text]) =>
        button(word, () => { this.book.write(this.occasion, name, text); show(); this.focusOn(rows, name, word); },
          { 'aria-pressed': (this.occasion[name] ?? '') === text, 'data-choice': `${name}: ${word}` }, '.key'))))]));
    show();
    return rows;
  }

  focusOn(rows, name, word) {
    rows.querySelector(`[data-choice="${CSS.escape(`${name}: ${word}`)}"]`)?.focus({ preventScroll: true });
  }

  gaugeKeys(item) {
    const face = new Face(item.gauge);
    this.face = face;
    this.read = h('output.typed', { 'aria-live': 'polite' });
    const press = (key) => () => this.type(key);
    const keys = ['7', '8', '9', '4', '5', '6', '1', '2', '3', '.', '0', '⌫'].map((key) =>
      button(key, press(key), key === '⌫' ? { 'aria-label': 'Take back the last digit' } : {}, '.key.digit'));
    this.left.onkeydown = (event) => this.keyboard(event);
    const made = h('div.gauge-keys', {},
      h('div.dial', {}, face.svg, this.read),
      h('div.pad', {}, h('div.digits', {}, keys),
        h('div.words', {}, WORDS.map((word) => button(word, () => this.word(word), { 'aria-pressed': this.pressed(item, word) }, '.key')))));
    this.showTyped();
    return made;
  }

  pressed(item, word) {
    const now = this.occasion[item.what] ?? '';
    return word === 'SWINGING' ? now.startsWith('swinging') : now === word.toLowerCase();
  }

  word(word) {
    if (word === 'SWINGING') {
      this.swings = true;
      this.typed = '';
      this.showTyped();
      this.page.say('Swinging: type from, then the point twice, then to; or go on without numbers.');
      return;
    }
    this.put(word.toLowerCase());
  }

  keyboard(event) {
    if (event.target.matches('input, select') || event.ctrlKey || event.metaKey || event.altKey) {
      return;
    }
    const key = { Backspace: '⌫', ',': '.', Enter: 'next' }[event.key] ?? event.key;
    if (key === 'next' && this.typed !== '' && !event.target.matches('.words .key, .steps *')) {
      event.preventDefault();
      this.next();
    } else if (/^[0-9.⌫-]$/.test(key)) {
      event.preventDefault();
      this.type(key);
    }
  }

  type(key) {
    this.typed = key === '⌫' ? this.typed.slice(0, -1) : (this.typed + key).slice(0, 12);
    this.showTyped();
  }

  /** The words of what was typed; empty when it is no number yet. */
  get text() {
    const { unit } = this.items[this.at].gauge;
    const typed = this.typed.replace(/\.+$/, '');
    if (this.swings) {
      return /^-?[\d.]+\.\.-?[\d.]+$/.test(typed) ? `swinging ${typed} ${unit}` : 'swinging';
    }
    return typed ? `${typed} ${unit}` : '';
  }

  showTyped() {
    const { gauge, mark } = this.items[this.at];
    const typed = this.typed.replace(/\.+$/, '');
    this.read.textContent = this.typed || this.swings ? `${this.swings ? 'swinging ' : ''}${this.typed} ${gauge.unit}` : `– ${gauge.unit}`;
    const others = gauge.needles.filter((needle) => needle.mark !== mark)
      .map((needle) => ({ mark: needle.mark, ...needleOf(this.occasion[needle.key]) }));
    this.face.show([...others, { mark, ...needleOf(typed) }]);
  }

  put(text) {
    this.book.write(this.occasion, this.items[this.at].what, text);
    this.goOn(this.occasion, this.at + 1);
  }

  next() {
    const item = this.items[this.at];
    if (item.gauge && (this.typed || this.swings)) {
      this.put(this.text);
    } else {
      this.goOn(this.occasion, this.at + 1);
    }
  }

  steps() {
    return h('div.steps', {},
      button('Back', () => (this.at ? this.goOn(this.occasion, this.at - 1) : this.askPower()), {}, '.key'),
      h('span.count', {}, `${this.at + 1} of ${this.items.length}`),
      button('Next', () => this.next(), {}, '.key'),
      button('That is all', () => { this.leaveGauge(); this.atEnd(); }, {}, '.key'));
  }

  leaveGauge() {
    const item = this.items[this.at];
    if (item?.gauge && (this.typed || this.swings)) {
      this.book.write(this.occasion, item.what, this.text);
    }
  }

  atEnd() {
    refill(this.left,
      h('h3', {}, `${this.book.count} readings`),
      h('div.gloves', {},
        button('Read at another power', () => this.askPower(), {}, '.key'),
        button('Save these readings', () => this.save(), {}, '.key'),
        button('See it on the drawing', () => this.page.panel.shut(), {}, '.key')),
      this.soFar());
    this.left.querySelector('.key')?.focus({ preventScroll: true });
  }

  async save() {
    try {
      const text = await api.save(this.book.asked());
      this.page.download('readings.yaml', 'application/yaml', text);
    } catch (reason) {
      this.page.trouble(reason);
    }
  }

  ask() {
    if (this.book.count < ENOUGH) {
      this.answer.waitFor(ENOUGH - this.book.count);
    } else {
      this.answer.ask();
    }
  }
}

function needleText(text) {
  const numbers = (text ?? '').match(/-?\d+(\.\d+)?(\.\.-?\d+(\.\d+)?)?/);
  return numbers ? numbers[0] : '';
}

import { api } from './api.js';
import { button, h, refill, say } from './dom.js';

/** Seconds between two pictures while it runs. */
const PACE = 0.25;

/** Plays a profile on the drawing: what is done over time, event by event, forward, back, at any instant. */
export class Play {
  constructor(page) {
    this.page = page;
    page.asking.listen(() => this.touched());
  }

  /** Whoever moves the power or a switch wants to see that: what is played stands still. */
  touched() {
    if (this.clock?.isConnected) {
      this.stop();
      this.note.hidden = false;
    }
  }

  open() {
    const { page } = this;
    this.body = h('div.play');
    page.panel.open('play', 'Play', [this.body], { close: () => this.leave() });
    const list = h('select', { 'aria-label': 'Profiles' }, page.system.profiles.map((one) => h('option', { value: one.file }, one.title || one.file)));
    this.told = h('div.told');
    refill(this.body, h('p.quiet', {}, 'What happens over time: starts, slams, trips, ducts that bleed down.'),
      h('div.inline', {}, list, button('Play it', () => this.load(list.value), {}, '.firm')), this.told);
  }

  async load(file) {
    this.stop();
    this.clock = undefined;
    this.waiting?.abort();
    const own = (this.waiting = new AbortController());
    refill(this.told, h('p.quiet', {}, 'Playing it through …'));
    try {
      const played = await api.play(file, this.page.units, own.signal);
      if (own === this.waiting && this.page.panel.is('play')) {
        this.played = played;
        this.show();
      }
    } catch (reason) {
      if (reason.name !== 'AbortError') {
        refill(this.told, h('p.short', {}, reason.message), h('p', {}, reason.mend ?? ''));
      }
    }
  }

  show() {
    const { frames, events, about, notes } = this.played;
    this.clock = h('output.typed');
    this.scrub = h('input', {
      type: 'range', min: 0, max: frames.length - 1, value: 0, 'aria-label': 'Time',
      oninput: () => { this.stop(); this.at(Number(this.scrub.value)); },
    });
    this.running = button('Run', () => (this.timer ? this.stop() : this.run()), {}, '.key');
    this.list = h('ol.events', {}, events.map((event) => h('li', {}, button([h('b', {}, `${event.t.toFixed(1)} s `), event.says],
      () => { this.stop(); this.toTime(event.t, event.places); }, {}, '.event'))));
    this.note = h('p.short', { role: 'status', hidden: true }, 'The drawing shows the power that you asked for. Run, or a time below, goes on playing.');
    refill(this.told, about ? h('p', {}, about) : null, this.clock, this.note,
      h('div.extent', {},
        button('−', () => this.at(this.now - 1), { 'aria-label': 'Back a little' }, '.round'), this.scrub,
        button('+', () => this.at(this.now + 1), { 'aria-label': 'On a little' }, '.round')),
      h('div.steps', {}, this.running),
      (notes ?? []).map((line) => h('p.note', {}, line)), this.played.trouble ? h('p.short', {}, this.played.trouble) : null,
      h('h3', {}, 'What happens'), this.list, h('p.caution', {}, this.played.caution));
    this.at(0);
  }

  toTime(seconds, places) {
    const { frames } = this.played;
    const later = frames.findIndex((frame) => frame.t >= seconds - 1e-9);
    this.at(later < 0 ? frames.length - 1 : later);
    this.page.drawing.point(places ?? []);
  }

  at(which) {
    const { frames, events } = this.played;
    this.now = Math.max(0, Math.min(frames.length - 1, which));
    const frame = frames[this.now];
    this.note.hidden = true;
    this.page.rail.follow(frame.core);
    this.scrub.value = this.now;
    this.scrub.setAttribute('aria-valuetext', `${frame.t.toFixed(1)} s`);
    this.clock.textContent = `${frame.t.toFixed(1)} s, core ${(100 * frame.core).toFixed(1)} %`;
    this.page.drawing.show(frame.state, null);
    this.page.sentence(frame.state.headline?.[0] ?? '');
    say(document.getElementById('asked'), `${this.played.title}, ${frame.t.toFixed(1)} s after it began`);
    [...this.list.children].forEach((row, at) => row.classList.toggle('past', events[at].t <= frame.t + 1e-9));
  }

  /** Runs in real time. */
  run() {
    this.page.drawing.point([]);
    if (this.now >= this.played.frames.length - 1) {
      this.at(0);
    }
    this.page.hold(true);
    const began = performance.now() - 1000 * this.played.frames[this.now].t;
    this.running.textContent = 'Hold';
    this.timer = setInterval(() => {
      const seconds = (performance.now() - began) / 1000;
      const { frames } = this.played;
      let next = this.now;
      while (next < frames.length - 1 && frames[next + 1].t <= seconds) {
        next++;
      }
      if (next !== this.now) {
        this.at(next);
      }
      if (next === frames.length - 1) {
        this.stop();
      }
    }, 1000 * PACE);
  }

  stop() {
    clearInterval(this.timer);
    this.timer = 0;
    this.page.hold(false);
    if (this.running) {
      this.running.textContent = 'Run';
    }
  }

  leave() {
    this.stop();
    this.waiting?.abort();
    this.clock = undefined;
    this.page.drawing.point([]);
    this.page.rail.follow(undefined);
    this.page.ask(this.page.asking.question);
  }
}

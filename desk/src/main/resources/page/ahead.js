import { query } from './api.js';

/** A hand moves the power in tenths of a percent of core speed, as the grip tells it. */
export const STEPS = 1000;

/** States in one question. */
const AT_ONCE = 12;

/** Steps that a hand soon comes to: these are asked one after another without a pause. */
const REACH = 160;

/** Between two questions for what is farther off, ms. */
const PAUSE = 30;

/** States kept, the longest unused of them forgotten first; a whole rail has about 500. */
const KEPT = 1200;

/**
 * States that are asked before they are wanted: those around a hand that moves the power, so that
 * the drawing follows without waiting for answers.
 */
export class Ahead {
  /**
   * @param {function(Object, number[]): Promise<Object[]>} ask for the states of a question at core
   *     speeds; may answer the first few only
   * @param {{low: number, high: number}} rail core speeds of its ends
   * @param {function()} arrived told when more states are there
   */
  constructor(ask, { low, high }, arrived) {
    this.ask = ask;
    this.arrived = arrived;
    this.low = Math.ceil(low * STEPS);
    this.high = Math.floor(high * STEPS);
    this.states = new Map();
    this.busy = false;
    this.way = 1;
  }

  /** The state that answers a question, where it is there already. */
  known(question) {
    const key = keyOf(question);
    const state = this.states.get(key);
    if (state) {
      this.states.delete(key);
      this.states.set(key, state);
    }
    return state;
  }

  keep(question, state) {
    this.put(keyOf(question), state);
  }

  put(key, state) {
    this.states.delete(key);
    this.states.set(key, state);
    if (this.states.size > KEPT) {
      this.states.delete(this.states.keys().next().value);
    }
  }

  /** Nothing holds any more: another server may answer otherwise. */
  forget() {
    this.states.clear();
  }

  /** Something else is asked: what the hand might have come to is not wanted any more. */
  stop() {
    this.question = undefined;
  }

  /**
   * A hand is at a core speed, or over it, and goes on. First what is next to it is asked, then, with
   * pauses, the rest of the rail.
   */
  async lead(question) {
    if (question.core === undefined) {
      return;
    }
    const at = Math.round(question.core * STEPS);
    if (this.at !== undefined && at !== this.at) {
      this.way = Math.sign(at - this.at);
    }
    this.at = at;
    this.question = question;
    if (this.busy) {
      return;
    }
    this.busy = true;
    try {
      for (let wanted = this.missing(); wanted.length > 0; wanted = this.missing()) {
        await this.fetch(this.question, wanted);
      }
    } catch {
      // It was only to save time: whoever wants one of them asks for it and is told what is wrong.
    }
    this.busy = false;
  }

  async fetch(question, steps) {
    const far = Math.abs(steps[0] - this.at) > REACH;
    const began = performance.now();
    const states = await this.ask(question, steps.map((step) => step / STEPS));
    const air = airOf(question);
    states.forEach((state, i) => this.put(placed(air, steps[i]), state));
    this.arrived();
    if (far) {
      const took = performance.now() - began;
      await new Promise((done) => setTimeout(done, PAUSE + 2 * took));
    }
  }

  /** The next steps to ask for: the way the hand goes before the other. */
  missing() {
    const wanted = [];
    if (!this.question) {
      return wanted;
    }
    const air = airOf(this.question);
    const want = (step) => {
      if (step >= this.low && step <= this.high && !this.states.has(placed(air, step)) && !wanted.includes(step)) {
        wanted.push(step);
      }
    };
    for (let i = 1; i <= this.high - this.low && wanted.length < AT_ONCE; i++) {
      want(this.at + this.way * i);
      // Behind the hand a quarter as far is looked as before it.
      if (i % 4 === 0) {
        want(this.at - (this.way * i) / 4);
      }
    }
    for (let step = this.low; step <= this.high && wanted.length < AT_ONCE; step++) {
      want(step);
    }
    return wanted;
  }
}

/** All of a question but its power. */
function airOf(question) {
  return String(query({ ...question, power: undefined, core: undefined }));
}

function placed(air, step) {
  return `${air}|${(step / STEPS).toFixed(4)}`;
}

function keyOf(question) {
  return `${airOf(question)}|${question.power || question.core?.toFixed(4)}`;
}

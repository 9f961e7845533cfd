/**
 * All that the page asks of the model. Every answer comes through here, so that a pocket sheet,
 * which has no server, can put its own answers in the place of these.
 */

let token = document.querySelector('meta[name=offtake-token]')?.content ?? '';
const page = Math.random().toString(36).slice(2);

/** What went wrong, in words for the person, with what to do. */
export class Trouble extends Error {
  constructor(message, mend = '', lost = false, status = 0) {
    super(message);
    this.mend = mend;
    /** By which number the server refused; 0 for none. */
    this.status = status;
    /** Whether the server could not be reached at all. */
    this.lost = lost;
  }
}

/**
 * A question as the query of an address.
 *
 * @param {{power?: string, core?: number, day?: string, lineup?: string, sets?: Object, broken?: string[], units?: string}} question
 */
export function query(question) {
  const asked = new URLSearchParams();
  if (question.power) {
    asked.set('power', question.power);
  } else if (question.core !== undefined) {
    asked.set('core', question.core.toFixed(4));
  }
  for (const key of ['day', 'lineup', 'units']) {
    if (question[key]) {
      asked.set(key, question[key]);
    }
  }
  for (const [name, position] of Object.entries(question.sets ?? {})) {
    asked.append('set', `${name}: ${position}`);
  }
  for (const fault of question.broken ?? []) {
    asked.append('if', fault);
  }
  return asked;
}

async function call(address, options = {}) {
  let response;
  try {
    response = await fetch(address, { credentials: 'same-origin', ...options });
  } catch (reason) {
    if (reason.name === 'AbortError') {
      throw reason;
    }
    throw new Trouble(
      'Offtake does not answer.',
      'It was stopped, or this device has lost it. Start it again with ./offtake page; the page goes on by itself.',
      true);
  }
  const type = response.headers.get('content-type') ?? '';
  const body = type.includes('json') ? await response.json() : await response.text();
  if (!response.ok) {
    const problem = body.problem ?? {};
    const says = [problem.where, problem.message].filter(Boolean).join(': ');
    throw new Trouble(says || `Offtake refused (${response.status}).`, problem.mend ?? '', false, response.status);
  }
  return body;
}

function send(address, body) {
  return call(address, {
    method: 'POST',
    headers: { 'Content-Type': 'application/json', 'X-Offtake': token, 'X-Page': page },
    body: JSON.stringify(body),
  });
}

/** A server that was started again has another token; nobody has to load the page anew for that. */
async function post(address, body) {
  try {
    return await send(address, body);
  } catch (refusal) {
    const fresh = refusal.status === 403 ? await freshToken() : token;
    if (fresh === token) {
      throw refusal;
    }
    token = fresh;
    return send(address, body);
  }
}

/** The token of the page as it is now; the one of this page where there is no other. */
async function freshToken() {
  try {
    const html = new DOMParser().parseFromString(await call('/'), 'text/html');
    return html.querySelector('meta[name=offtake-token]')?.content || token;
  } catch {
    return token;
  }
}

const wait = (milliseconds) => new Promise((done) => setTimeout(done, milliseconds));

/** The server's answers. */
export const server = {
  system: (units) => call(`/api/system?units=${units}`),
  drawing: (units) => call(`/api/drawing?units=${units}`),
  state: (question, signal) => call(`/api/state?${query(question)}`, { signal }),
  states: async (question, cores) =>
    (await call(`/api/states?${query({ ...question, core: undefined })}&cores=${cores.map((core) => core.toFixed(4)).join(',')}`)).states,
  changes: (question, signal) => call(`/api/changes?${query(question)}`, { signal }),
  broken: (question, signal) => call(`/api/break?${query(question)}`, { signal }),
  walk: (question, signal) => call(`/api/walk?${query(question)}`, { signal }),
  play: (file, units, signal) => call(`/api/play?file=${encodeURIComponent(file)}&units=${units}`, { signal }),
  readings: (file) => call(`/api/readings?file=${encodeURIComponent(file)}`),
  save: (readings) => post('/api/readings/save', readings),

  curve(question, names, signal) {
    const asked = query(question);
    names.forEach((name) => asked.append('of', name));
    return call(`/api/curve?${asked}`, { signal });
  },

  /**
   * What it can be. Takes seconds.
   *
   * @param {Object} readings the readings document
   * @param {function(number, string)} progress told how far it is, 0 to 1, and what it is doing
   * @param {AbortSignal} signal gives up
   */
  async find(readings, units, progress, signal) {
    const { id } = await post(`/api/find?units=${units}`, readings);
    for (let pause = 80; ; pause = Math.min(400, pause * 1.3)) {
      await wait(pause);
      if (signal?.aborted) {
        throw new DOMException('given up', 'AbortError');
      }
      const at = await call(`/api/find/${id}`, { signal });
      progress(at.progress ?? 0, at.doing ?? '');
      if (at.problem) {
        throw new Trouble(at.problem.message, at.problem.mend);
      }
      if (at.done) {
        return at.result;
      }
    }
  },
};

/** Who answers: the server, or a pocket sheet's own record. */
export let api = globalThis.offtakePocket ? null : server;

/** Puts another answerer in the server's place. */
export function answerBy(other) {
  api = other;
}

/**
 * Asks one question at a time and always the latest: while an answer is on its way, what is asked
 * meanwhile waits, and only the last of it is asked. What is known already is not asked.
 */
export class Latest {
  constructor(ask, known, take, fail) {
    this.ask = ask;
    this.known = known;
    this.take = take;
    this.fail = fail;
    this.busy = false;
    this.next = undefined;
    this.wanted = undefined;
    this.turn = 0;
  }

  /** Wants an answer; whether it was there at once. */
  want(question) {
    const known = this.known(question);
    if (known) {
      this.next = undefined;
      this.wanted = undefined;
      this.turn += 1;
      this.take(known, question);
      return true;
    }
    this.next = question;
    this.wanted = question;
    if (!this.busy) {
      this.run();
    }
    return false;
  }

  /** More is known: what is still waited for may be among it. */
  again() {
    if (this.wanted && this.known(this.wanted)) {
      this.want(this.wanted);
    }
  }

  async run() {
    this.busy = true;
    while (this.next !== undefined) {
      const question = this.next;
      const { turn } = this;
      this.next = undefined;
      try {
        const answer = await this.ask(question);
        // Something later may have been shown meanwhile.
        if (turn === this.turn) {
          this.answered(question);
          this.take(answer, question);
        }
      } catch (reason) {
        if (turn === this.turn) {
          this.answered(question);
          this.fail(reason, question);
        }
      }
    }
    this.busy = false;
  }

  answered(question) {
    this.wanted = this.wanted === question ? undefined : this.wanted;
  }
}

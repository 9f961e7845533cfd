/**
 * What is being asked: power, day, line-up, switches, broken parts. One place holds it; whoever
 * shows something listens. It is kept in the address, so that a reload or a second tab shows the
 * same.
 */
export class Asking {
  constructor(system) {
    this.system = system;
    this.listeners = [];
    this.question = { power: system.powers[0]?.name ?? '', sets: {}, broken: [] };
    if (!this.question.power) {
      this.question.core = system.core.low;
    }
    this.recall();
    addEventListener('hashchange', () => {
      if (this.written !== location.hash) {
        this.recall();
        this.tell();
      }
    });
  }

  /** Calls a listener now and at each change with the question and whether more will follow at once. */
  listen(listener) {
    this.listeners.push(listener);
    listener(this.question, false);
  }

  /**
   * Changes the question.
   *
   * @param {Object} change fields that become other
   * @param {boolean} moving whether a hand is still moving
   */
  change(change, moving = false) {
    this.question = this.changed(change);
    this.tell(moving);
  }

  /** The question as it would be after a change. */
  changed(change) {
    const next = { ...this.question, ...change };
    if ('core' in change) {
      this.keepAir(next);
    }
    if ('power' in change) {
      delete next.core;
      this.releaseAir(next);
    }
    return next;
  }

  /** Moving on from a named power keeps the day and the line-up that belong to it. */
  keepAir(next) {
    const from = this.system.powers.find((power) => power.name === next.power);
    delete next.power;
    for (const [key, own] of [['day', from?.day], ['lineup', from?.lineUp]]) {
      if (own && own !== this.system.standardDay && own !== 'usual' && !next[key]) {
        next[key] = own;
        next.lent = [...(next.lent ?? []), key];
      }
    }
  }

  /** A named power brings its own day and line-up, and what was kept of another goes. */
  releaseAir(next) {
    (next.lent ?? []).forEach((key) => delete next[key]);
    delete next.lent;
  }

  /** Whether a named power has the day and the line-up that are asked now. */
  sameAir(power) {
    const own = (asked, tied, usual) => (asked || tied || usual) === (tied || usual);
    const { day, lineup } = this.question;
    const now = this.system.powers.find((one) => one.name === this.power);
    return own(day || now?.day, power.day, this.system.standardDay) && own(lineup || now?.lineUp, power.lineUp, 'usual');
  }

  tell(moving = false) {
    for (const listener of this.listeners) {
      listener(this.question, moving);
    }
    if (!moving) {
      this.keep();
    }
  }

  /** Core speed that is asked, a share. */
  get core() {
    const named = this.system.powers.find((power) => power.name === this.question.power);
    return named ? named.core : this.question.core;
  }

  /** The power's name; empty between the named ones. */
  get power() {
    return this.question.power ?? '';
  }

  /** Sets a switch; its first position is as it sits and need not be said. */
  set(name, position) {
    this.change({ sets: { ...this.question.sets, [name]: position } });
  }

  /** Breaks a part; one mode of a part at a time. */
  break(part, words) {
    // A pocket sheet holds one failure at a time: the next takes the place of the last.
    const others = this.system.pocket ? [] : this.question.broken.filter((fault) => !this.isOf(fault, part));
    this.change({ broken: [...others, words] });
  }

  /** Mends a part. */
  mend(part) {
    this.change({ broken: this.question.broken.filter((fault) => !this.isOf(fault, part)) });
  }

  /** Mends one fault by its words. */
  mendWords(words) {
    this.change({ broken: this.question.broken.filter((fault) => fault !== words) });
  }

  /** What is broken of a part, in words; undefined for a sound one. */
  brokenOf(part) {
    return this.question.broken.find((fault) => this.isOf(fault, part));
  }

  /** Whether words of a fault name this part and no longer-named one. */
  isOf(fault, part) {
    if (!fault.startsWith(part + ' ')) {
      return false;
    }
    return !this.system.parts.some(
      (other) => other.name.length > part.length && other.name.startsWith(part) && fault.startsWith(other.name + ' '));
  }

  keep() {
    const kept = new URLSearchParams();
    const { power, core, day, lineup, sets, broken } = this.question;
    Object.entries({ power, core, day, lineup }).forEach(([key, value]) => {
      if (value !== undefined && value !== '') {
        kept.set(key, typeof value === 'number' ? value.toFixed(4) : value);
      }
    });
    Object.entries(sets).forEach(([name, position]) => kept.append('set', `${name}: ${position}`));
    broken.forEach((fault) => kept.append('if', fault));
    this.written = '#' + kept.toString();
    history.replaceState(null, '', this.written);
  }

  recall() {
    const kept = new URLSearchParams(location.hash.slice(1));
    if (![...kept.keys()].length) {
      return;
    }
    const question = { sets: {}, broken: kept.getAll('if') };
    const core = Number(kept.get('core'));
    if (kept.get('core') && Number.isFinite(core)) {
      question.core = Math.min(this.system.core.high, Math.max(this.system.core.low, core));
    } else {
      const named = this.system.powers.find((power) => power.name === kept.get('power'));
      question.power = named?.name ?? this.system.powers[0]?.name ?? '';
      if (!question.power) {
        question.core = this.system.core.low;
      }
    }
    for (const key of ['day', 'lineup']) {
      if (kept.get(key)) {
        question[key] = kept.get(key);
      }
    }
    for (const set of kept.getAll('set')) {
      const colon = set.indexOf(': ');
      question.sets[set.slice(0, colon)] = set.slice(colon + 2);
    }
    this.question = question;
  }
}

/**
 * The readings: a document as in a readings file, kept in this browser until it is thrown away, so
 * that it outlives a reload and a screen that slept.
 */
export class Book {
  constructor(system, changed) {
    this.key = `offtake readings of ${system.file || system.title}`;
    this.changed = changed;
    this.document = fresh();
    try {
      const kept = JSON.parse(localStorage.getItem(this.key));
      if (Array.isArray(kept?.readings)) {
        this.document = kept;
      }
    } catch {
      // What cannot be read any more is as good as not kept.
    }
  }

  get occasions() {
    return this.document.readings;
  }

  /** The occasion of a power and line-up; made when there is none. */
  occasion(power, lineUp) {
    const found = this.occasions.find((one) => powerOf(one) === power && (one['line-up'] ?? '') === (lineUp ?? '') && !one['said by']);
    if (found) {
      return found;
    }
    const made = { at: power };
    if (lineUp) {
      made['line-up'] = lineUp;
    }
    this.occasions.push(made);
    return made;
  }

  /** Writes one reading; an empty text takes it away. */
  write(occasion, what, text) {
    if (text) {
      occasion[what] = text;
    } else {
      delete occasion[what];
    }
    this.keep();
  }

  setSquawk(text) {
    if (text) {
      this.document.squawk = text;
    } else {
      delete this.document.squawk;
    }
    this.keep();
  }

  /** Takes another document in place of this one. */
  load(document) {
    this.document = { ...document, readings: document.readings ?? [] };
    this.keep();
  }

  throwAway() {
    this.load(fresh());
  }

  /** What `find` is asked: occasions without a single reading left out. */
  asked() {
    return { ...this.document, readings: this.occasions.filter((one) => readingsOf(one).length) };
  }

  /** How many things have been read. */
  get count() {
    return this.occasions.reduce((sum, one) => sum + readingsOf(one).filter(([, text]) => text !== 'not read').length, 0);
  }

  keep() {
    try {
      localStorage.setItem(this.key, JSON.stringify(this.document));
    } catch {
      // A browser that keeps nothing still shows everything.
    }
    this.changed?.();
  }
}

const HEAD = ['at', 'line-up', 'set', 'day', 'trip', 'said by', 'note', 'could not duplicate'];

/** What was read on an occasion: pairs of what and text. */
export function readingsOf(occasion) {
  return Object.entries(occasion).filter(([what]) => !HEAD.includes(what));
}

/** Power of an occasion in words. */
export function powerOf(occasion) {
  const at = occasion.at ?? '';
  return typeof at === 'string' ? at : at.power ?? (at.core ? `core ${at.core}` : '');
}

function fresh() {
  return { 'offtake readings': '1', readings: [] };
}

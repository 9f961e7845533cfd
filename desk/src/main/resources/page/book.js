/** Behind the key of what is kept: what stood there before. */
const BEFORE = ', before';

/**
 * The readings: a document as in a readings file, kept in this browser until it is thrown away, so
 * that it outlives a reload and a screen that slept.
 */
export class Book {
  constructor(system, changed) {
    this.key = `offtake readings of ${system.file || system.title}`;
    this.changed = changed;
    this.document = kept(this.key) ?? fresh();
    this.before = kept(this.key + BEFORE);
  }

  get occasions() {
    return this.document.readings;
  }

  /**
   * The occasion of a power, a line-up, a day and switches that stand otherwise; made when there is none.
   *
   * @param {{at: string, 'line-up'?: string, set?: Object, day?: string}} head
   */
  occasion(head) {
    const found = this.occasions.find((one) => !one['said by'] && !one.trip && headKey(one) === headKey(head));
    if (found) {
      return found;
    }
    const made = Object.fromEntries(Object.entries(head).filter(([, value]) => said(value)));
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

  /** Takes another document in place of this one, which is kept until it is brought back or another is thrown away. */
  load(document) {
    if (this.count) {
      this.before = this.document;
    }
    this.document = { ...document, readings: document.readings ?? [] };
    this.keep();
  }

  throwAway() {
    this.load(fresh());
  }

  /** Takes back what was thrown away or replaced last; what stands now can be brought back in turn. */
  bringBack() {
    const back = this.before;
    this.before = undefined;
    this.load(back);
  }

  /** How many things were read in what can be brought back. */
  get countBefore() {
    return counted(this.before?.readings ?? []);
  }

  /** What `find` is asked: occasions without a single reading left out. */
  asked() {
    return { ...this.document, readings: this.occasions.filter((one) => readingsOf(one).length) };
  }

  /** How many things have been read. */
  get count() {
    return counted(this.occasions);
  }

  keep() {
    try {
      localStorage.setItem(this.key, JSON.stringify(this.document));
      localStorage.setItem(this.key + BEFORE, JSON.stringify(this.before ?? null));
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

/** When it was read, in words: power, line-up, switches, day, side of a trip, who said it. */
export function headOf(occasion) {
  const sets = Object.entries(occasion.set ?? {}).map(([name, position]) => `${name} ${position}`);
  const day = dayOf(occasion);
  return [powerOf(occasion), occasion['line-up'], ...sets, day, occasion.trip, occasion['said by'] && 'said by ' + occasion['said by']]
    .filter(Boolean).join(', ');
}

/** An occasion's own day in the words in which a day is asked; empty where it has none. */
export function dayOf(occasion) {
  const { day = '' } = occasion;
  return typeof day === 'string' ? day : Object.entries(day).map(([key, text]) => (key === 'Mach' ? `Mach ${text}` : text)).join(', ');
}

function headKey(head) {
  const sets = Object.entries(head.set ?? {}).sort(([one], [other]) => (one < other ? -1 : 1));
  const lineUp = head['line-up'] === 'usual' ? '' : head['line-up'] ?? '';
  return JSON.stringify([powerOf(head), lineUp, sets, dayOf(head)]);
}

function said(value) {
  return value && (typeof value !== 'object' || Object.keys(value).length > 0);
}

function counted(occasions) {
  return occasions.reduce((sum, one) => sum + readingsOf(one).filter(([, text]) => text !== 'not read').length, 0);
}

function kept(key) {
  try {
    const document = JSON.parse(localStorage.getItem(key));
    return Array.isArray(document?.readings) ? document : undefined;
  } catch {
    // What cannot be read any more is as good as not kept.
    return undefined;
  }
}

function fresh() {
  return { 'offtake readings': '1', readings: [] };
}

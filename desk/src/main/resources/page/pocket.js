/**
 * The pocket sheet's answers: what was worked out before, unpacked, in the place of the server's.
 * The same questions as of the server; what is not in the sheet is told with what to do.
 */
import { Trouble } from './api.js';

/** A day is another one when it is off by more: 10 °F, and 0.3 inHg. */
const WARMER = 10 / 1.8;
const HEAVIER = 0.3 * 3386.389;

/** Puts a difference onto what it differs from; see Delta.java. */
export function patched(base, delta) {
  if (Array.isArray(delta)) {
    return delta[0];
  }
  const whole = Array.isArray(base) ? [...base] : { ...base };
  for (const [key, change] of Object.entries(delta)) {
    if (change === null) {
      delete whole[key];
    } else {
      whole[key] = patched(base?.[key], change);
    }
  }
  return whole;
}

/** Puts the sound values beside those of a broken system, as the server does. */
function compared(now, sound) {
  const both = (list, fields) => list.map((one, i) => {
    const other = sound[i];
    const with_ = { ...one };
    for (const [field, was] of fields) {
      if (other && other[field] !== undefined && other[field] !== one[field]) {
        with_[was] = other[field];
      }
    }
    return with_;
  });
  return both(now, [['says', 'was'], ['degrees', 'degreesWas']]);
}

function beside(state, sound) {
  const parts = state.parts?.map((part, i) => {
    const other = sound.parts?.[i];
    const with_ = { ...part };
    if (other && other.word !== part.word) {
      with_.was = other.word;
    }
    if (other?.says !== undefined && other.says !== part.says) {
      with_.flowWas = other.says;
    }
    return with_;
  });
  const lights = state.lights?.map((light, i) => {
    const other = sound.lights?.[i];
    return other && other.lit !== light.lit ? { ...light, was: other.lit ? 'lit' : 'out' } : light;
  });
  const needles = state.needles?.map((needle) => {
    const other = sound.needles?.find((one) => one.gauge === needle.gauge && one.mark === needle.mark);
    return other && other.says !== needle.says ? { ...needle, was: other.says } : needle;
  });
  return { ...state, parts, lights, needles, points: state.points && compared(state.points, sound.points) };
}

/** Pressure and temperature of a day in words such as 29.6 inHg station, 75 degF. */
export function dayOf(words) {
  const number = (unit) => words.match(new RegExp(`(-?\\d+(?:\\.\\d+)?)\\s*${unit}`, 'i'))?.[1];
  const f = number('(?:degF|°F)');
  const c = number('(?:degC|°C)');
  const inHg = number('inHg');
  const hPa = number('(?:hPa|mbar)');
  const t = f !== undefined ? (Number(f) + 459.67) / 1.8 : c !== undefined ? Number(c) + 273.15 : undefined;
  const p = inHg !== undefined ? Number(inHg) * 3386.389 : hPa !== undefined ? Number(hPa) * 100 : undefined;
  return { t, p, alone: !/ft|\bm\b|QNH|ISA|Mach/i.test(words) };
}

/** The answers of a sheet. */
export class Pocket {
  constructor(record) {
    this.record = record;
    this.modes = new Map();
    for (const part of record.system.parts) {
      for (const mode of part.modes) {
        this.modes.set(mode.words, mode.words);
        (mode.extent?.steps ?? []).filter((step) => step.usual).forEach((step) => this.modes.set(step.words, mode.words));
      }
    }
  }

  /** In one line: the days and what is held. */
  get cover() {
    const { system, days, stops, faults } = this.record;
    const air = Object.entries(days).map(([name, day]) =>
      `${name} (${Math.round(day.t * 1.8 - 459.67)} °F, ${(day.p / 3386.389).toFixed(2)} inHg)`);
    const lineUps = new Set(stops.map((stop) => stop.lineUp));
    return `${system.title}: ${system.powers.length} powers, ${lineUps.size} line-ups, ${faults.length} failures each. Holds for ${air.join(' and ')} only.`;
  }

  async system() {
    return { ...this.record.system, readings: [], profiles: [], pocket: this.cover };
  }

  async drawing() {
    return this.record.drawing;
  }

  refuse(message, mend) {
    throw new Trouble(message, mend);
  }

  /** The day must be the sheet's, or as near to it as its answers hold. */
  checkDay(words, own) {
    const { days, system } = this.record;
    if (!words || words === own) {
      return;
    }
    const named = system.days.find((day) => day.name === words);
    const here = days[own];
    const other = named ? days[words] ?? dayOf(named.says) : dayOf(words);
    const known = other.t !== undefined && (other.p !== undefined || other.alone === true) && !(named && !days[words]);
    const near = known && Math.abs(other.t - here.t) <= WARMER
      && (other.p === undefined || Math.abs(other.p - here.p) <= HEAVIER);
    if (!near) {
      this.refuse(
        `The pocket sheet does not hold for ${words}.`,
        `It holds for ${own} within 10 °F and 0.3 inHg. Ask the computer that made it, or have it make another.`);
    }
  }

  stop(question) {
    const { system, stops } = this.record;
    const power = system.powers.find((one) => one.name === question.power)
      ?? system.powers.find((one) => question.core !== undefined && Math.abs(one.core - question.core) < 5e-4);
    if (!power) {
      this.refuse('The pocket sheet holds the named powers only.', 'Take one of the named stops of the rail.');
    }
    this.checkDay(question.day, power.day);
    if (Object.keys(question.sets ?? {}).length > 0) {
      this.refuse('The pocket sheet holds the line-ups of the file only.', 'Take a line-up, or put the switches back as they sit.');
    }
    const lineUp = question.lineup || 'usual';
    const found = stops.find((stop) => stop.power === power.name && stop.lineUp === lineUp);
    return found ?? this.refuse(`The pocket sheet has no line-up ${lineUp}.`, 'Take one of its line-ups.');
  }

  fault(question) {
    const broken = question.broken ?? [];
    if (broken.length > 1) {
      this.refuse('The pocket sheet holds one failure at a time.', 'Take one of them off.');
    }
    if (broken.length === 0) {
      return -1;
    }
    const at = this.record.faults.indexOf(this.modes.get(broken[0]) ?? broken[0]);
    return at >= 0 ? at : this.refuse('The pocket sheet holds each failure to its usual extent only.', 'Take the usual extent, or no extent.');
  }

  async state(question) {
    const stop = this.stop(question);
    const fault = this.fault(question);
    const { cautions, warnings } = this.record.system;
    const state = fault < 0 ? stop.sound : beside(patched(stop.sound, stop.broken[fault]), stop.sound);
    return { ...state, warnings, caution: cautions[0] };
  }

  async changes(question) {
    const stop = this.record.stops.find((one) => one.power === question.power && one.changes);
    return stop?.changes ?? { up: [], down: [], limits: [] };
  }

  async walk(question) {
    const { stops, system } = this.record;
    const power = question.power || system.powers[0]?.name;
    const stop = stops.find((one) => one.power === power && one.walk);
    if ((question.broken ?? []).length > 0 || !stop) {
      this.refuse('The pocket sheet walks through the sound system only.', 'Take off what is broken.');
    }
    return stop.walk;
  }

  async broken(question) {
    const state = await this.state(question);
    const fault = this.fault(question);
    const notice = Object.entries(this.record.notice[fault] ?? {}).map(([power, verdict]) => ({ power, verdict, says: '', signs: [] }));
    return { solved: state.solved, headline: state.headline[0], beside: state.headline.slice(1), follows: [], changed: [], unshown: 0, notice, look: [], back: [] };
  }

  async readings() {
    return this.refuse('The pocket sheet has no readings to load.', 'Type them in, or open the page.');
  }

  async save() {
    return this.refuse('The pocket sheet keeps no readings files.', 'They stay in this browser; open the page to save a file.');
  }

  async curve() {
    return this.refuse('The pocket sheet has no curves.', 'Open the page with ./offtake page.');
  }

  async find() {
    return this.refuse('The pocket sheet cannot search.', 'Try the failures one by one here, or open the page with ./offtake page.');
  }
}

/** Says on the sheet itself what it holds, and for which days. */
export function printed(answers) {
  const cover = document.createElement('p');
  cover.className = 'caution';
  cover.id = 'pocket-cover';
  cover.textContent = `Pocket sheet. ${answers.cover}`;
  document.getElementById('caution').before(cover);
  // For whoever looks into the sheet with a browser's tools.
  globalThis.offtakePocket = answers;
}

/** The record of a sheet out of what stands in its page. */
export async function unpacked(text) {
  const bytes = Uint8Array.from(atob(text.trim()), (letter) => letter.charCodeAt(0));
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream('deflate-raw'));
  return JSON.parse(await new Response(stream).text());
}

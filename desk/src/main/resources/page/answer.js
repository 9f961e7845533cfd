import { api } from './api.js';
import { dayOf, powerOf } from './book.js';
import { button, h, refill } from './dom.js';

/** As many removable units are told. */
const UNITS = 5;

const inHundred = (chance) => (chance < 0.005 ? 'below 1' : chance > 0.995 ? 'above 99' : String(Math.round(100 * chance)));

/** What it can be: groups that the readings cannot part, read against, check next, no help. */
export class Answer {
  constructor(page, book) {
    this.page = page;
    this.book = book;
    this.host = h('div.answer', { 'aria-live': 'polite' });
    this.bar = h('progress', { max: 1, value: 0, 'aria-label': 'How far the search is' });
    this.doing = h('p.doing');
    this.told = h('div.told');
    refill(this.host, this.bar, this.doing, this.told);
    this.busy(false);
  }

  busy(is, doing = '') {
    this.bar.hidden = !is;
    this.doing.textContent = doing;
    this.told.classList.toggle('old', is);
    this.host.setAttribute('aria-busy', is);
  }

  waitFor(more) {
    this.giveUp();
    refill(this.told, h('p.quiet', {}, `What it can be stands here after ${more === 1 ? 'one more reading' : `${more} more readings`}.`));
  }

  giveUp() {
    this.waiting?.abort();
    this.busy(false);
  }

  /** Searches; a newer question takes the place of one that is not done. */
  async ask() {
    this.waiting?.abort();
    const own = (this.waiting = new AbortController());
    this.busy(true, 'Comparing each failure with what was read …');
    try {
      const found = await api.find(this.book.asked(), this.page.units, (share, doing) => {
        if (own === this.waiting) {
          this.bar.value = share;
          this.doing.textContent = doing;
        }
      }, own.signal);
      if (own === this.waiting) {
        this.busy(false);
        this.found = found;
        refill(this.told, this.sheet(found));
      }
    } catch (reason) {
      if (reason.name !== 'AbortError' && own === this.waiting) {
        this.busy(false);
        refill(this.told, h('p.short', {}, reason.message), h('p', {}, reason.mend ?? ''));
      }
    }
  }

  sheet(found) {
    return [
      ...found.answer.map((line, at) => h(at ? 'p' : 'p.headline', {}, line)),
      ...(found.notes ?? []).map((line) => h('p.short', {}, line)),
      this.units(found),
      h('h3', {}, 'What it can be', h('small', {}, ' chance in 100')),
      h('ol.groups', {}, found.groups.filter((group) => group.letter).map((group) => this.group(found, group))),
      h('dl.others', {}, [['none of these', found['none of these']], ['nothing wrong', found['nothing wrong']], ['hides in these readings', found.hides]]
        .map(([what, chance]) => [h('dt', {}, what), h('dd', {}, inHundred(chance))])),
      this.checks(found),
      this.noHelp(found),
      this.against(found),
      ...(found['gauge cautions'] ?? []).map((line) => h('p.short', {}, line)),
      h('details', {}, h('summary', {}, 'What this stands on'), h('ul', {}, found['stands on'].map((line) => h('li', {}, line)))),
      h('p.caution', {}, found.caution),
    ];
  }

  /** The removable units, as they are changed one by one: what comes first is the likeliest to be at fault. */
  units(found) {
    const likely = found.units.filter((unit) => unit.chance >= 0.005).slice(0, UNITS);
    return likely.length ? [h('h3', {}, 'By removable unit', h('small', {}, ' chance in 100')),
      h('dl.others.units', {}, likely.map((unit) => [h('dt', {}, unit.words), h('dd', {}, inHundred(unit.chance))]))] : null;
  }

  group(found, group) {
    const [first, ...others] = group.causes;
    const row = (at) => h('li', {}, this.cause(found.causes[at]));
    return h('li.group', {},
      h('div.group-head', {}, h('span.letter', {}, group.letter),
        h('span', {}, group.causes.length > 1 ? 'your readings are blind between these' : ''), h('b.chance', {}, inHundred(group.chance))),
      h('ul', {}, row(first), others.slice(0, 2).map(row)),
      others.length > 2 ? h('details', {}, h('summary', {}, `and ${others.length - 2} more`), h('ul', {}, others.slice(2).map(row))) : null);
  }

  cause(cause) {
    return button([h('span.words', {}, cause.words), h('span.chance', {}, inHundred(cause.chance))],
      () => this.onDrawing(cause), { title: 'Show it on the drawing' }, '.cause');
  }

  /** Breaks the system as a cause says, at the power where it was read, and shows what was read beside. */
  onDrawing(cause) {
    const occasion = this.book.occasions[0];
    const power = this.page.system.powers.find((one) => one.name === powerOf(occasion ?? {}));
    this.page.panel.shut();
    this.page.asking.change({
      ...(power ? { power: power.name } : {}),
      ...(occasion ? { day: dayOf(occasion) || undefined, sets: { ...occasion.set }, lent: undefined } : {}),
      lineup: occasion?.['line-up'] || undefined,
      broken: cause.faults.map((fault) => fault.if ?? `${fault.part} ${fault.mode}`),
    });
    this.page.showReadings(occasion);
    this.page.say(`On the drawing: ${cause.words}.`);
  }

  checks(found) {
    const { advice } = found;
    const checks = (advice.checks ?? []).filter((check) => check["tells more"] !== false);
    if (!checks.length) {
      return (advice.stop ?? []).length ? [h('h3', {}, 'Check next'), advice.stop.map((line) => h('p', {}, line))] : null;
    }
    return [h('h3', {}, 'Check next'), h('ol.checks', {}, checks.map((check) => h('li', {},
      h('p', {}, h('b', {}, check.says), h('span.minutes', {}, ` ${Math.round(check.minutes)} min`)),
      check.reads ? button('Read this', () => this.page.wrong.readThis(check.reads), { 'aria-label': `Read this: ${check.says}` }, '.key.firm') : null,
      check.shows?.length ? h('ul.shows', {}, check.shows.map((line) => h('li', {}, line))) : null,
      check['holds only if'] ? h('p.short', {}, check['holds only if']) : null,
      (check.cautions ?? []).map((line) => h('p.caution', {}, line)),
      check.finish ? h('p.quiet', {}, check.finish) : null)))];
  }

  against(found) {
    const leads = found['read against'];
    if (!leads?.rows?.length) {
      return null;
    }
    return h('div.scrolls', { tabindex: '0', role: 'group', 'aria-label': 'Read against, scrolls sideways' }, h('table.numbers', {},
      h('caption', {}, 'Read against'),
      h('thead', {}, h('tr', {}, ['', 'you', 'healthy', ...leads.letters].map((head) => h('th', { scope: 'col' }, head)))),
      h('tbody', {}, leads.rows.map((row) => h(row.parts ? 'tr.parts' : 'tr', {},
        h('th', { scope: 'row' }, row.what, h('small', {}, [row.where, row.unit].filter(Boolean).join(', '))),
        [row.read, row.healthy, ...row.foretold].map((cell) => h('td', {}, cell)))))));
  }

  noHelp(found) {
    const lines = found.advice['no help says'] ?? [];
    const refused = found.advice['not asked for'] ?? [];
    return [
      lines.length ? h('p', {}, h('b', {}, 'No help: '), lines.join('; ')) : null,
      refused.length ? h('details', {}, h('summary', {}, 'Not asked for'), h('ul', {}, refused.map((one) => h('li', {}, `${one.where}: ${one.why}`)))) : null,
    ];
  }
}

import { button, h, refill } from './dom.js';

/** The one place beside the drawing where something is told at length. Never blocks the rest. */
export class Panel {
  constructor(host) {
    this.host = host;
    this.title = h('h2', { tabindex: '-1' });
    this.body = h('div.body', { tabindex: '0', role: 'group', 'aria-label': 'What is told' });
    this.onClose = null;
    this.back = null;
    this.close = button('Close', () => this.shut(), { 'aria-label': 'Close these details' }, '.close');
    refill(host, h('div.bar', {}, this.title, this.close), this.body);
    host.addEventListener('keydown', (event) => {
      if (event.key === 'Escape' && !event.defaultPrevented) {
        this.shut();
      }
    });
  }

  /**
   * Opens.
   *
   * @param {string} name what it shows, for whoever asks whether it is still there
   * @param {string} title
   * @param {Array} inside
   * @param {{close?: function(), wide?: boolean, quiet?: boolean}} how quiet leaves the focus where it is
   */
  open(name, title, inside, how = {}) {
    if (this.name !== name) {
      this.leave();
      if (!this.name) {
        this.back = document.activeElement;
      }
    }
    this.name = name;
    this.onClose = how.close ?? null;
    this.host.hidden = false;
    this.host.dataset.name = name;
    document.body.dataset.panel = how.wide ? 'wide' : 'side';
    document.body.dataset.told = name;
    this.title.textContent = title;
    refill(this.body, inside);
    if (!how.quiet) {
      this.body.scrollTop = 0;
      this.title.focus({ preventScroll: true });
    }
  }

  is(name) {
    return this.name === name;
  }

  leave() {
    const close = this.onClose;
    this.onClose = null;
    close?.();
  }

  shut() {
    this.leave();
    this.name = '';
    this.host.hidden = true;
    delete this.host.dataset.name;
    delete document.body.dataset.panel;
    delete document.body.dataset.told;
    refill(this.body);
    if (this.back?.isConnected) {
      this.back.focus({ preventScroll: true });
    }
    this.back = null;
  }
}

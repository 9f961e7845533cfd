/** Makes elements. Text goes in as text nodes only, so that nothing from a file is ever markup. */

const SVG = 'http://www.w3.org/2000/svg';

/**
 * Makes an element.
 *
 * @param {string} name tag, with classes after dots: `button.great`
 * @param {Object} with attributes; `on…` is a listener; true is an empty attribute, false none
 * @param {...(Node|string|Array)} inside what it holds
 */
export function h(name, attributes = {}, ...inside) {
  const [tag, ...classes] = name.split('.');
  return fill(document.createElement(tag), classes, attributes, inside);
}

/** The same for a drawing. */
export function s(name, attributes = {}, ...inside) {
  const [tag, ...classes] = name.split('.');
  return fill(document.createElementNS(SVG, tag), classes, attributes, inside);
}

function fill(element, classes, attributes, inside) {
  if (classes.length) {
    element.setAttribute('class', classes.join(' '));
  }
  for (const [key, value] of Object.entries(attributes)) {
    if (key.startsWith('aria-') && typeof value === 'boolean') {
      element.setAttribute(key, String(value));
    } else if (key.startsWith('on')) {
      element.addEventListener(key.slice(2), value);
    } else if (value !== false && value !== undefined && value !== null) {
      element.setAttribute(key, value === true ? '' : value);
    }
  }
  element.append(...inside.flat(9).filter((child) => child !== null && child !== undefined && child !== false));
  return element;
}

/** A button that says what it does. */
export function button(text, press, attributes = {}, classes = '') {
  return h('button' + classes, { type: 'button', onclick: press, ...attributes }, text);
}

/** Changes a text only where it differs, so that nothing is laid out or read aloud in vain. */
export function say(element, text) {
  if (element.textContent !== text) {
    element.textContent = text;
  }
}

/** Takes classes off, where they are: taking off what is not there costs a new style. */
export function unmark(element, ...classes) {
  if (classes.some((one) => element.classList.contains(one))) {
    element.classList.remove(...classes);
  }
}

/** What is wrong and what to do, each a sentence of its own. */
export function sentences(...parts) {
  return parts.filter(Boolean).map((part) => part[0].toUpperCase() + part.slice(1) + (/[.!?…]$/.test(part) ? '' : '.')).join(' ');
}

/** Empties an element and fills it anew. */
export function refill(element, ...inside) {
  element.replaceChildren(...inside.flat(9).filter((child) => child !== null && child !== undefined && child !== false));
  return element;
}

/** Waits until calls have stopped for a while. */
export function calm(milliseconds, call) {
  let waiting = 0;
  return (...given) => {
    clearTimeout(waiting);
    waiting = setTimeout(() => call(...given), milliseconds);
  };
}

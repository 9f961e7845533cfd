// The drawing as a file: an SVG that needs nothing else, and a PNG made of it.

const COLOURS = ['--paper', '--ink', '--tag', '--oki-blue', '--oki-orange',
  '--heat-1', '--heat-2', '--heat-3', '--heat-4', '--heat-5', '--heat-6'];

/** Rules that speak of the drawing, those within conditions left out. */
function rules(document) {
  const found = [];
  for (const sheet of document.styleSheets) {
    let own;
    try {
      own = sheet.cssRules;
    } catch {
      continue; // a sheet of another origin
    }
    for (const rule of own) if (rule.selectorText?.includes('.drawing')) found.push(rule.cssText);
  }
  return found.join('\n');
}

/** Text of an SVG file with its styles inside. */
export function asSvg(svg, { width, height }) {
  const copy = svg.cloneNode(true);
  copy.classList.remove('running', 'pointing', 'guessing');
  copy.setAttribute('viewBox', `0 0 ${width} ${height}`);
  copy.setAttribute('width', width);
  copy.setAttribute('height', height);
  copy.querySelector('.view').removeAttribute('transform');
  const live = getComputedStyle(svg);
  const colours = COLOURS
    .map(name => [name, live.getPropertyValue(name).trim()])
    .filter(([, value]) => value)
    .map(([name, value]) => `${name}:${value};`)
    .join('');
  const style = document.createElementNS('http://www.w3.org/2000/svg', 'style');
  style.textContent = `.drawing{${colours}}\n${rules(svg.ownerDocument)}`;
  copy.prepend(style);
  return `<?xml version="1.0" encoding="UTF-8"?>\n${new XMLSerializer().serializeToString(copy)}`;
}

/** Promise of a PNG blob. */
export async function asPng(text, { width, height }, scale) {
  const address = URL.createObjectURL(new Blob([text], { type: 'image/svg+xml' }));
  try {
    const image = new Image();
    await new Promise((done, failed) => {
      image.onload = done;
      image.onerror = () => failed(new Error('The browser could not read the drawing back.'));
      image.src = address;
    });
    const canvas = document.createElement('canvas');
    canvas.width = width * scale;
    canvas.height = height * scale;
    canvas.getContext('2d').drawImage(image, 0, 0, canvas.width, canvas.height);
    return await new Promise(done => canvas.toBlob(done, 'image/png'));
  } finally {
    URL.revokeObjectURL(address);
  }
}

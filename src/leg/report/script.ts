/**
 * The script of a report: it makes links of the numbers of steps, values, sources and checks, filters by joint, part, load case and state, folds the
 * numbers of pictures away on a screen, lets the keyboard reach what scrolls, and opens everything for printing. The page is whole without it.
 */
export const SCRIPT = `
const all = (selector, from = document) => [...from.querySelectorAll(selector)];
const textOf = (one) => one.textContent;
const places = new Map();
for (const row of all('#steps tr, #steps th, #steps li, #steps p, #chains li, #chains p, #specification tr, #values tr, #sources tr')) {
  const number = /^(?:\\d+\\.\\d+|[FTCQK]\\d+)(?=[ :]|$)/.exec(textOf(row.cells?.[0] ?? row))?.[0];
  if (number === undefined || places.has(number)) continue;
  row.id = /^\\d/.test(number) ? 's' + number : number;
  places.set(number, row.id);
}
const link = (parts, pattern, numberOf) => {
  const texts = [];
  for (const part of all(parts)) {
    const walker = document.createTreeWalker(part, NodeFilter.SHOW_TEXT);
    for (let text = walker.nextNode(); text !== null; text = walker.nextNode()) if (pattern.test(text.data)) texts.push(text);
  }
  for (const text of texts)
    text.replaceWith(...text.data.split(pattern).map((piece, i) => {
      const place = i % 2 === 1 ? places.get(numberOf(piece)) : undefined;
      if (place === undefined) return piece;
      const made = document.createElement('a');
      made.href = '#' + place;
      made.textContent = piece;
      return made;
    }));
};
link('#steps, #chains, #specification, #values', /(\\[[FTCQ]?\\d+(?:\\.\\d+)?\\])/, (piece) => piece.slice(1, -1));
link('#checks, #changes, figure table', /\\b(K\\d+)\\b/, (piece) => piece);

const form = document.querySelector('.filter');
const folds = all('details');
const checks = new Map(all('#checks tbody tr').map((row) => {
  const [number, state, place, , cases] = [...row.cells].map(textOf);
  const at = place.lastIndexOf(', ');
  return [number, { row, state, case: cases, part: at < 0 ? place : place.slice(0, at), joint: at < 0 ? '' : place.slice(at + 2) }];
}));
const marked = [...checks.values()].map((check) => [check.row, check]);
for (const heading of all('#chains h3')) {
  const block = [heading];
  for (let next = heading.nextElementSibling; next !== null && next.tagName !== 'H3'; next = next.nextElementSibling) block.push(next);
  const lines = block.flatMap((one) => [one, ...all('li', one)]).filter((one) => checks.has(one.id));
  for (const line of lines) if (line.tagName === 'LI') marked.push([line, checks.get(line.id)]);
  for (const one of block) marked.push([one, lines.map((line) => checks.get(line.id))]);
}
for (const row of all('#cases tbody tr')) marked.push([row, { case: textOf(row.cells[0]), joint: textOf(row.cells[1]) }]);
for (const row of all('#steps tbody tr')) {
  const joint = textOf(row.cells[1] ?? row).split(', ')[0];
  if ([...checks.values()].some((check) => check.joint === joint)) marked.push([row, { joint }]);
}
for (const select of all('select', form))
  for (const value of [...new Set([...checks.values()].map((check) => check[select.name]))].filter((one) => one !== '')) select.add(new Option(value));
const apply = () => {
  const chosen = [...new FormData(form)].filter(([, value]) => value !== '');
  const fits = (one) => chosen.every(([name, value]) => one[name] === undefined || one[name] === '' || one[name] === value);
  for (const [one, marks] of marked) one.hidden = ![marks].flat().some(fits);
  const shown = [...checks.values()].filter(({ row }) => !row.hidden).length;
  form.querySelector('output').value = shown === checks.size ? '' : shown + ' of ' + checks.size + ' checks shown';
};
const reveal = () => {
  const place = document.getElementById(decodeURIComponent(location.hash.slice(1)));
  if (place === null) return;
  if (place.closest('[hidden]') !== null) { form.reset(); apply(); }
  for (let at = place.closest('details'); at !== null; at = at.parentElement.closest('details')) at.open = true;
  place.scrollIntoView();
};
form.hidden = false;
form.addEventListener('change', apply);
form.addEventListener('reset', () => setTimeout(apply));
form.addEventListener('submit', (event) => event.preventDefault());
addEventListener('hashchange', reveal);

const names = new Set();
const nameOf = (box) => {
  let before = box;
  while (before !== null && !/^H[1-6]$/.test(before.tagName)) before = before.previousElementSibling ?? before.parentElement;
  const own = textOf(box.querySelector('caption') ?? before ?? box);
  let name = own;
  for (let i = 2; names.has(name); i++) name = own + ', part ' + i;
  names.add(name);
  return name;
};
const boxes = all('.wide').map((box) => [box, nameOf(box)]);
const reach = () => {
  for (const [box, name, scrolls] of boxes.map(([one, own]) => [one, own, one.scrollWidth > one.clientWidth]))
    if (scrolls !== box.hasAttribute('tabindex'))
      for (const [key, value] of Object.entries({ tabindex: '0', role: 'region', 'aria-label': name })) scrolls ? box.setAttribute(key, value) : box.removeAttribute(key);
};
for (const fold of folds) { fold.open = false; fold.addEventListener('toggle', reach); }
addEventListener('resize', reach);
reach();
let open = [];
addEventListener('beforeprint', () => { open = folds.filter((fold) => !fold.open); for (const fold of open) fold.open = true; });
addEventListener('afterprint', () => { for (const fold of open) fold.open = false; });
`

/**
 * The script of a report: it makes links of the references in brackets, filters by joint, part, load case and state, folds the numbers of pictures away
 * on a screen, and opens everything for printing. The page is whole without it.
 */
export const SCRIPT = `
const places = new Map();
for (const row of document.querySelectorAll('#steps tr, #steps th, #steps li, #specification tr, #values tr, #sources tr')) {
  const number = /^(?:\\d+\\.\\d+|[FTCQ]\\d+)(?=[ :]|$)/.exec((row.cells?.[0] ?? row).textContent)?.[0];
  if (number === undefined || places.has(number)) continue;
  row.id = /^\\d/.test(number) ? 's' + number : number;
  places.set(number, row.id);
}
const texts = [];
for (const part of document.querySelectorAll('#steps, #chains, #specification, #values')) {
  const walker = document.createTreeWalker(part, NodeFilter.SHOW_TEXT);
  for (let text = walker.nextNode(); text !== null; text = walker.nextNode()) if (text.data.includes('[')) texts.push(text);
}
for (const text of texts) {
  const pieces = text.data.split(/(\\[[FTCQ]?\\d+(?:\\.\\d+)?\\])/).map((piece, i) => {
    const place = i % 2 === 1 ? places.get(piece.slice(1, -1)) : undefined;
    if (place === undefined) return piece;
    const link = document.createElement('a');
    link.href = '#' + place;
    link.textContent = piece;
    return link;
  });
  text.replaceWith(...pieces);
}
const form = document.querySelector('.filter');
const folds = [...document.querySelectorAll('details')];
const marked = [...document.querySelectorAll('main [data-f]')].map((one) => [one, one.dataset.f.split(',')]);
for (const { text, value } of document.querySelectorAll('.filter [name=joint] option'))
  for (const row of document.querySelectorAll('#steps tbody tr'))
    if (value !== '' && row.cells[1].textContent.split(', ')[0] === text) marked.push([row, [value]]);
const rows = [...document.querySelectorAll('#checks tbody tr')];
const apply = () => {
  const chosen = [...new FormData(form).values()].filter((code) => code !== '');
  for (const [one, codes] of marked)
    one.hidden = chosen.some((code) => codes.some((own) => own[0] === code[0]) && !codes.includes(code));
  const shown = rows.filter((row) => !row.hidden).length;
  form.querySelector('output').value = shown === rows.length ? '' : shown + ' of ' + rows.length + ' checks shown';
};
const reveal = () => {
  const place = document.getElementById(decodeURIComponent(location.hash.slice(1)));
  if (place === null) return;
  if (place.closest('[hidden]') !== null) { form.reset(); apply(); }
  for (let at = place.closest('details'); at !== null; at = at.parentElement.closest('details')) at.open = true;
  place.scrollIntoView();
};
for (const fold of folds) fold.open = false;
if (form !== null) {
  form.hidden = false;
  form.addEventListener('change', apply);
  form.addEventListener('reset', () => setTimeout(apply));
  form.addEventListener('submit', (event) => event.preventDefault());
}
addEventListener('hashchange', reveal);
let open = [];
addEventListener('beforeprint', () => { open = folds.filter((fold) => !fold.open); for (const fold of open) fold.open = true; });
addEventListener('afterprint', () => { for (const fold of open) fold.open = false; });
`

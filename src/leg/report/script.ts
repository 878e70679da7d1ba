/**
 * The script of a report: it filters by joint, part, load case and state, folds the numbers of pictures away on a screen, and opens everything for
 * printing. The page is whole without it.
 */
export const SCRIPT = `
const form = document.querySelector('.filter');
const folds = [...document.querySelectorAll('details')];
const marked = [...document.querySelectorAll('main [data-joint], main [data-part], main [data-cases], main [data-state]')];
const rows = [...document.querySelectorAll('#checks tbody tr')];
const apply = () => {
  const chosen = Object.fromEntries(new FormData(form));
  for (const one of marked) {
    const { joint, part, cases, state } = one.dataset;
    one.hidden =
      (chosen.joint !== '' && 'joint' in one.dataset && joint !== chosen.joint) ||
      (chosen.part !== '' && 'part' in one.dataset && part !== chosen.part) ||
      (chosen.state !== '' && 'state' in one.dataset && state !== chosen.state) ||
      (chosen.cases !== '' && 'cases' in one.dataset && !cases.includes('|' + chosen.cases + '|'));
  }
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

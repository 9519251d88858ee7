// The index of the site: a sheet laid over the page, in which entries are found by their words. Until a reader opens it
// nothing of it is asked for but this file.
(() => {
  'use strict';

  const AT_ONCE = 20;
  // Told of what its title and phases do not show.
  const PLACES = { materials: 'in its materials', lessons: 'in a lesson', captions: 'in a caption', texts: 'in its text' };
  const tab = document.querySelector('.findertab');
  if (!tab || typeof HTMLDialogElement === 'undefined') return;
  const opener = tab.querySelector('button');
  const root = new URL('..', document.currentScript.src);

  function make(name, attributes, ...inside) {
    const element = document.createElement(name);
    Object.entries(attributes).forEach(([key, value]) => element.setAttribute(key, value));
    element.append(...inside);
    return element;
  }

  function labelled(words, control) {
    return make('label', { class: `asked-${words.toLowerCase()}` }, make('span', { class: 'label' }, words), control);
  }

  const field = make('input', { type: 'text', role: 'searchbox', autocomplete: 'off', spellcheck: 'false', enterkeyhint: 'search' });
  const phases = make('select', {});
  const years = make('select', {});
  const said = make('p', { class: 'saying', role: 'status' });
  const found = make('ol', { class: 'found' });
  const more = make('button', { type: 'button', class: 'more', hidden: '' });
  const closer = make('button', { type: 'button', class: 'closer' }, 'Close');
  const sheet = make(
    'dialog',
    { class: 'finder', 'aria-labelledby': 'finder-name', closedby: 'any' },
    make('div', { class: 'top' }, make('h2', { id: 'finder-name' }, 'Index of entries'), closer),
    make('div', { class: 'asked', role: 'search' }, labelled('Words', field), labelled('Phase', phases), labelled('Year', years)),
    make('div', { class: 'answer' }, said, found, more),
  );

  function load(path) {
    return new Promise((done, failed) => {
      const script = make('script', { src: new URL(path, root).href });
      script.addEventListener('load', done);
      script.addEventListener('error', () => { script.remove(); failed(new Error(path)); });
      document.head.append(script);
    });
  }

  function choices(select, all, names) {
    select.replaceChildren(make('option', { value: '' }, all), ...names.map(([value, name]) => make('option', { value }, name)));
  }

  let find;
  let reading;

  function read() {
    reading ??= Promise.all(['search.js', 'assets/minisearch.js', 'assets/searcher.js'].map(load)).then(async () => {
      const data = globalThis.ribbandSearch;
      choices(phases, 'All', data.phases.map((name, number) => [number, name]));
      choices(years, 'All', [...new Set(data.entries.map(({ day }) => day.split(' ').pop()))].map((year) => [year, year]));
      find = await globalThis.ribbandSearcher.open(data);
      answer();
    }).catch(() => {
      reading = undefined;
      said.textContent = 'The index cannot be read. Close it and open it again.';
    });
  }

  function counted(number) {
    return number === 1 ? '1 entry' : `${String(number).replace(/\B(?=(\d{3})+$)/g, ',')} entries`;
  }

  function sentence({ how, found: { length } }) {
    if (length === 0) return 'Nothing is written of that.';
    const count = counted(length);
    return {
      one: `${count}.`,
      listed: `${count}, the newest first.`,
      all: `${count}, the best match first.`,
      some: `No entry has all of these words; ${count} with some of them.`,
      near: `Nothing is written like that; ${count} with words near it.`,
    }[length === 1 && (how === 'listed' || how === 'all') ? 'one' : how];
  }

  function row({ entry, where }) {
    const names = entry.phases.map((phase) => globalThis.ribbandSearch.phases[phase]);
    return make(
      'li',
      {},
      make('span', { class: 'day' }, entry.day),
      make('a', { href: new URL(entry.href, root).href }, entry.title),
      make('span', { class: 'phases' }, [...names, ...where in PLACES ? [PLACES[where]] : []].join(', ')),
      make('span', { class: 'hours' }, entry.hours),
    );
  }

  let rest = [];

  function showMore() {
    const rows = rest.splice(0, AT_ONCE).map(row);
    found.append(...rows);
    more.hidden = rest.length === 0;
    more.textContent = `Show ${Math.min(AT_ONCE, rest.length)} more`;
    return rows;
  }

  function answer() {
    if (!find) return;
    const phase = phases.value === '' ? undefined : Number(phases.value);
    const result = find(field.value, phase, years.value || undefined);
    rest = [...result.found];
    found.replaceChildren();
    showMore();
    sheet.querySelector('.answer').scrollTop = 0;
    said.textContent = sentence(result);
  }

  opener.addEventListener('click', () => {
    // Not every browser gives a button the focus when it is clicked; who has it now gets it back in the end.
    opener.focus();
    sheet.showModal();
    field.focus();
    if (!find) {
      said.textContent = 'Reading the index …';
      read();
    }
  });
  closer.addEventListener('click', () => sheet.close());
  [field, phases, years].forEach((control) => control.addEventListener('input', answer));
  more.addEventListener('click', () => showMore()[0].querySelector('a').focus());

  choices(phases, 'All', []);
  choices(years, 'All', []);
  document.body.append(sheet);
  tab.hidden = false;
})();

// The index of the site: a sheet laid over the page, in which entries are found by their words. Until a reader opens it
// nothing of it is asked for but this file. It is open where the page's place in the browser's history says so, with what
// is asked of it: "back" closes it, and whoever comes back from an entry finds it as it was.
(() => {
  'use strict';

  const AT_ONCE = 20;
  // Told of what its title and phases do not show.
  const PLACES = { materials: 'in its materials', lessons: 'in a lesson', captions: 'in a caption', texts: 'in its text' };
  const TOLD = {
    listed: { none: 'No entries.', order: 'the newest first' },
    all: { none: 'No entry has that.', order: 'the best match first' },
  };
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

  const field = make('input', { type: 'text', role: 'searchbox', 'aria-describedby': 'finder-keys', autocomplete: 'off', spellcheck: 'false', enterkeyhint: 'go' });
  const phases = make('select', {});
  const years = make('select', {});
  const said = make('p', { class: 'saying', role: 'status' });
  const keys = make('p', { class: 'keys', id: 'finder-keys' }, 'Enter opens the first, the arrow keys go through them.');
  const found = make('ol', { class: 'found', role: 'list' });
  const more = make('button', { type: 'button', class: 'more', hidden: '' });
  const closer = make('button', { type: 'button', class: 'closer' }, 'Close');
  const sheet = make(
    'dialog',
    { class: 'finder', 'aria-labelledby': 'finder-name', closedby: 'any' },
    make('div', { class: 'top' }, make('h2', { id: 'finder-name' }, 'Index of entries'), closer),
    make('div', { class: 'asked', role: 'search' }, labelled('Words', field), labelled('Phase', phases), labelled('Year', years)),
    make('div', { class: 'answer' }, make('div', { class: 'heard' }, said, keys), found, more),
  );

  function load(path) {
    return new Promise((done, failed) => {
      const script = make('script', { src: new URL(path, root).href });
      script.addEventListener('load', done);
      script.addEventListener('error', () => { script.remove(); failed(new Error(path)); });
      document.head.append(script);
    });
  }

  function choices(select, names) {
    select.replaceChildren(make('option', { value: '' }, 'All'), ...Array.from(names, (name) => make('option', { value: name }, name)));
  }

  function choose(select, name) {
    select.value = name;
    // What there is no more is not asked for.
    if (select.selectedIndex < 0) select.value = '';
  }

  let find;
  let reading;

  function read() {
    reading ??= Promise.all(['search.js', 'assets/minisearch.js', 'assets/searcher.js'].map(load)).then(async () => {
      const data = globalThis.ribbandSearch;
      choices(phases, data.phases);
      choices(years, new Set(data.entries.map(({ day }) => day.split(' ').pop())));
      find = await globalThis.ribbandSearcher.open(data);
      if (place()) resume();
    }).catch(() => {
      reading = undefined;
      said.textContent = 'The index cannot be read. Close it and open it again.';
    });
  }

  function sentence({ how, found: { length } }) {
    const { none, order } = TOLD[how] ?? {};
    if (length === 0) return none;
    const count = String(length).replace(/\B(?=(\d{3})+$)/g, ',');
    if (order) return length === 1 ? '1 entry.' : `${count} entries, ${order}.`;
    const have = length === 1 ? '1 has' : `${count} have`;
    if (how === 'some') return `No entry has all of these words; ${have} some of them.`;
    const alone = !/\s/.test(field.value.trim());
    return alone ? `No entry has that word; ${have} one like it.` : `No entry has these words; ${have} words like them.`;
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
    const phase = globalThis.ribbandSearch.phases.indexOf(phases.value);
    const result = find(field.value, phase < 0 ? undefined : phase, years.value || undefined);
    rest = [...result.found];
    found.replaceChildren();
    showMore();
    sheet.querySelector('.answer').scrollTop = 0;
    said.textContent = sentence(result);
    // Last, as a browser may refuse it to who types very fast.
    keep();
  }

  const place = () => history.state?.index;

  /** @param opened number of the entry that is opened from the list, or none */
  const asked = (opened) => ({ index: { words: field.value, phase: phases.value, year: years.value, opened } });

  const keep = (opened) => history.replaceState(asked(opened), '');

  /** What was asked for here, answered again; the entry that was opened has the focus. */
  function resume() {
    const { phase, year, opened } = place();
    choose(phases, phase);
    choose(years, year);
    answer();
    if (opened === undefined) return;
    while (rest.length > 0 && opened >= found.children.length) showMore();
    found.children[opened]?.querySelector('a').focus();
  }

  let goesBack = false;

  /** Opens or closes as the history says. */
  function follow() {
    goesBack = false;
    if (!place()) {
      sheet.close();
      return;
    }
    if (!sheet.open) {
      // Who has the focus now gets it back in the end.
      opener.focus({ preventScroll: true });
      sheet.showModal();
    }
    field.value = place().words;
    field.focus();
    if (find) {
      resume();
    } else {
      said.textContent = 'Reading the index …';
      read();
    }
  }

  function open() {
    if (sheet.open) return;
    // The index or a picture was closed a moment ago, and the browser has not yet gone back.
    if (history.state) {
      addEventListener('popstate', open, { once: true });
    } else {
      history.pushState(asked(), '');
      follow();
    }
  }

  function closed() {
    // A browser may tell late that it was closed, and of twice at once: it may be open again, or on its way back.
    if (!place() || sheet.open || goesBack) return;
    goesBack = true;
    history.back();
  }

  function leave(event) {
    const link = event.target.closest('a');
    if (link?.href === location.href.split('#')[0]) {
      // The reader is there: to load the page anew would leave a second one to go back through.
      event.preventDefault();
      sheet.close();
    } else if (link) {
      keep([...found.children].indexOf(link.parentElement));
    }
  }

  /** Up and down go through the field, the entries and what shows more of them; Enter in the field opens the first. */
  function go(event) {
    if (event.isComposing || event.ctrlKey || event.metaKey || event.shiftKey || event.altKey) return;
    const stops = [field, ...found.querySelectorAll('a'), ...more.hidden ? [] : [more]];
    const at = stops.indexOf(event.target);
    if (at < 0) return;
    if (event.key === 'Enter' && at === 0 && !event.repeat) found.querySelector('a')?.click();
    const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    if (!step) return;
    event.preventDefault();
    stops[at + step]?.focus();
  }

  opener.addEventListener('click', open);
  sheet.addEventListener('keydown', go);
  closer.addEventListener('click', () => sheet.close());
  sheet.addEventListener('close', closed);
  found.addEventListener('click', leave);
  [field, phases, years].forEach((control) => control.addEventListener('input', answer));
  more.addEventListener('click', () => showMore()[0].querySelector('a').focus());
  addEventListener('popstate', follow);

  choices(phases, []);
  choices(years, []);
  document.body.append(sheet);
  tab.hidden = false;
  follow();
})();

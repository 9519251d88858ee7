// Finds entries by their words: what `search.js` holds, looked through by the engine of `minisearch.js`. Knows no page;
// `finder.js` loads it when a reader first asks.
globalThis.ribbandSearcher = (() => {
  'use strict';

  const WEIGHTS = { title: 8, phases: 3, materials: 3, lessons: 3, captions: 2, texts: 1, days: 1 };
  // These come as words that are folded already.
  const PACKED = ['lessons', 'captions', 'texts'];

  // The same as SearchWords.java does with what is written.
  const PLAIN_LETTERS = {
    ß: 'ss', ø: 'o', æ: 'ae', œ: 'oe', ł: 'l', đ: 'd', ð: 'd', þ: 'th', ı: 'i', ς: 'σ',
  };

  function wordsOf(text) {
    const folded = text
      .replace(/[\u00bc-\u00be\u2150-\u215e\u2189]/g, ' $&')
      .normalize('NFKD').toLowerCase().replaceAll('\u2044', '/')
      .replace(/\p{M}+/gu, '')
      .replace(/(\p{L})['\u2019\u02bc](?=\p{L})/gu, '$1')
      .replace(/[ßøæœłđðþıς]/g, (letter) => PLAIN_LETTERS[letter]);
    return folded.match(/\p{N}+(?:[.,:/]\p{N}+)+|[\p{L}\p{N}]+/gu) ?? [];
  }

  // As Concordance.java packs it: gaps between entries in digits of five bits, the last of a gap from the first half.
  const DIGITS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
  const HALF = 32;

  function unpack(gaps, put) {
    let gap = 0;
    let next = 0;
    for (const digit of gaps) {
      const value = DIGITS.indexOf(digit);
      gap = gap * HALF + (value % HALF);
      if (value < HALF) {
        put(next + gap);
        next += gap + 1;
        gap = 0;
      }
    }
  }

  // The weightiest field in which a word of a hit stands.
  function place({ match }) {
    const fields = Object.values(match).flat();
    return Object.keys(WEIGHTS).find((field) => fields.includes(field));
  }

  function documents(data) {
    const all = data.entries.map((entry, id) => ({
      id,
      title: entry.title,
      phases: entry.phases.map((phase) => data.phases[phase]).join(' '),
      materials: entry.materials.map((material) => data.materials[material]).join(' '),
      lessons: [],
      captions: [],
      texts: [],
      days: entry.day,
    }));
    const words = data.words.split(' ');
    for (const field of PACKED) {
      data[field].split(' ').forEach((gaps, i) => unpack(gaps, (id) => all[id][field].push(words[i])));
    }
    return all;
  }

  /** Whether one of the words is the month's name or the beginning of it. */
  function tells(words, month) {
    return words.some((word) => word.length > 2 && month.startsWith(word));
  }

  /** A function that finds; comes when all is read. */
  async function open(data) {
    const engine = new globalThis.MiniSearch({
      fields: Object.keys(WEIGHTS),
      stringifyField: (value, field) => (PACKED.includes(field) ? value.join(' ') : String(value)),
      tokenize: (text, field) => (PACKED.includes(field) ? text.split(' ') : wordsOf(text)),
      processTerm: (word) => word || null,
      searchOptions: { boost: WEIGHTS },
    });
    const days = data.entries.map(({ day }) => wordsOf(day));
    await engine.addAllAsync(documents(data), { chunkSize: 200 });

    /**
     * @param phase number of a phase, or none
     * @param year as it is written, or none
     * @returns how it was found: 'listed' with no word asked for, else by 'all' words, by 'some', or 'near'; and what: each
     *     an entry and the field it was found in, none where it is listed
     */
    return function find(text, phase, year) {
      const fits = ({ id }) => (phase === undefined || data.entries[id].phases.includes(phase))
        && (year === undefined || data.entries[id].day.endsWith(` ${year}`));
      const words = wordsOf(text);
      if (words.length === 0) {
        return { how: 'listed', found: data.entries.filter((_, id) => fits({ id })).map((entry) => ({ entry })) };
      }
      // Words without a month or a year are looked for in no date: most numbers are no day.
      const dated = days.some(([, month, year]) => words.includes(year) || tells(words, month));
      // Who says a day and its month means that day, unless a title says the same.
      const meant = ({ id }) => {
        const title = wordsOf(data.entries[id].title);
        if (words.every((word) => title.includes(word))) return 2;
        return words.includes(days[id][0]) && tells(words, days[id][1]) ? 1 : 0;
      };
      const ways = { all: { combineWith: 'AND' }, some: { combineWith: 'OR' }, near: { combineWith: 'AND', fuzzy: 0.25 } };
      const looked = {
        fields: Object.keys(WEIGHTS).filter((field) => dated || field !== 'days'),
        // 2 is no beginning of 20 May 2024.
        prefix: (word) => !dated || !/^\d{1,2}$/.test(word),
        filter: fits,
      };
      for (const [how, way] of Object.entries(ways)) {
        const hits = engine.search(text, { ...looked, ...way });
        // Of two that fit alike the newer stands first.
        hits.sort((a, b) => (dated ? meant(b) - meant(a) : 0) || b.score - a.score || a.id - b.id);
        if (hits.length > 0) return { how, found: hits.map((hit) => ({ entry: data.entries[hit.id], where: place(hit) })) };
      }
      return { how: 'all', found: [] };
    };
  }

  return { open, wordsOf };
})();

// Shows the pictures of a page one at a time, over the page. Without it a picture opens as a page of its own.
// The viewer is open where the page's place in the browser's history says so: that is what makes "back" close it.
(() => {
  'use strict';

  if (!globalThis.HTMLDialogElement) return;

  const FAR = 40; // px that a finger goes to turn over a picture
  const CALM = 400; // ms in which a second press of the same finger may come
  const STEPS = { ArrowLeft: () => at - 1, ArrowRight: () => at + 1, Home: () => 0, End: () => run.length - 1 };

  let run = []; // the pictures of the page in its order, once one is asked for
  let places = new Map(); // which of them a link opens
  let at = 0;
  let busy = 0; // when the viewer was opened or swiped last
  let finger = null;

  function element(name, settings, ...children) {
    const made = Object.assign(document.createElement(name), settings);
    made.append(...children);
    return made;
  }

  function cell(name, label, content) {
    return element('p', { className: `cell ${name}` }, element('span', { className: 'label', textContent: label }), ' ', content);
  }

  function button(words, press) {
    const made = element('button', { type: 'button', textContent: words });
    made.addEventListener('click', press);
    return made;
  }

  const count = element('span', {});
  const words = element('span', { className: 'words' });
  const source = element('span', {});
  const from = cell('from', 'Entry', source);
  const news = element('div', { className: 'news', id: 'viewer-news' }, cell('count', 'Picture', count), cell('shows', 'What it shows', words));
  const stage = element('div', { className: 'stage' });
  const before = button('Previous', () => show(at - 1));
  const after = button('Next', () => show(at + 1));
  const keys = element('div', { className: 'keys' }, before, after, button('Close', () => viewer.close()));
  const viewer = element('dialog', { className: 'viewer', tabIndex: -1 },
    stage, element('div', { className: 'block' }, news, from, keys));
  viewer.setAttribute('aria-label', 'Pictures of this page');
  viewer.setAttribute('aria-describedby', news.id);
  news.setAttribute('role', 'status');
  news.setAttribute('aria-atomic', 'true');

  /** A link to the largest print of the picture in it; the one that stands for an entry leads to the entry. */
  function isPicture(link) {
    return link?.firstElementChild?.srcset?.includes(`${link.getAttribute('href')} `);
  }

  /** Reads the page; the same picture with the same words stands in the run once. */
  function read() {
    const known = new Map();
    run = [];
    places = new Map();
    [...document.querySelectorAll('#main a')].filter(isPicture).forEach((link) => {
      const print = link.firstElementChild;
      const told = link.closest('figure')?.querySelector('figcaption')?.cloneNode(true);
      const entry = told?.querySelector('.source');
      entry?.remove();
      const caption = told?.textContent.trim() || print.alt;
      const key = [link.href, caption, entry?.href].join('\n');
      if (!known.has(key)) known.set(key, run.push({ link, print, caption, entry }) - 1);
      places.set(link, known.get(key));
    });
  }

  /** As large as it fits, in its own shape, and never larger than its finest print. */
  function fit({ print, image }) {
    const shape = print.getAttribute('width') / print.getAttribute('height');
    const finest = parseInt(print.srcset.match(/(\d+)w$/)[1], 10);
    image.width = Math.max(1, Math.floor(Math.min(stage.clientWidth, stage.clientHeight * shape, finest)));
    image.height = Math.max(1, Math.round(image.width / shape));
    image.sizes = `${image.width}px`;
  }

  /** The picture's own element; what is made here is being loaded. */
  function shown(picture) {
    if (!picture.image) {
      picture.image = element('img', { alt: picture.print.alt, draggable: false });
      picture.image.addEventListener('error', () => {
        picture.lost = element('p', { className: 'lost', role: 'alert', textContent: 'This picture cannot be shown: its file is missing or damaged.' });
        picture.image.replaceWith(picture.lost);
      });
      picture.image.srcset = picture.print.srcset;
      picture.image.src = picture.link.href;
    }
    fit(picture);
    return picture.lost ?? picture.image;
  }

  function show(wanted) {
    if (!run[wanted]) return;
    at = wanted;
    const { caption, entry } = run[at];
    count.textContent = `${at + 1} of ${run.length}`;
    words.textContent = caption;
    source.replaceChildren(...entry ? [entry] : []);
    from.hidden = !entry;
    before.hidden = after.hidden = run.length === 1;
    // At an end a button keeps the focus, so it is not taken away.
    before.setAttribute('aria-disabled', at === 0);
    after.setAttribute('aria-disabled', at === run.length - 1);
    stage.replaceChildren(shown(run[at]));
    [run[at + 1], run[at - 1]].forEach((next) => next && shown(next));
    // Last, as a browser may refuse it to who presses very fast.
    if (place() !== at) history.replaceState({ picture: at }, '');
  }

  const place = () => history.state?.picture;

  let goesBack = false;

  /** Opens or closes as the history says. */
  function follow() {
    goesBack = false;
    if (place() === undefined) {
      viewer.close();
      history.scrollRestoration = 'auto';
      return;
    }
    if (run.length === 0) read();
    if (!run[place()]) {
      history.replaceState(null, '');
      return;
    }
    if (!viewer.isConnected) document.body.append(viewer);
    if (!viewer.open) viewer.showModal();
    show(place());
    viewer.focus();
  }

  function open(link) {
    read();
    // On the way back the page goes where the picture seen last is, not where it was.
    history.scrollRestoration = 'manual';
    history.pushState({ picture: places.get(link) }, '');
    busy = performance.now();
    follow();
  }

  function closed() {
    // A browser may tell of two closings at once, and the second step back would leave the page.
    if (place() !== undefined && !goesBack) {
      goesBack = true;
      history.back();
    }
    run[at].link.scrollIntoView({ block: 'nearest' });
    run[at].link.focus({ preventScroll: true });
  }

  document.addEventListener('click', (event) => {
    const link = event.target.closest('#main a');
    const plain = event.button === 0 && !(event.ctrlKey || event.metaKey || event.shiftKey || event.altKey);
    if (!plain || event.defaultPrevented || !isPicture(link)) return;
    event.preventDefault();
    // It, or the index, was closed a moment ago, and the browser has not yet gone back.
    if (history.state) addEventListener('popstate', () => open(link), { once: true });
    else open(link);
  });

  document.addEventListener('keydown', (event) => {
    if (!viewer.open || event.ctrlKey || event.metaKey || event.shiftKey || event.altKey) return;
    // The browser closes it; what lies below has no part in it.
    if (event.key === 'Escape') event.stopPropagation();
    if (!Object.hasOwn(STEPS, event.key)) return;
    event.preventDefault();
    show(STEPS[event.key]());
  });

  viewer.addEventListener('click', (event) => {
    const beside = event.target === stage || event.target === viewer;
    if (beside && event.timeStamp - busy > CALM) viewer.close();
  });

  stage.addEventListener('pointerdown', (event) => {
    drop();
    if (event.isPrimary && event.pointerType !== 'mouse') finger = event;
  });

  viewer.addEventListener('pointermove', (event) => {
    if (finger) stage.style.translate = `${event.clientX - finger.clientX}px`;
  });

  viewer.addEventListener('pointerup', (event) => {
    if (!finger) return;
    const [x, y] = [event.clientX - finger.clientX, event.clientY - finger.clientY];
    drop();
    if (Math.max(Math.abs(x), Math.abs(y)) < FAR) return;
    busy = event.timeStamp;
    if (Math.abs(x) > 2 * Math.abs(y)) show(at - Math.sign(x));
    else if (y > 2 * Math.abs(x)) viewer.close();
  });

  viewer.addEventListener('pointercancel', drop);

  function drop() {
    finger = null;
    stage.style.translate = '';
  }

  // A picture that the reader has zoomed into is moved about by the browser.
  globalThis.visualViewport?.addEventListener('resize', () => stage.classList.toggle('zoomed', visualViewport.scale > 1));
  new ResizeObserver(() => run[at] && viewer.open && fit(run[at])).observe(stage);
  viewer.addEventListener('close', closed);
  addEventListener('popstate', follow);
  follow();
})();

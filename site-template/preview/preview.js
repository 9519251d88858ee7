// Keeps an open page in step with the journal: asks what is new, brings the reader back to where he was, and shows what
// the terminal tells. Only pages that `watch` serves have it.
(() => {
  'use strict';

  const EVERY = 400;
  const EVERY_IF_GONE = 1500;
  const PLACE = 'ribband-place';
  const HIDDEN = 'ribband-hidden';
  const edition = document.currentScript.src.split('?')[1];
  // Pages of the preview's own have a place for what is told.
  const here = document.querySelector('.told-here');
  const box = here ?? document.createElement('div');
  // None that is told, so that the first answer tells how things are.
  let mark = 'new';
  let gone = 0;

  const folds = () => [...document.querySelectorAll('details')];

  // A page that stands for another leaves alone what that one kept.
  function keepPlace() {
    if (here) return;
    sessionStorage.setItem(PLACE, JSON.stringify({
      page: location.pathname, x: scrollX, y: scrollY, open: folds().map((fold) => fold.open),
    }));
  }

  function comeBack() {
    const kept = JSON.parse(sessionStorage.getItem(PLACE) ?? '{}');
    if (here || kept.page !== location.pathname) return;
    sessionStorage.removeItem(PLACE);
    const all = folds();
    if (all.length === kept.open.length) all.forEach((fold, i) => { fold.open = kept.open[i]; });
    const go = () => scrollTo({ left: kept.x, top: kept.y, behavior: 'instant' });
    let own = false;
    ['wheel', 'touchstart', 'pointerdown', 'keydown'].forEach((moved) => {
      addEventListener(moved, () => { own = true; }, { once: true, passive: true });
    });
    go();
    // Once more when all has its size, unless the reader has gone on meanwhile.
    addEventListener('load', () => { if (!own) requestAnimationFrame(go); }, { once: true });
  }

  function hide() {
    sessionStorage.setItem(HIDDEN, mark);
    box.replaceChildren();
  }

  function tell(told) {
    mark = told.dataset.mark;
    if (mark === '') sessionStorage.removeItem(HIDDEN);
    const shown = told.children.length > 0 && (here || sessionStorage.getItem(HIDDEN) !== mark);
    if (shown && !here) {
      const button = document.createElement('button');
      button.type = 'button';
      button.textContent = 'Hide';
      button.addEventListener('click', hide);
      told.append(button);
    }
    box.replaceChildren(...shown ? [told] : []);
  }

  function tellGone() {
    const told = document.createElement('div');
    const words = document.createElement('p');
    words.textContent = 'Ribband no longer watches: this page may be older than the journal.';
    told.className = 'told';
    told.append(words);
    box.replaceChildren(told);
    mark = 'gone';
  }

  async function look() {
    try {
      const answer = await fetch(`/.ribband/now?${edition}.${mark}`, { cache: 'no-store' });
      gone = 0;
      if (answer.status === 200) {
        const page = new DOMParser().parseFromString(await answer.text(), 'text/html');
        const told = page.querySelector('.told');
        if (told.dataset.edition !== edition) {
          keepPlace();
          location.reload();
          return;
        }
        tell(told);
      }
    } catch {
      gone += 1;
      // A single miss may be a start afresh.
      if (gone === 2) tellGone();
    }
    setTimeout(lookIfSeen, gone > 0 ? EVERY_IF_GONE : EVERY);
  }

  // A page that nobody sees asks nothing; it asks at once when it is seen again.
  function lookIfSeen() {
    if (document.hidden) document.addEventListener('visibilitychange', lookIfSeen, { once: true });
    else look();
  }

  if (!here) {
    box.className = 'told-box';
    box.setAttribute('role', 'status');
    document.body.append(box);
    addEventListener('keydown', (pressed) => { if (pressed.key === 'Escape' && box.firstChild) hide(); });
  }
  comeBack();
  lookIfSeen();
})();

// What is looked at in an open page. Each check gives sentences, none where all is well.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const WCAG_22_AA = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22a', 'wcag22aa', 'best-practice'];
// WCAG 2.2, 1.4.12: what a reader may set without losing content.
const TEXT_SPACING = '* { line-height: 1.5 !important; letter-spacing: 0.12em !important; '
  + 'word-spacing: 0.16em !important; } p { margin-bottom: 2em !important; }';

/** The words of the page, as a reader sees them. */
export function words(tab) {
  return tab.$eval('main', (main) => main.innerText);
}

/** Opens every fold, so that what lies in it is looked at too. */
export function unfold(tab) {
  return tab.$$eval('details', (folds) => folds.forEach((fold) => { fold.open = true; }));
}

/** WCAG 2.2, 1.4.10: nothing is wider than the page; a region that scrolls by itself may be. */
export function reflow(tab) {
  return tab.evaluate(() => {
    const wide = document.scrollingElement.scrollWidth - innerWidth;
    return wide > 0 ? [`scrolls sideways by ${wide} px`] : [];
  });
}

/** The same, and no words cut off, with the spacing of WCAG 2.2, 1.4.12. Leaves the page spaced. */
export async function spacing(tab) {
  await tab.evaluate((css) => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(css);
    document.adoptedStyleSheets = [sheet];
  }, TEXT_SPACING);
  const cut = await tab.evaluate(() => [...document.body.querySelectorAll('*')]
    .filter((e) => e.innerText?.trim() && e.clientWidth > 1)
    .filter((e) => /hidden|clip/.test(getComputedStyle(e).overflow))
    .filter((e) => e.scrollWidth > e.clientWidth + 1 || e.scrollHeight > e.clientHeight + 1)
    .map((e) => `cuts words off: ${e.outerHTML.slice(0, 120)}`));
  return [...await reflow(tab), ...cut];
}

/** Every rule of axe for WCAG 2.2 A and AA, and its good practice. */
export async function access(tab) {
  // Evaluated through the debugger, so the page's own policy stays as it is.
  await tab.evaluate(AXE);
  const { violations } = await tab.evaluate((tags) => globalThis.axe.run(document, {
    runOnly: { type: 'tag', values: tags },
    resultTypes: ['violations'],
    preload: false,
  }), WCAG_22_AA);
  return violations.map(({ id, help, nodes }) => `${id}: ${help} | `
    + nodes.slice(0, 3).map((n) => `${n.html.slice(0, 120)} ${n.failureSummary}`).join(' | '));
}

/** The tab key goes through the page, and whatever has the focus shows it (WCAG 2.2, 2.4.7). */
export async function focus(tab) {
  const dark = [];
  for (let step = 0; step < 40; step++) {
    await tab.keyboard.press('Tab');
    const bare = await tab.evaluate(async () => {
      // The page scrolls to what has the focus a frame later.
      await new Promise((drawn) => { requestAnimationFrame(() => requestAnimationFrame(drawn)); });
      const held = document.activeElement;
      if (held === document.body) return 'end';
      const { outlineStyle, outlineWidth } = getComputedStyle(held);
      const box = held.getBoundingClientRect();
      const seen = outlineStyle !== 'none' && parseFloat(outlineWidth) >= 1
        && box.right > 0 && box.bottom > 0 && box.top < innerHeight;
      return seen ? '' : `hides its focus: ${held.outerHTML.slice(0, 120)}`;
    });
    if (bare === 'end') break;
    if (bare) dark.push(bare);
  }
  return dark;
}

/** Every shown picture loads, keeps its shape, and is fine enough without waste. */
export function pictures(tab) {
  return tab.evaluate(async () => {
    const wrong = [];
    // A picture that the page shows twice is fetched once: the small print is then the large one again, without waste.
    const fetched = new Set();
    for (const img of document.images) {
      if (img.getClientRects().length === 0) continue;
      img.scrollIntoView();
      await Promise.race([img.decode().catch(() => {}), new Promise((late) => { setTimeout(late, 4000); })]);
      const said = img.getAttribute('width') / img.getAttribute('height');
      const shown = img.clientWidth / img.clientHeight;
      if (img.naturalWidth === 0) wrong.push(`does not load: ${img.src}`);
      else if (!(Math.abs(said / shown - 1) <= 0.02)) wrong.push(`is out of shape: ${img.src} ${said} ${shown}`);
      if (!img.srcset || img.naturalWidth === 0) continue;
      const widths = img.srcset.split(',').map((c) => c.trim().split(/\s+/))
        .map(([path, width]) => ({ url: new URL(path, img.baseURI).href, width: parseInt(width, 10) }))
        .sort((a, b) => a.width - b.width);
      const at = widths.findIndex(({ url }) => url === img.currentSrc);
      const needed = img.clientWidth * devicePixelRatio;
      const told = `${img.currentSrc} for ${needed} px, sizes ${img.sizes}`;
      // A browser takes the smaller of two candidates up to their geometric mean, here 0.71 at worst. A tall print is
      // narrower than the place that `sizes` tells of, so waste begins at four times the dots.
      if (at < 0) wrong.push(`picks no candidate: ${told}`);
      else if (widths[at].width < 0.7 * needed && at < widths.length - 1) wrong.push(`is too coarse: ${told}`);
      else if (at > 0 && widths[at].width >= 2 * needed && widths[at - 1].width >= needed) {
        if (!fetched.has(img.currentSrc)) wrong.push(`is needlessly large: ${told}`);
      }
      fetched.add(img.currentSrc);
    }
    return wrong;
  });
}

/** The lettering of drawings, which axe passes over: contrast (WCAG 2.2, 1.4.3), on the page, no two on one spot. */
export function lettering(tab) {
  return tab.evaluate(() => {
    const wrong = [];
    const parts = (colour) => (colour.match(/[\d.]+/g) ?? []).map(Number);
    const luminance = (colour) => {
      const [r, g, b] = parts(colour).map((v) => v / 255)
        .map((v) => (v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4));
      return 0.2126 * r + 0.7152 * g + 0.0722 * b;
    };
    const ground = (e) => {
      const colour = e ? getComputedStyle(e).backgroundColor : 'rgb(255, 255, 255)';
      return (parts(colour)[3] ?? 1) === 0 ? ground(e.parentElement) : colour;
    };
    const scrolls = (e) => e && (/auto|scroll/.test(getComputedStyle(e).overflowX) || scrolls(e.parentElement));
    for (const svg of document.querySelectorAll('svg')) {
      const texts = [...svg.querySelectorAll('text')].filter((t) => t.textContent.trim() && t.getClientRects().length);
      const boxes = texts.map((t) => {
        const { left, right, top, bottom } = t.getBoundingClientRect();
        // The box leaves room for accents and tails; the letters keep to the middle of it.
        return { left: left + 1, right: right - 1, top: top + (bottom - top) * 0.25, bottom: bottom - (bottom - top) * 0.25 };
      });
      texts.forEach((text, i) => {
        const said = text.textContent.trim().slice(0, 40);
        const [a, b] = [luminance(getComputedStyle(text).fill), luminance(ground(svg))];
        const ratio = (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
        if (!(ratio >= 4.5)) wrong.push(`contrast ${ratio.toFixed(2)} of "${said}"`);
        if (!scrolls(svg) && (boxes[i].left < -1 || boxes[i].right > innerWidth + 1)) wrong.push(`leaves the page: "${said}"`);
        boxes.slice(0, i).forEach((other, j) => {
          const apart = other.right <= boxes[i].left || boxes[i].right <= other.left
            || other.bottom <= boxes[i].top || boxes[i].bottom <= other.top;
          if (!apart) wrong.push(`"${said}" lies on "${texts[j].textContent.trim().slice(0, 40)}"`);
        });
      });
    }
    return wrong;
  });
}

/**
 * Next to nothing moves while the page loads and its pictures are scrolled through: a sum of 0.1 of layout shifts is
 * what web.dev, "Cumulative Layout Shift", calls good (from memory).
 */
export function shift(tab) {
  return tab.evaluate(() => new Promise((done) => {
    let sum = 0;
    new PerformanceObserver((list) => list.getEntries().forEach((e) => { sum += e.value; }))
      .observe({ type: 'layout-shift', buffered: true });
    setTimeout(() => done(sum > 0.1 ? [`layout shifts by ${sum}`] : []), 300);
  }));
}

/** The page prints, and nothing is cut off at the edge of the paper. */
export async function print(tab) {
  const sheets = Buffer.from(await tab.pdf({ format: 'A4' })).toString('latin1').match(/\/Type\s*\/Page[^s]/g);
  return [...sheets === null ? ['prints no page'] : [], ...await reflow(tab), ...await drawnOnce(tab)];
}

/** Of each chart one drawing is seen, that for the room there is. */
function drawnOnce(tab) {
  return tab.evaluate(() => [...document.querySelectorAll('.chart')]
    .map((chart) => [chart.id, [...chart.querySelectorAll('svg')].filter((svg) => svg.checkVisibility()).length])
    .filter(([, drawings]) => drawings !== 1)
    .map(([id, drawings]) => `${id} has ${drawings} drawings`));
}

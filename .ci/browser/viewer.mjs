// Does with the picture viewer what readers do, in Chromium, and tells what went wrong, as JSON on standard output.
// Standard input: {"chromium": path, "site": folder, "pages": [four pictures, one picture, none, the month]}.
// A finding: {"check", "page", "view", "what"}.
import assert from 'node:assert/strict';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import puppeteer from 'puppeteer-core';
import * as checks from './checks.mjs';
import { serve } from './serve.mjs';

const PATIENCE = 20_000;
const { chromium, site, pages: [FOUR, ONE, NONE, MONTH] } = JSON.parse(readFileSync(0, 'utf8'));
const PLANK = '#main .wall a:has(> img[alt="A plank on moulds"])';
const CAPTIONS = ['The twist, close', 'The first plank', 'A stem', 'The whole shop'];
const LOST = 'This picture cannot be shown: its file is missing or damaged.';

/** What a reader has before him. */
function seen(tab) {
  return tab.evaluate(() => {
    const viewer = document.querySelector('dialog.viewer');
    const held = document.activeElement;
    const text = (part) => viewer?.querySelector(part)?.innerText ?? '';
    return {
      open: viewer?.matches(':modal') ?? false,
      // Closed, the browser goes back by one; it is there a moment later.
      settled: (viewer?.open ?? false) === (history.state !== null),
      count: text('.count span + span'),
      words: text('.words'),
      focus: held === document.body ? 'page' : viewer?.contains(held) ? `viewer ${held.tagName === 'DIALOG' ? '' : held.innerText}`.trim()
        : held.firstElementChild?.alt ?? held.innerText,
    };
  });
}

/** Waits until the reader sees that; fails with what he sees instead. */
async function sees(tab, wanted) {
  let last;
  for (const late = Date.now() + PATIENCE; Date.now() < late;) {
    const all = await seen(tab);
    last = Object.fromEntries(Object.keys(wanted).map((key) => [key, all[key]]));
    if (Object.keys(wanted).every((key) => last[key] === wanted[key])) return;
    // The picture alone: the reader has left the page.
    if (wanted.open && tab.url().endsWith('.jpg')) break;
    await new Promise((glance) => { setTimeout(glance, 20); });
  }
  assert.deepEqual(last, wanted);
}

const shows = (tab, place) => sees(tab, { open: true, count: `${place} of 4`, words: CAPTIONS[place - 1] });
const closed = (tab, more = {}) => sees(tab, { open: false, settled: true, ...more });

async function opened(tab, place = 2) {
  await tab.click(PLANK);
  await shows(tab, place);
}

/** As a reader reloads a page, who does not wait for the browser's word that it has loaded. */
async function reloaded(tab) {
  await tab.evaluate(() => { globalThis.old = true; setTimeout(() => location.reload()); });
  await tab.waitForFunction(() => globalThis.old === undefined && document.readyState === 'complete', { timeout: PATIENCE });
}

async function press(tab, ...keys) {
  for (const key of keys) await tab.keyboard.press(key);
}

/** The shown picture when it is there, and the place it takes. */
function print(tab) {
  return tab.evaluate(async () => {
    const box = (img) => { const { x, y, width, height } = img.getBoundingClientRect(); return { x, y, width, height }; };
    const img = document.querySelector('dialog.viewer img');
    const early = box(img);
    await img.decode();
    return {
      early, box: box(img), natural: img.naturalWidth / img.naturalHeight, file: img.currentSrc.match(/-(\d+)\.jpg$/)[1],
      visible: [innerWidth, innerHeight],
    };
  });
}

async function swipe(tab, [x, y], [dx, dy]) {
  const { client } = tab;
  const at = (part) => [{ x: x + dx * part, y: y + dy * part }];
  await client.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: at(0) });
  for (const part of [0.3, 0.6, 1]) await client.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: at(part) });
  await client.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
}

/** Where the tab stands in its history. */
const entry = (tab) => tab.client.send('Page.getNavigationHistory').then((h) => h.currentIndex);

const PHONE = { width: 360, height: 740, deviceScaleFactor: 2, hasTouch: true, isMobile: true };

const does = {
  async 'a click opens, the keys go through, no end wraps'(tab) {
    await opened(tab);
    await sees(tab, { focus: 'viewer' });
    await press(tab, 'ArrowRight'); await shows(tab, 3);
    await press(tab, 'ArrowRight', 'ArrowRight', 'ArrowRight'); await shows(tab, 4);
    await press(tab, 'ArrowLeft'); await shows(tab, 3);
    await press(tab, 'Home'); await shows(tab, 1);
    await press(tab, 'ArrowLeft'); await shows(tab, 1);
    await press(tab, 'End'); await shows(tab, 4);
    await press(tab, 'Escape'); await closed(tab);
  },
  async 'the keyboard alone opens, goes on and closes, and finds its place again'(tab) {
    await tab.setViewport({ width: 1280, height: 420 });
    for (let step = 0; (await seen(tab)).focus !== 'A plank on moulds'; step++) {
      assert.ok(step < 40, 'the picture is not reached by Tab');
      await press(tab, 'Tab');
    }
    await press(tab, 'Enter'); await shows(tab, 2);
    await press(tab, 'Tab'); await sees(tab, { focus: 'viewer Previous' });
    await press(tab, 'Tab'); await sees(tab, { focus: 'viewer Next' });
    await press(tab, 'Enter', 'Enter'); await shows(tab, 4);
    await press(tab, 'Enter'); await shows(tab, 4);
    await sees(tab, { focus: 'viewer Next' });
    for (let step = 0; step < 8; step++) {
      await press(tab, 'Tab');
      assert.match((await seen(tab)).focus, /^(viewer|page)/);
    }
    await press(tab, 'Escape');
    await closed(tab, { focus: 'The whole shop' });
    assert.ok(await tab.evaluate(() => {
      const { top, bottom } = document.activeElement.getBoundingClientRect();
      return bottom > 0 && top < innerHeight;
    }), 'the picture seen last is out of sight');
  },
  async 'back closes, forward opens, no dead entry stays'(tab) {
    const before = await entry(tab);
    await opened(tab);
    await press(tab, 'ArrowRight'); await shows(tab, 3);
    await tab.goBack(); await closed(tab, { focus: 'A stem' });
    await tab.goForward(); await sees(tab, { open: true });
    await press(tab, 'Escape'); await closed(tab);
    await opened(tab);
    const button = await tab.waitForSelector('dialog.viewer button:last-child');
    await button.click(); await closed(tab);
    assert.equal(await entry(tab), before, 'the history has grown');
  },
  async 'a reload shows the picture again, and back still closes'(tab) {
    await opened(tab);
    await press(tab, 'ArrowRight'); await shows(tab, 3);
    await reloaded(tab); await shows(tab, 3);
    await press(tab, 'Escape'); await closed(tab, { focus: 'A stem' });
    await opened(tab);
    await reloaded(tab); await shows(tab, 2);
    await tab.goBack(); await closed(tab);
    // A picture that is there no more.
    await tab.evaluate(() => history.pushState({ picture: 9 }, ''));
    await reloaded(tab); await closed(tab);
    await opened(tab);
  },
  async 'quick presses do what they say'(tab) {
    const before = await entry(tab);
    // The second press of a double click falls beside the tall picture.
    await tab.setViewport({ width: 700, height: 900 });
    const tall = await tab.$('#main a:has(> img[alt="A stem"])');
    await tall.scrollIntoView();
    const stem = await tall.boundingBox();
    await tab.mouse.click(stem.x + 9, stem.y + 9, { count: 2 }); await shows(tab, 3);
    assert.equal(await tab.evaluate((x, y) => document.elementFromPoint(x, y).className, stem.x + 9, stem.y + 9), 'stage');
    await press(tab, 'Escape'); await closed(tab);
    await opened(tab);
    // Closed and opened again before the browser has gone back.
    await tab.evaluate((plank) => {
      const viewer = document.querySelector('dialog.viewer');
      viewer.addEventListener('close', () => document.querySelector(plank).click(), { once: true });
      viewer.close();
    }, PLANK);
    await sees(tab, { open: true, settled: true, words: CAPTIONS[1] });
    await press(tab, 'Escape', 'Escape'); await closed(tab, { focus: 'A plank on moulds' });
    assert.ok(tab.url().endsWith(FOUR), 'has left the page');
    assert.equal(await entry(tab), before);
  },
  async 'a click beside closes, one on the picture or the block does not'(tab) {
    await opened(tab);
    await new Promise((calm) => { setTimeout(calm, 450); });
    await tab.click('dialog.viewer img');
    await tab.click('dialog.viewer .words');
    await shows(tab, 2);
    await tab.mouse.click(5, 5); await closed(tab);
  },
  async 'a finger turns over, both ways, and draws down'(tab) {
    await tab.setViewport(PHONE);
    await tab.tap(PLANK); await shows(tab, 2);
    await swipe(tab, [250, 200], [-120, 10]); await shows(tab, 3);
    await swipe(tab, [250, 200], [-120, 10]); await shows(tab, 4);
    await swipe(tab, [250, 200], [-120, 10]); await shows(tab, 4);
    await swipe(tab, [80, 200], [120, 10]); await shows(tab, 3);
    await swipe(tab, [80, 200], [20, 0]); await shows(tab, 3);
    await swipe(tab, [180, 100], [5, 200]); await closed(tab);
  },
  async 'two fingers zoom, and then one moves about'(tab) {
    await tab.setViewport(PHONE);
    await tab.tap(PLANK); await shows(tab, 2);
    const touch = () => tab.$eval('dialog.viewer .stage', (stage) => getComputedStyle(stage).touchAction);
    assert.equal(await touch(), 'pinch-zoom');
    await tab.client.send('Input.synthesizePinchGesture', { x: 180, y: 250, scaleFactor: 2 });
    await tab.waitForFunction('visualViewport.scale > 1.5', { timeout: PATIENCE });
    await tab.waitForSelector('dialog.viewer .stage.zoomed', { timeout: PATIENCE });
    assert.equal(await touch(), 'auto');
    await swipe(tab, [250, 200], [-120, 10]); await shows(tab, 2);
  },
  async 'a picture is whole, in its shape, as fine as the screen, and moves nothing'(tab) {
    await tab.evaluate(() => {
      globalThis.moved = 0;
      new PerformanceObserver((list) => list.getEntries().forEach((e) => { globalThis.moved += e.value; }))
        .observe({ type: 'layout-shift' });
    });
    // [screen, the file's width of each picture of the run]
    const SCREENS = [
      [{ width: 1440, height: 900, deviceScaleFactor: 1 }, ['1000', '1600', '960', '1600']],
      [{ width: 768, height: 1024, deviceScaleFactor: 1 }, ['960', '960', '960', '960']],
      [{ width: 360, height: 740, deviceScaleFactor: 2 }, ['960', '960', '960', '960']],
      [{ width: 320, height: 640, deviceScaleFactor: 1 }, ['480', '480', '480', '480']],
    ];
    const FINEST = [1000, 1600, 1000, 1600];
    for (const [screen, files] of SCREENS) {
      await tab.setViewport(screen);
      await reloaded(tab);
      await tab.click(PLANK); await shows(tab, 2);
      await press(tab, 'Home');
      const taken = [];
      for (let place = 1; place <= 4; place++) {
        await shows(tab, place);
        const { early, box, natural, file, visible } = await print(tab);
        assert.deepEqual(box, early, `picture ${place} jumps`);
        assert.ok(Math.abs(box.width / box.height / natural - 1) < 0.02, `picture ${place} is out of shape`);
        assert.ok(box.x >= 0 && box.y >= 0 && box.x + box.width <= visible[0] && box.y + box.height <= visible[1], `picture ${place} is cut off`);
        assert.ok(box.width <= FINEST[place - 1], `picture ${place} is blown up`);
        taken.push(file);
        await press(tab, 'ArrowRight');
      }
      assert.deepEqual(taken, files, `prints at ${screen.width} px x ${screen.deviceScaleFactor}`);
      await press(tab, 'Escape'); await closed(tab);
    }
    assert.equal(await tab.evaluate('globalThis.moved ?? 0'), 0);
    // A window that is drawn large.
    await tab.click(PLANK); await shows(tab, 2);
    await tab.setViewport({ width: 1280, height: 900 });
    await tab.waitForFunction(() => document.querySelector('dialog.viewer img').width > 1000);
  },
  async 'the pictures before and after are fetched meanwhile'(tab) {
    const asked = [];
    tab.on('request', (r) => asked.push(r.url()));
    await opened(tab);
    const wanted = await tab.$$eval('#main a:has(> img[srcset])', (links) => links.map((a) => a.href.replace(/-\d+\.jpg$/, '')));
    const fetched = () => wanted.every((picture, i) => i > 3 || i === 3 || asked.some((url) => url.startsWith(picture)));
    for (const late = Date.now() + PATIENCE; !fetched();) {
      assert.ok(Date.now() < late, `${wanted} of ${asked}`);
      await new Promise((glance) => { setTimeout(glance, 20); });
    }
  },
  async 'the month shows each with the entry it belongs to'(tab, base) {
    await tab.goto(base + MONTH);
    await tab.click(PLANK);
    await sees(tab, { open: true, words: 'The first plank' });
    await Promise.all([tab.waitForNavigation(), tab.click('dialog.viewer .from a')]);
    assert.ok(tab.url().endsWith(FOUR), tab.url());
    await tab.goBack(); await sees(tab, { open: true, words: 'The first plank' });
    await press(tab, 'Escape'); await closed(tab, { focus: 'A plank on moulds' });
  },
  async 'the first page\'s picture opens, and leads to its entry'(tab, base) {
    await tab.goto(`${base}index.html`);
    const entry = await tab.$eval('.lead .source', (source) => source.href);
    await tab.click('.lead img');
    await sees(tab, { open: true, count: '1 of 1' });
    await Promise.all([tab.waitForNavigation(), tab.click('dialog.viewer .from a')]);
    assert.equal(tab.url(), entry);
  },
  async 'a page with one picture has no way on, one without any no viewer'(tab, base) {
    await tab.goto(base + ONE);
    await tab.click('#main a > img');
    await sees(tab, { open: true, count: '1 of 1' });
    assert.equal(await tab.$eval('dialog.viewer .keys', (keys) => keys.innerText.trim()), 'Close');
    await press(tab, 'ArrowRight', 'ArrowLeft', 'End'); await sees(tab, { open: true, count: '1 of 1' });
    await tab.goto(base + NONE);
    await press(tab, 'ArrowRight', 'End', 'Escape');
    assert.equal(await tab.$('dialog.viewer'), null);
  },
  async 'a lost picture is told in words, and the next is shown'(tab) {
    const lost = (await tab.$eval(PLANK, (a) => a.href)).replace(/-\d+\.jpg$/, '');
    await tab.setRequestInterception(true);
    tab.on('request', (r) => (r.url().startsWith(lost) ? r.abort() : r.continue()));
    await tab.setCacheEnabled(false);
    await reloaded(tab);
    await opened(tab);
    await tab.waitForSelector('dialog.viewer .lost', { timeout: PATIENCE });
    assert.equal(await tab.$eval('dialog.viewer .stage', (stage) => stage.innerText), LOST);
    await press(tab, 'ArrowRight'); await shows(tab, 3);
    assert.ok((await print(tab)).natural > 0);
  },
  async 'whoever opens a new tab gets one'(tab, base) {
    const modifier = await tab.evaluate(() => (navigator.platform.startsWith('Mac') ? 'Meta' : 'Control'));
    await tab.keyboard.down(modifier);
    await tab.click(PLANK);
    await tab.keyboard.up(modifier);
    const fresh = await browser.waitForTarget((t) => t.url().startsWith(base) && t.url().endsWith('-1600.jpg'), { timeout: PATIENCE });
    await sees(tab, { open: false });
    await (await fresh.page()).close();
  },
  async 'without script the picture is a page of its own'(tab) {
    await tab.setJavaScriptEnabled(false);
    await tab.reload();
    await Promise.all([tab.waitForNavigation(), tab.click(PLANK)]);
    assert.match(tab.url(), /pictures\/.*-1600\.jpg$/);
  },
  async 'axe finds nothing, and the focus is seen, in light and dark, narrow and wide'(tab) {
    for (const theme of ['light', 'dark']) {
      await tab.emulateMediaFeatures([{ name: 'prefers-color-scheme', value: theme }, { name: 'prefers-reduced-motion', value: 'reduce' }]);
      for (const width of [320, 1280]) {
        await tab.setViewport({ width, height: 900 });
        await opened(tab);
        await print(tab);
        const wrong = [...await checks.access(tab), ...await checks.reflow(tab), ...await checks.focus(tab)];
        assert.deepEqual(wrong, [], `${theme} ${width}`);
        const small = await tab.$$eval('dialog.viewer button', (all) => all.filter((b) => b.offsetWidth < 44 || b.offsetHeight < 44).length);
        assert.equal(small, 0, 'a button is too small');
        await press(tab, 'Escape'); await closed(tab);
      }
    }
  },
  async 'paper has the page, not the viewer'(tab) {
    await opened(tab);
    await tab.emulateMediaType('print');
    assert.equal(await tab.$eval('dialog.viewer', (viewer) => viewer.getClientRects().length), 0);
    assert.deepEqual(await checks.print(tab), []);
  },
};

const findings = [];
const profile = mkdtempSync(join(tmpdir(), 'ribband-chromium-'));
const browser = await puppeteer.launch({
  executablePath: chromium,
  headless: true,
  userDataDir: profile,
  args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run',
    '--disable-background-networking', '--disable-component-update', '--disable-sync'],
});
const { address: http, close } = await serve(site);
const disk = pathToFileURL(site).href.replace(/\/?$/, '/');

async function reader(base, view) {
  for (const [check, act] of Object.entries(does)) {
    const tell = (what) => findings.push({ check, page: FOUR, view, what: String(what).slice(0, 900) });
    const tab = await browser.newPage();
    tab.on('pageerror', (e) => tell(e.message));
    tab.on('console', (m) => /Content.Security|policy/i.test(m.text()) && tell(m.text()));
    tab.setDefaultTimeout(PATIENCE);
    tab.client = await tab.createCDPSession();
    // Tabs stand side by side, and only one could have the focus.
    await tab.client.send('Emulation.setFocusEmulationEnabled', { enabled: true });
    await tab.setViewport({ width: 1280, height: 900 });
    await tab.goto(base + FOUR, { waitUntil: 'load' });
    await act(tab, base).catch((e) => tell(e.message));
    await tab.close();
  }
}

try {
  await Promise.all([reader(disk, 'disk'), reader(http, 'http')]);
} finally {
  await browser.close();
  close();
  rmSync(profile, { recursive: true, force: true });
}
process.stdout.write(JSON.stringify(findings, null, 1) + '\n');

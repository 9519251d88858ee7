// Opens pages and does in Chromium what it is told, a step a line on standard input; answers each with
// a line of JSON. Ends with the input.
//   {"do": "open", "tab", "url", "width", "theme", "script"}   opens a page in a tab of that name
//   {"do": "see", "tab", "words"}                    waits until the page says so
//   {"do": "miss", "tab", "words"}                   waits until it no longer says so
//   {"do": "scroll", "tab", "to"}                    scrolls to a part of the page's height, in per cent; unfolds what is folded
//   {"do": "place", "tab"}                           where it is scrolled to, how many folds are open, how often it was loaded
//   {"do": "press", "tab", "key"}                    presses a key
//   {"do": "type", "tab", "words"}                   types words
//   {"do": "tell", "tab", "of"}                      what an expression says of the page, as text
//   {"do": "front", "tab"}                           brings it to the front
//   {"do": "check", "tab"}                           what axe, reflow and focus find wrong
//   {"do": "forget"}                                 forgets what "foreign" would tell of
//   {"do": "foreign"}                                requests to anywhere but the page's own address, and what the console says
import { mkdtempSync, rmSync } from 'node:fs';
import { createInterface } from 'node:readline';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import puppeteer from 'puppeteer-core';
import * as checks from './checks.mjs';

const PATIENCE = 30_000;
const profile = mkdtempSync(join(tmpdir(), 'ribband-chromium-'));
const browser = await puppeteer.launch({
  executablePath: process.argv[2],
  headless: true,
  userDataDir: profile,
  args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run',
    '--disable-background-networking', '--disable-component-update', '--disable-sync'],
});
const tabs = new Map();
const foreign = [];

const steps = {
  async open({ tab: name, url, width = 1280, theme = 'light', script = 'on' }) {
    const tab = await browser.newPage();
    const { origin } = new URL(url);
    const home = url.startsWith('file:') ? 'file:///' : `${origin}/`;
    tab.loads = 0;
    tab.on('request', (r) => r.url().startsWith(home) || r.url().startsWith('data:') || foreign.push(`asks for ${r.url()}`));
    // A page that is gone, or is not there yet, is answered as what it is.
    tab.on('console', (m) => m.type() === 'error' && !/status of (404|503)/.test(m.text()) && foreign.push(m.text()));
    tab.on('pageerror', (e) => foreign.push(e.message));
    tab.on('load', () => { tab.loads += 1; });
    await tab.emulateMediaFeatures([{ name: 'prefers-color-scheme', value: theme }]);
    await tab.setViewport({ width, height: 900 });
    await tab.setJavaScriptEnabled(script === 'on');
    await tab.goto(url, { waitUntil: 'load' });
    tabs.set(name, tab);
    return {};
  },
  async see({ tab, words }) { return said(tabs.get(tab), words, true); },
  async miss({ tab, words }) { return said(tabs.get(tab), words, false); },
  async scroll({ tab, to }) {
    return tabs.get(tab).evaluate(async (part) => {
      document.querySelectorAll('details').forEach((fold) => { fold.open = true; });
      scrollTo(0, (document.documentElement.scrollHeight - innerHeight) * part / 100);
      await new Promise((drawn) => { requestAnimationFrame(() => requestAnimationFrame(drawn)); });
      return {};
    }, to);
  },
  async place({ tab }) {
    const { y, open } = await tabs.get(tab).evaluate(() => ({
      y: Math.round(scrollY), open: document.querySelectorAll('details[open]').length,
    }));
    return { y, open, loads: tabs.get(tab).loads };
  },
  async press({ tab, key }) { await tabs.get(tab).keyboard.press(key); return {}; },
  async type({ tab, words }) { await tabs.get(tab).keyboard.type(words); return {}; },
  async tell({ tab, of }) { return { told: String(await tabs.get(tab).evaluate(of)) }; },
  async front({ tab }) { await tabs.get(tab).bringToFront(); return {}; },
  async check({ tab: name }) {
    const tab = tabs.get(name);
    await (await tab.createCDPSession()).send('Emulation.setFocusEmulationEnabled', { enabled: true });
    return { wrong: [...await checks.access(tab), ...await checks.reflow(tab), ...await checks.focus(tab)].join('\n') };
  },
  async forget() { foreign.length = 0; return {}; },
  async foreign() { return { wrong: foreign.join('\n') }; },
};

async function said(tab, words, wanted) {
  const late = Date.now() + PATIENCE;
  while (Date.now() < late) {
    // While a page is loaded anew nothing can be asked of it.
    const text = await tab.evaluate(() => document.readyState === 'complete' && document.body.innerText).catch(() => false);
    if (text !== false && text.includes(words) === wanted) return {};
    await new Promise((glance) => { setTimeout(glance, 30); });
  }
  return { wrong: `${wanted ? 'never' : 'still'} says "${words}"` };
}

try {
  for await (const line of createInterface({ input: process.stdin })) {
    const step = JSON.parse(line);
    process.stdout.write(`${JSON.stringify(await steps[step.do](step))}\n`);
  }
} finally {
  await browser.close();
  rmSync(profile, { recursive: true, force: true });
}

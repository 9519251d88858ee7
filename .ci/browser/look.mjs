// Opens pages of a site in Chromium and tells what is wrong with them, as JSON on standard output.
// Standard input: {"chromium": path, "site": folder, "pages": [path, ...], "close": [path, ...]}: all pages, and those
// of them that are looked at on every screen.
// A finding: {"check", "page", "view", "what"}.
import { readFileSync, mkdtempSync, rmSync } from 'node:fs';
import { availableParallelism, tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import puppeteer from 'puppeteer-core';
import * as checks from './checks.mjs';
import { serve } from './serve.mjs';

const { chromium, site, pages, close: closely } = JSON.parse(readFileSync(0, 'utf8'));
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

// Each theme on a screen of its own fineness, so that the prints are tried on both.
const SCREENS = [
  { theme: 'light', fineness: 1, width: 320 },
  { theme: 'light', fineness: 1, width: 1280 },
  { theme: 'dark', fineness: 2, width: 320 },
  { theme: 'dark', fineness: 2, width: 1280 },
];
// Each theme, each fineness and each width once.
const CROSSWISE = [SCREENS[0], SCREENS[3]];
const SERVED_WIDTHS = [320, 768, 1280];
// Half of the time a page is waited for: for frames that follow the focus, for shifts that do not come.
const HANDS = 2 * availableParallelism();
// A sheet of A4 with margins of 10 mm, in CSS pixels.
const PAPER_WIDTH = 718;

function tell(check, page, view, whats) {
  whats.forEach((what) => findings.push({ check, page, view, what: String(what).slice(0, 600) }));
}

function listen(tab, page, view, base) {
  const requests = (what) => tell('requests', page, view, [what]);
  const console = (what) => tell('console', page, view, [what]);
  tab.on('request', (r) => r.url().startsWith(base) || r.url().startsWith('data:') || requests(`asks for ${r.url()}`));
  tab.on('requestfailed', (r) => requests(`fails: ${r.url()} ${r.failure()?.errorText}`));
  tab.on('response', (r) => r.status() >= 400 && requests(`${r.status()} ${r.url()}`));
  // A breach of the page's security policy is reported here too.
  tab.on('console', (m) => ['error', 'warn'].includes(m.type()) && console(m.text()));
  tab.on('pageerror', (e) => console(e.message));
  tab.on('dialog', async (d) => { console(`opens a dialog: ${d.message()}`); await d.dismiss(); });
}

async function withTab(page, base, { theme = 'light', fineness = 1, width, script = 'on' }, use) {
  const view = `${base === http ? 'http' : 'disk'} ${theme} ${width}x${fineness} script ${script}`;
  const tab = await browser.newPage();
  listen(tab, page, view, base);
  await tab.setJavaScriptEnabled(script === 'on');
  // Tabs stand side by side, and only one could have the focus.
  await (await tab.createCDPSession()).send('Emulation.setFocusEmulationEnabled', { enabled: true });
  await tab.emulateMediaFeatures([{ name: 'prefers-color-scheme', value: theme }]);
  await tab.setViewport({ width, height: 900, deviceScaleFactor: fineness });
  await tab.goto(base + page.split('/').map(encodeURIComponent).join('/'), { waitUntil: 'load' });
  await use(tab, (check, whats) => tell(check, page, view, whats));
  await tab.close();
}

async function look(page) {
  const every = closely.includes(page);
  let words;
  let wordsAt;
  for (const screen of every ? SCREENS : CROSSWISE) {
    await withTab(page, disk, screen, async (tab, found) => {
      words = await checks.words(tab);
      wordsAt = screen.width;
      await checks.unfold(tab);
      found('reflow', await checks.reflow(tab));
      found('pictures', await checks.pictures(tab));
      found('lettering', await checks.lettering(tab));
      found('access', await checks.access(tab));
      if (screen === SCREENS[0]) {
        found('focus', await checks.focus(tab));
        found('spacing', await checks.spacing(tab));
      }
    });
  }
  for (const width of every ? SERVED_WIDTHS : [768]) {
    await withTab(page, http, { width }, async (tab, found) => {
      found('pictures', await checks.pictures(tab));
      found('shift', await checks.shift(tab));
    });
  }
  // Compared at one width: a drawing has other words where it is drawn narrow.
  await withTab(page, disk, { width: wordsAt, script: 'off' }, async (tab, found) => {
    found('script', await checks.words(tab) === words ? [] : ['says less or other without script']);
  });
  await withTab(page, disk, { width: PAPER_WIDTH, script: 'off' }, async (tab, found) => {
    found('pictures', await checks.pictures(tab));
    await tab.emulateMediaType('print');
    found('print', await checks.print(tab));
  });
}

const waiting = [...pages];
async function work() {
  while (waiting.length > 0) await look(waiting.shift());
}

try {
  await Promise.all(Array.from({ length: HANDS }, work));
} finally {
  await browser.close();
  close();
  rmSync(profile, { recursive: true, force: true });
}
process.stdout.write(JSON.stringify(findings, null, 1) + '\n');

// Opens pages of a site in Chromium and tells what is wrong with them, as JSON on standard output.
// Standard input: {"chromium": path, "site": folder, "pages": [path, ...]}.
// A finding: {"check", "page", "theme", "width", "what"}.
import { createServer } from 'node:http';
import { readFileSync, existsSync, statSync, mkdtempSync, rmSync } from 'node:fs';
import { join, normalize, extname } from 'node:path';
import { pathToFileURL } from 'node:url';
import { tmpdir } from 'node:os';
import { createRequire } from 'node:module';
import puppeteer from 'puppeteer-core';

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const { chromium, site, pages } = JSON.parse(readFileSync(0, 'utf8'));
const findings = [];
const profile = mkdtempSync(join(tmpdir(), 'ribband-chromium-'));
const browser = await puppeteer.launch({
  executablePath: chromium,
  headless: true,
  userDataDir: profile,
  args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run',
    '--disable-background-networking', '--disable-component-update', '--disable-sync'],
});

const THEMES = ['light', 'dark'];
const WIDTHS = [320, 1280];
// WCAG 2.2, 1.4.12: what a reader may set without losing content.
const TEXT_SPACING = '* { line-height: 1.5 !important; letter-spacing: 0.12em !important; '
  + 'word-spacing: 0.16em !important; } p { margin-bottom: 2em !important; }';

function tell(check, page, theme, width, what) {
  findings.push({ check, page, theme, width, what: String(what).slice(0, 600) });
}

function watch(tab, name, origin) {
  tab.on('request', (request) => {
    if (!request.url().startsWith(origin) && !request.url().startsWith('data:')) {
      tell('requests', name, '', 0, `asks for ${request.url()}`);
    }
  });
  tab.on('requestfailed', (r) => tell('requests', name, '', 0, `fails: ${r.url()} ${r.failure()?.errorText}`));
  tab.on('response', (r) => r.status() >= 400 && tell('requests', name, '', 0, `${r.status()} ${r.url()}`));
  tab.on('console', (m) => ['error', 'warn'].includes(m.type()) && tell('console', name, '', 0, m.text()));
  tab.on('pageerror', (e) => tell('console', name, '', 0, e.message));
  tab.on('dialog', async (d) => { tell('console', name, '', 0, `opens a dialog: ${d.message()}`); await d.dismiss(); });
}

async function open(page, base, origin, theme, width, scripts = true) {
  const tab = await browser.newPage();
  watch(tab, page, origin);
  await tab.setBypassCSP(false);
  await tab.setJavaScriptEnabled(scripts);
  await tab.emulateMediaFeatures([{ name: 'prefers-color-scheme', value: theme }]);
  await tab.setViewport({ width, height: 900 });
  await tab.goto(base + page.split('/').map(encodeURIComponent).join('/'), { waitUntil: 'load' });
  return tab;
}

async function access(tab, page, theme, width) {
  // Evaluated through the debugger, so the page's own policy stays as it is.
  await tab.evaluate(axeSource);
  const result = await tab.evaluate(() => globalThis.axe.run(document, {
    runOnly: { type: 'tag', values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22a', 'wcag22aa', 'best-practice'] },
    resultTypes: ['violations'],
    preload: false,
  }));
  for (const violation of result.violations) {
    const nodes = violation.nodes.slice(0, 3).map((n) => `${n.html.slice(0, 120)} ${n.failureSummary}`);
    tell('access', page, theme, width, `${violation.id}: ${violation.help} | ${nodes.join(' | ')}`);
  }
}

async function reflow(tab, page, theme, width) {
  const wide = await tab.evaluate(() => document.scrollingElement.scrollWidth - innerWidth);
  if (wide > 0) {
    tell('reflow', page, theme, width, `scrolls sideways by ${wide} px`);
  }
}

async function pictures(tab, page, theme, width) {
  const bad = await tab.evaluate(async () => {
    const wrong = [];
    for (const img of document.images) {
      const hidden = img.getClientRects().length === 0;
      if (hidden) continue;
      img.scrollIntoView();
      if (!img.complete) {
        await Promise.race([img.decode().catch(() => {}), new Promise((r) => setTimeout(r, 4000))]);
      }
      const own = img.getAttribute('width') / img.getAttribute('height');
      const shown = img.clientWidth / img.clientHeight;
      if (img.naturalWidth === 0) wrong.push(`does not load: ${img.src}`);
      else if (Math.abs(own / shown - 1) > 0.02) wrong.push(`is out of shape: ${img.src} ${own} ${shown}`);
      else if (img.currentSrc === '') wrong.push(`picks no candidate: ${img.src}`);
    }
    return wrong;
  });
  bad.forEach((what) => tell('pictures', page, theme, width, what));
}

const types = { '.html': 'text/html', '.css': 'text/css', '.svg': 'image/svg+xml', '.jpg': 'image/jpeg', '.woff2': 'font/woff2', '.csv': 'text/csv', '.js': 'text/javascript', '.xml': 'text/xml', '.json': 'application/json' };
const server = createServer((request, response) => {
  const file = normalize(join(site, decodeURIComponent(new URL(request.url, 'http://x').pathname)));
  if (!file.startsWith(site) || !existsSync(file) || statSync(file).isDirectory()) {
    response.writeHead(404).end();
    return;
  }
  response.writeHead(200, { 'content-type': types[extname(file)] ?? 'application/octet-stream' });
  response.end(readFileSync(file));
});
await new Promise((ready) => server.listen(0, '127.0.0.1', ready));
const http = `http://127.0.0.1:${server.address().port}/`;
const disk = pathToFileURL(site).href.replace(/\/?$/, '/');

try {
  for (const page of pages) {
    for (const theme of THEMES) {
      for (const width of WIDTHS) {
        const tab = await open(page, disk, disk, theme, width);
        await reflow(tab, page, theme, width);
        await pictures(tab, page, theme, width);
        await access(tab, page, theme, width);
        if (width === 320 && theme === 'light') {
          await tab.evaluate((css) => {
            const sheet = new CSSStyleSheet();
            sheet.replaceSync(css);
            document.adoptedStyleSheets = [sheet];
          }, TEXT_SPACING);
          await reflow(tab, page, 'light, spaced', width);
        }
        await tab.close();
      }
    }
    const served = await open(page, http, http, 'light', 1280);
    const shift = await served.evaluate(() => new Promise((done) => {
      let sum = 0;
      new PerformanceObserver((list) => list.getEntries().forEach((e) => { sum += e.value; }))
        .observe({ type: 'layout-shift', buffered: true });
      setTimeout(() => done(sum), 300);
    }));
    // A letter's width changes when the lettering arrives; 0.1 is what browsers' makers call good.
    if (shift > 0.1) tell('pictures', page, 'light', 1280, `layout shifts by ${shift}`);
    await served.close();
    const bare = await open(page, disk, disk, 'light', 1280, false);
    const words = await bare.$eval('main', (main) => main.innerText.trim().length);
    if (words < 5) tell('script', page, 'light', 1280, 'shows nothing without script');
    await bare.emulateMediaType('print');
    const pdf = await bare.pdf({ format: 'A4' });
    if (Buffer.from(pdf).toString('latin1').match(/\/Type\s*\/Page[^s]/g)?.length === undefined) {
      tell('print', page, 'light', 0, 'prints no page');
    }
    await bare.close();
  }
} finally {
  await browser.close();
  server.close();
  rmSync(profile, { recursive: true, force: true });
}
process.stdout.write(JSON.stringify(findings, null, 1) + '\n');

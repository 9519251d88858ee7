// A folder over HTTP, on this machine alone.
import { createServer } from 'node:http';
import { readFileSync, statSync } from 'node:fs';
import { extname, join, normalize, sep } from 'node:path';

const TYPES = {
  '.html': 'text/html', '.css': 'text/css', '.svg': 'image/svg+xml', '.jpg': 'image/jpeg', '.png': 'image/png',
  '.csv': 'text/csv', '.js': 'text/javascript', '.xml': 'text/xml', '.json': 'application/json',
};

/** Its address, ending in a slash, and a function that ends it. */
export async function serve(folder) {
  const server = createServer((request, response) => {
    const file = normalize(join(folder, decodeURIComponent(new URL(request.url, 'http://x').pathname)));
    if (!file.startsWith(folder + sep) || !statSync(file, { throwIfNoEntry: false })?.isFile()) {
      response.writeHead(404).end();
      return;
    }
    response.writeHead(200, { 'content-type': TYPES[extname(file)] ?? 'application/octet-stream' });
    response.end(readFileSync(file));
  });
  await new Promise((ready) => server.listen(0, '127.0.0.1', ready));
  return { address: `http://127.0.0.1:${server.address().port}/`, close: () => server.close() };
}

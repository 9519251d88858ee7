"""Reads a built site as a follower's browser would: prints each dead link, exits 1 if there is one.

Usage: links.py SITE
Every page's pictures, styles and scripts have to be there, whoever links to the page. Links between
pages are followed from index.html: what can be reached from it has to be there, its anchors and the
feeds that it names too.
"""

import os
import sys
from html.parser import HTMLParser
from urllib.parse import unquote, urlsplit

# Where the journals of these faults say that their site will stand.
HOME = "https://example.org/siskin/"


class Page(HTMLParser):
    """What a page needs to be shown, where it leads, and the names within it."""

    def __init__(self, text):
        super().__init__()
        self.needs, self.leads, self.names = [], [], set()
        self.feed(text)

    def handle_starttag(self, tag, attrs):
        attrs = dict(attrs)
        self.names.add(attrs.get("id"))
        if attrs.get("href"):
            (self.leads if tag == "a" else self.needs).append(attrs["href"])
        if attrs.get("src"):
            self.needs.append(attrs["src"])
        if attrs.get("property") == "og:image":
            self.needs.append(attrs["content"])
        for choice in (attrs.get("srcset") or "").split(","):
            if choice.strip():
                self.needs.append(choice.split()[0])


def target(page, link):
    """The path in the site and the anchor that a link means; no path where it leads elsewhere."""
    if link.startswith(HOME):
        page, link = "", link.removeprefix(HOME) or "index.html"
    parts = urlsplit(link)
    if parts.scheme or parts.netloc:
        return None, ""
    if not parts.path:
        return page, unquote(parts.fragment)
    return os.path.normpath(os.path.join(os.path.dirname(page), unquote(parts.path))), unquote(parts.fragment)


def dead_links(site):
    pages, dead = {}, []
    for folder, _, names in os.walk(site):
        for name in names:
            path = os.path.relpath(os.path.join(folder, name), site)
            if name.endswith(".html"):
                with open(os.path.join(site, path), encoding="utf-8") as file:
                    pages[path] = Page(file.read())
    if not pages and os.path.isdir(site) and os.path.exists(os.path.join(site, "index.html")):
        dead.append("no page could be read")
    for path, page in pages.items():
        for link in page.needs:
            wanted, _ = target(path, link)
            # Feeds come after the pages that name them, and before anything leads to those.
            if wanted and not wanted.startswith("feed.") and wanted not in pages:
                if not os.path.isfile(os.path.join(site, wanted)):
                    dead.append(f"{path} needs {link}")
    seen, waiting = set(), ["index.html"] if "index.html" in pages else []
    while waiting:
        path = waiting.pop()
        if path in seen:
            continue
        seen.add(path)
        feeds = [link for link in pages[path].needs if "feed." in link]
        for link in pages[path].leads + feeds:
            wanted, name = target(path, link)
            if wanted is None:
                continue
            if not os.path.isfile(os.path.join(site, wanted)):
                dead.append(f"{path} leads to {link}")
            elif wanted in pages:
                if name and name not in pages[wanted].names:
                    dead.append(f"{path} leads to {link}, where there is no such name")
                waiting.append(wanted)
    return dead


if __name__ == "__main__":
    found = dead_links(sys.argv[1])
    print("\n".join(found))
    sys.exit(1 if found else 0)

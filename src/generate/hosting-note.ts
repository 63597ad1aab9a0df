/** For whoever runs the web server: plain text, for no product in particular. */
export const hostingNote = (base: string, folder: string, version: string): string => {
  const { origin, pathname } = new URL(base);
  return `Channelwright ${version}: how to serve this folder
${'='.repeat(42 + version.length)}

Copy everything here to the place that answers at ${base}
Any server of static files will do. It needs a certificate that the users' machines trust, and must not ask for a
log-in: Excel fetches some files without cookies. Nothing runs on the server, and nothing is ever sent to it.

Check the copy:  sha256sum -c SHA256SUMS

Headers
-------
Paths are below ${pathname}

  Path                          Cache-Control
  ${`${folder}/*`.padEnd(30)}public, max-age=31536000, immutable
  *.html, manifest.xml          no-cache
  everything else               no-cache

  On every answer               Value
  X-Content-Type-Options        nosniff
  Referrer-Policy               no-referrer
  Access-Control-Allow-Origin   *      (Excel reads functions.json from another origin; no file here is secret)

  Ending                        Content-Type
  .html                         text/html; charset=utf-8
  .js                           text/javascript; charset=utf-8
  .css                          text/css; charset=utf-8
  .json                         application/json; charset=utf-8
  .xml                          application/xml; charset=utf-8
  .svg                          image/svg+xml
  .png                          image/png
  .wasm                         application/wasm
  .xlsx                         application/vnd.openxmlformats-officedocument.spreadsheetml.sheet

Content policy: each page brings its own, in a meta element. If the server sets one as well, both hold. Then
  taskpane.html                 must be allowed to load scripts from https://appsforoffice.microsoft.com and
                                https://ajax.aspnetcdn.com (Office.js), and to be framed by Excel on the web:
                                no X-Frame-Options, and frame-ancestors, if set, must name the hosts of your Excel
  solver.js                     must be allowed to compile WebAssembly: script-src 'self' 'wasm-unsafe-eval'
  workbench.html and the rest   need nothing but ${origin}

Upgrade
-------
Copy the new package over the old one and keep the folders v…: manifests that are still in use name files in them. A
folder may go when no installed manifest names it any more; a month is ample. A page never needs a folder of another
version. Excel keeps worksheet functions for up to 24 hours whatever the headers say; the folder's new name is what
makes it take new ones, with the new manifest.

For users: install.html (English), install.de.html (German), install.fr.html (French).
`;
};

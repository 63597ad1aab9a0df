/** The address under which a package will be served, with one slash at its end, or why it cannot be. */
export type BaseUrl = { readonly ok: true; readonly url: string } | { readonly ok: false; readonly reason: string };

const refused = (reason: string): BaseUrl => ({ ok: false, reason });

/** A loopback name is what a browser and Excel take for this machine. */
const isLoopback = (host: string): boolean => /^(localhost|127(\.\d+){3}|\[::1\])$/.test(host);

export const readBaseUrl = (text: string | undefined): BaseUrl => {
  if (text === undefined || text.trim() === '')
    return refused('--base-url is missing: the https address under which the files will be served.');
  const given = text.trim();
  const said = `--base-url ${given}`;
  if (!URL.canParse(given)) return refused(`${said} is no address. Expected one such as https://plans.example.org/cw.`);
  const { protocol, hostname, username, password, search, hash, pathname, origin } = new URL(given);
  if (protocol !== 'https:') return refused(`${said} must start with https://: Excel loads add-ins by https only.`);
  if (username !== '' || password !== '') return refused(`${said} must not hold a user name or password.`);
  if (search !== '' || given.includes('?')) return refused(`${said} must not have a query (?…).`);
  if (hash !== '' || given.includes('#')) return refused(`${said} must not have a fragment (#…).`);
  if (!hostname.includes('.') && !isLoopback(hostname))
    return refused(`${said} names the host ${hostname}, which only its own network knows: give the full name.`);
  if (/%|\s/.test(given)) return refused(`${said} must not hold blanks or signs that need to be coded with %.`);
  if (/\.(html?|xml|json|js)$/i.test(pathname)) return refused(`${said} must be a folder, not a file.`);
  return { ok: true, url: `${origin}${pathname.replace(/\/+/g, '/').replace(/\/?$/, '/')}` };
};

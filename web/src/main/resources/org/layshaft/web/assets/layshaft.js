// Follows links and sends forms within the page without loading it anew. Without this script all works the same.
(() => {
  'use strict';
  const main = () => document.getElementById('main');

  const isOurs = url => url.origin === location.origin && url.pathname === '/';

  // Where the same thing stands in the new page: by its id, else by its words and its place among equals.
  const nameOf = element =>
    element.id ? '#' + element.id : (element.getAttribute('aria-label') || element.textContent).trim();

  const refocus = (name, hash) => {
    const same = [...main().querySelectorAll('a, input, button, summary')].find(element => nameOf(element) === name);
    const wanted = hash === '#sheet' && document.getElementById('part') ? document.getElementById('part') : same;
    (wanted || document.getElementById('answer')).focus({ preventScroll: true });
  };

  let latest = 0;

  const show = async (url, remember) => {
    const turn = ++latest;
    const focused = document.activeElement ? nameOf(document.activeElement) : '';
    main().setAttribute('aria-busy', 'true');
    let text;
    try {
      text = await (await fetch(url.pathname + url.search)).text();
    } catch {
      location.href = url.href;
      return;
    }
    if (turn !== latest) return;
    const page = new DOMParser().parseFromString(text, 'text/html');
    const fresh = page.getElementById('main');
    if (!fresh) {
      location.href = url.href;
      return;
    }
    if (remember) history.pushState(null, '', url.href);
    document.title = page.title;
    const status = document.getElementById('status');
    const says = fresh.querySelector('#status').dataset.says;
    main().replaceChildren(status, ...[...fresh.childNodes].filter(node => node.id !== 'status'));
    main().removeAttribute('aria-busy');
    status.textContent = says;
    refocus(focused, url.hash);
  };

  document.addEventListener('click', event => {
    const link = event.target.closest('#main a[href]');
    if (!link || event.defaultPrevented || event.button || event.metaKey || event.ctrlKey || event.shiftKey || event.altKey) return;
    const url = new URL(link.getAttribute('href'), location.href);
    if (!isOurs(url) || (url.search === location.search && url.hash)) return;
    event.preventDefault();
    show(url, true);
  });

  document.addEventListener('submit', event => {
    const form = event.target;
    if (!form.closest('#main')) return;
    const url = new URL(form.action);
    url.search = new URLSearchParams(new FormData(form)).toString();
    event.preventDefault();
    show(url, true);
  });

  addEventListener('popstate', () => show(new URL(location.href), false));
  addEventListener('beforeprint', () => document.querySelectorAll('.usual, .verdicts tr:not([data-verdict=works]) .why').forEach(each => { each.open = true; }));
})();

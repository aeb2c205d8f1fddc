// Follows links and sends forms among the pages without loading each anew. Without this script all works the same.
(() => {
  'use strict';
  const main = () => document.getElementById('main') || document.querySelector('main');

  // Pages have no full stop in their path; files and what goes to programs are left to the browser.
  const isPage = url => url.origin === location.origin && !url.pathname.includes('.') && !url.pathname.startsWith('/api/');

  // Where the same thing stands in the new page: by its id, else by its words and its place among equals.
  const nameOf = element =>
    element.id ? '#' + element.id : (element.getAttribute('aria-label') || element.textContent).trim();

  const refocus = (name, hash) => {
    const same = [...main().querySelectorAll('a, input, select, button, summary')].find(element => nameOf(element) === name);
    const wanted = hash === '#sheet' && document.getElementById('part') ? document.getElementById('part') : same;
    (wanted || document.getElementById('answer') || main()).focus({ preventScroll: true });
  };

  // Style sheets that the new page has and this one has not, all of them there before anything is shown.
  const styled = page => {
    const here = new Set([...document.querySelectorAll('link[rel="stylesheet"]')].map(link => link.getAttribute('href')));
    const missing = [...page.querySelectorAll('link[rel="stylesheet"]')].filter(link => !here.has(link.getAttribute('href')));
    const loaded = missing.map(link => new Promise(done => {
      const own = document.createElement('link');
      own.rel = 'stylesheet';
      own.href = link.getAttribute('href');
      own.onload = own.onerror = done;
      document.head.append(own);
    }));
    return Promise.all(loaded).then(() => missing.length && dispatchEvent(new Event('layshaft:styled')));
  };

  // Scripts that the new page has and this one has not; they find it as it is.
  const scripted = page => {
    const here = new Set([...document.scripts].map(script => script.getAttribute('src')));
    for (const script of page.querySelectorAll('script[src]')) {
      if (here.has(script.getAttribute('src'))) continue;
      const own = document.createElement('script');
      own.src = script.getAttribute('src');
      own.async = false;
      document.head.append(own);
    }
  };

  const put = (page, selector) => {
    const old = document.querySelector(selector);
    const fresh = page.querySelector(selector);
    if (old && fresh) old.replaceWith(document.adoptNode(fresh));
    else if (old) old.remove();
    else if (fresh) document.querySelector('.doors').before(document.adoptNode(fresh));
  };

  // Where the doors are wider than the window, the one that one is at is to be seen.
  const bringDoor = () => {
    const doors = document.querySelector('.doors');
    const current = doors && doors.querySelector('[aria-current]');
    if (current) doors.scrollLeft = current.offsetLeft - doors.offsetLeft - (doors.clientWidth - current.offsetWidth) / 2;
  };

  let latest = 0;
  let shown = new URL(location.href);

  const show = async (url, remember, top) => {
    const turn = ++latest;
    const focused = document.activeElement ? nameOf(document.activeElement) : '';
    main().setAttribute('aria-busy', 'true');
    let page;
    let landed = url;
    try {
      const reply = await fetch(url.pathname + url.search);
      if (!(reply.headers.get('Content-Type') || '').startsWith('text/html')) throw new Error('not a page');
      landed = new URL(reply.url);
      landed.hash = url.hash;
      page = new DOMParser().parseFromString(await reply.text(), 'text/html');
      if (!page.querySelector('main') || !page.querySelector('.doors')) throw new Error('not one of ours');
      await styled(page);
    } catch {
      if (turn === latest) location.href = url.href;
      return;
    }
    if (turn !== latest) return;
    if (remember) {
      history.replaceState({ top: scrollY }, '');
      history.pushState(null, '', landed.href);
    }
    const elsewhere = landed.pathname !== shown.pathname;
    shown = landed;
    document.title = page.title;
    const fresh = page.querySelector('main');
    const says = fresh.dataset.says || page.title;
    for (const selector of ['.skip', '.motto', '.chosen', '.doors']) put(page, selector);
    // the element stays: scripts of a page watch what is in it
    main().id = 'main';
    main().className = fresh.className;
    main().replaceChildren(...fresh.childNodes);
    main().removeAttribute('aria-busy');
    scripted(page);
    bringDoor();
    document.getElementById('status').textContent = says;
    if (elsewhere) {
      const there = landed.hash && document.getElementById(landed.hash.slice(1));
      main().tabIndex = -1;
      main().focus({ preventScroll: true });
      if (there) there.scrollIntoView();
      else scrollTo(0, top || 0);
    } else {
      refocus(focused, landed.hash);
      if (top !== undefined) scrollTo(0, top);
    }
  };

  document.addEventListener('click', event => {
    const link = event.target.closest('a[href]');
    if (!link || event.defaultPrevented || event.button || event.metaKey || event.ctrlKey || event.shiftKey || event.altKey) return;
    if (link.hasAttribute('download') || link.getAttribute('target')) return;
    const url = new URL(link.getAttribute('href'), location.href);
    if (!isPage(url) || (url.pathname === location.pathname && url.search === location.search && url.hash)) return;
    event.preventDefault();
    show(url, true);
  });

  document.addEventListener('submit', event => {
    const form = event.target;
    const url = new URL(form.getAttribute('action'), location.href);
    if (!isPage(url) || form.method !== 'get') return;
    const written = new URLSearchParams();
    for (const [name, value] of new FormData(form, event.submitter)) if (value !== '') written.append(name, value);
    const units = new URLSearchParams(location.search).get('units');
    if (units && !form.elements.units) written.append('units', units);
    url.search = written.toString();
    event.preventDefault();
    show(url, true);
  });

  addEventListener('popstate', event => {
    const url = new URL(location.href);
    if (url.pathname + url.search !== shown.pathname + shown.search) show(url, false, (event.state && event.state.top) || 0);
  });
  bringDoor();
  addEventListener('beforeprint', () => document.querySelectorAll('.usual, .verdicts tr:not([data-verdict=works]) .why').forEach(each => { each.open = true; }));
})();

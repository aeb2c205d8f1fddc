// Offers keys and names while one types: those that the schema has, and those that are in the text already.
import { scan, names } from './board-scan.js';

const MOST = 40;

const offersAt = (text, caret, schema) => {
  const place = scan(text, caret);
  if (place.comment || !place.stack.length) return null;
  let rule = schema.text;
  place.stack.forEach((frame, depth) => {
    if (depth) rule = schema.under(rule, frame.step, place.stack[depth - 1].keys);
  });
  const top = place.stack[place.stack.length - 1];
  const all = [];
  if (place.expectsKey) {
    const present = top.keys;
    schema.keys(rule, present).filter(([key]) => !present.includes(key))
      .forEach(([key, means]) => all.push({ put: `"${key}": `, show: key, means }));
  } else {
    const value = top.list ? schema.resolved(schema.chosen(rule, top.keys).items) : schema.under(rule, place.key, top.keys);
    schema.words(value).forEach(word => all.push({ put: word, show: word.replace(/"/g, ''), means: '' }));
    if (schema.is(value, 'string') && !schema.resolved(value).enum && place.key !== 'name' && place.key !== 'summary') {
      names(text).forEach((kind, name) => all.push({ put: `"${name}"`, show: name, means: kind }));
    }
  }
  const begun = place.word.toLowerCase();
  const fit = all.filter(offer => offer.show.toLowerCase().startsWith(begun) && offer.show.toLowerCase() !== begun)
    .concat(all.filter(offer => begun && offer.show.toLowerCase().includes(begun) && !offer.show.toLowerCase().startsWith(begun)));
  // a closing quotation mark, and a colon after a key, are there already where one is corrected
  const closed = place.quoted && text[place.to] === '"';
  let to = place.quoted && closed ? place.to + 1 : caret;
  if (place.expectsKey) to += /^\s*:\s?/.exec(text.slice(to))?.[0].length || 0;
  return { offers: fit.slice(0, MOST), from: place.from, to, quoted: place.quoted };
};

export const offering = (area, schema, put) => {
  const list = document.createElement('ul');
  list.className = 'offers';
  list.id = 'offers';
  list.role = 'listbox';
  list.setAttribute('aria-label', 'Keys and names');
  list.hidden = true;
  area.parentElement.append(list);
  area.setAttribute('aria-autocomplete', 'list');
  area.setAttribute('aria-haspopup', 'listbox');
  let shown = null;
  let chosen = -1;

  const close = () => {
    list.hidden = true;
    shown = null;
    area.removeAttribute('aria-activedescendant');
    area.removeAttribute('aria-controls');
  };

  const choose = place => {
    chosen = (place + shown.offers.length) % shown.offers.length;
    [...list.children].forEach((each, index) => each.setAttribute('aria-selected', String(index === chosen)));
    area.setAttribute('aria-activedescendant', list.children[chosen].id);
    list.children[chosen].scrollIntoView({ block: 'nearest' });
  };

  const place = () => {
    const style = getComputedStyle(area);
    const before = area.value.slice(0, shown.from);
    const line = before.split('\n').length;
    const column = before.length - before.lastIndexOf('\n') - 1;
    const height = parseFloat(style.lineHeight);
    list.style.top = `${parseFloat(style.paddingTop) + line * height - area.scrollTop}px`;
    const left = area.offsetLeft + parseFloat(style.paddingLeft) + column * parseFloat(style.fontSize) * 0.6 - area.scrollLeft;
    list.style.left = `${Math.max(0, Math.min(left, area.parentElement.clientWidth - list.offsetWidth - 8))}px`;
  };

  // begun: whether only inside quotation marks that are open
  const open = begun => {
    shown = area.selectionStart === area.selectionEnd ? offersAt(area.value, area.selectionStart, schema) : null;
    if (!shown?.offers.length || (begun && !shown.quoted)) { close(); return; }
    list.replaceChildren(...shown.offers.map((offer, index) => {
      const item = document.createElement('li');
      item.role = 'option';
      item.id = `offer-${index}`;
      item.textContent = offer.show;
      if (offer.means) {
        const means = document.createElement('small');
        means.textContent = offer.means;
        item.append(means);
      }
      item.addEventListener('mousedown', event => { event.preventDefault(); chosen = index; take(); });
      return item;
    }));
    list.hidden = false;
    area.setAttribute('aria-controls', list.id);
    place();
    choose(0);
  };

  const take = () => {
    const { from, to, offers } = shown;
    const text = offers[chosen].put;
    close();
    put(from, to, text);
  };

  area.addEventListener('keydown', event => {
    if (event.ctrlKey && event.code === 'Space') { event.preventDefault(); open(false); return; }
    if (!shown) return;
    const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    if (step) { event.preventDefault(); choose(chosen + step); }
    else if (event.key === 'Enter' || event.key === 'Tab') { event.preventDefault(); take(); }
    else if (event.key === 'Escape') { event.preventDefault(); close(); }
  });
  area.addEventListener('input', event => {
    if (event.inputType === 'insertText' && (event.data === '"' || shown)) open(true);
    else if (shown && event.inputType === 'deleteContentBackward') open(true);
    else close();
  });
  area.addEventListener('blur', close);
  area.addEventListener('scroll', () => { if (shown) place(); });
};

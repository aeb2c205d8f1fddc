// The layout as a form that grows with its parts. It changes the text and is drawn anew from it, so both say the same.
import { read, at, member, plain, typed, replace, append, remove, swap, lineOf } from './board-text.js';
import { names } from './board-scan.js';

const make = (tag, attributes = {}, ...children) => {
  const element = document.createElement(tag);
  Object.entries(attributes).forEach(([name, value]) => {
    if (name === 'text') element.textContent = value;
    else if (name.startsWith('on')) element.addEventListener(name.slice(2), value);
    else if (value !== null && value !== undefined && value !== false) element.setAttribute(name, value === true ? '' : value);
  });
  element.append(...children.filter(Boolean));
  return element;
};

const words = key => key.replace(/_(mm|deg|nm|kg|m2|kg_m3)$/, ', $1').replace(/_/g, ' ');

export class Form {
  // change(text) takes the changed text; found() tells the lines that something is found on
  constructor(place, schema, change, found) {
    Object.assign(this, { place, schema, change, found, serial: 0 });
  }

  draw(text) {
    const focused = this.place.contains(document.activeElement) ? document.activeElement.dataset.at : null;
    this.text = text;
    this.serial = 0;
    try {
      this.root = read(text);
    } catch {
      this.place.replaceChildren(make('p', { text: 'The text cannot be read just now, so there is no form of it. Put it right as text first.' }));
      return;
    }
    this.known = names(text);
    const list = make('datalist', { id: 'known-names' }, ...[...this.known].map(([name, kind]) => make('option', { value: name, label: kind })));
    this.place.replaceChildren(
      make('p', { class: 'aside', text: 'Every change is made in the text, whose comments stay; only a part that is taken out takes the comment on its line along.' }),
      list, this.object(this.root, this.schema.text, [], 'The layout'));
    if (focused) [...this.place.querySelectorAll('[data-at]')].find(each => each.dataset.at === focused)?.focus();
  }

  // Shows anew where something is found; the fields stay, since somebody may be typing in one.
  mark() {
    const lines = this.found();
    this.place.querySelectorAll('[data-stands]').forEach(each => each.toggleAttribute('data-found', lines.has(Number(each.dataset.stands))));
  }

  put(text, focus) {
    this.change(text);
    this.draw(text);
    if (focus) [...this.place.querySelectorAll('[data-at]')].find(each => each.dataset.at === focus)?.focus();
  }

  button(text, mark, deed, more = {}) {
    return make('button', { type: 'button', text, 'data-at': mark, onclick: deed, ...more });
  }

  object(node, rule, path, title, tools) {
    const keys = node.members.map(each => each.key);
    const chosen = this.schema.chosen(rule, keys);
    const isMap = !chosen.properties && typeof chosen.additionalProperties === 'object';
    const facts = make('div', { class: 'facts' });
    const nested = [];
    node.members.forEach(each => {
      const under = this.schema.under(rule, each.key, keys);
      const way = [...path, each.key];
      if (under.const !== undefined || each.key === '$schema') return;
      if (each.value.kind === 'object' && !this.schema.isSide(under)) nested.push(this.object(each.value, under, way, isMap ? each.key : words(each.key), this.taking(node, each, way, isMap)));
      else if (each.value.kind === 'list' && !this.isNameList(under, each.value)) nested.push(this.list(each.value, under, way, this.taking(node, each, way, isMap)));
      else facts.append(this.fact(node, each, under, way));
    });
    return make('fieldset', {}, make('legend', { text: title }), tools, facts, ...nested,
      isMap ? this.addingEntry(node, chosen, path) : this.addingFact(node, rule, keys, path));
  }

  isNameList(rule, node) {
    const items = this.schema.resolved(rule.items);
    return (this.schema.isNames(rule) || (this.schema.is(items, 'string') && !this.schema.is(items, 'object'))) && node.members.every(each => each.value.kind === 'string');
  }

  taking(node, each, way, isMap) {
    const mark = way.join('/');
    return make('div', { class: 'moves' },
      isMap && this.button('Rename', `${mark}#rename`, () => {
        const name = prompt(`A new name for ${each.key}. Where it is mentioned it has to be changed, too.`, each.key);
        if (name && name !== each.key) this.put(this.text.slice(0, each.from) + JSON.stringify(name) + this.text.slice(each.keyTo), `${[...way.slice(0, -1), name].join('/')}#rename`);
      }, { 'aria-label': `Rename ${each.key}` }),
      this.button('Take out', `${mark}#out`, () => this.put(remove(this.text, node, each)), { 'aria-label': `Take out ${words(each.key)}` }));
  }

  // One value with its words; blank takes it out.
  fact(node, each, rule, path) {
    const id = `fact-${this.serial++}`;
    const mark = path.join('/');
    const value = plain(each.value);
    const choices = this.schema.isSide(rule) ? [] : this.schema.words(rule);
    const set = json => this.put(json === null ? remove(this.text, node, each) : replace(this.text, each.value, json));
    const common = { id, 'data-at': mark, 'aria-describedby': `${id}-means` };
    const input = choices.length
      ? make('select', { ...common, onchange: event => set(event.target.value || null) },
        make('option', { value: '', text: 'as by default' }),
        ...choices.map(word => make('option', { value: word, text: word.replace(/"/g, '').replace(/^true$/, 'yes').replace(/^false$/, 'no'), selected: word === JSON.stringify(value) })))
      : make('input', { ...common, value: this.shown(value), autocomplete: 'off', spellcheck: 'false', list: this.naming(rule, path) ? 'known-names' : null, inputmode: this.isNumber(rule) ? 'decimal' : null, onchange: event => set(this.meant(event.target.value.trim(), rule)) });
    return make('div', { class: this.isNumber(rule) ? 'fact number' : 'fact' }, make('label', { for: id, text: words(each.key) }), input,
      make('span', { class: 'means', id: `${id}-means`, text: rule.description || '' }));
  }

  naming(rule, path) {
    const key = path[path.length - 1];
    return (this.schema.isNames(rule) || this.schema.isId(rule) || this.schema.isSide(rule)) && key !== 'name';
  }

  isNumber(rule) { return this.schema.is(rule, 'number') || this.schema.is(rule, 'integer'); }

  shown(value) {
    if (value === false) return 'nothing';
    if (value === null) return 'nothing';
    if (Array.isArray(value)) return value.join(', ');
    if (typeof value === 'object') return `meshes ${this.shown(value.meshes)}`;
    return String(value);
  }

  // From what is written in a field to what stands in the text; null takes it out.
  meant(written, rule) {
    if (!written) return null;
    if (this.isNumber(rule)) return /^-?(0|[1-9][0-9]*)(\.[0-9]+)?$/.test(written) ? written : JSON.stringify(written);
    if (this.schema.isSide(rule)) {
      if (written === 'nothing') return 'false';
      return written.startsWith('meshes ') ? `{ "meshes": ${this.several(written.slice(7))} }` : JSON.stringify(written);
    }
    const items = this.schema.resolved(rule.items);
    if (this.schema.isNames(rule)) return this.several(written);
    return this.schema.is(rule, 'array') && this.schema.is(items, 'string') ? typed(this.split(written)) : JSON.stringify(written);
  }

  split(written) { return written.split(',').map(each => each.trim()).filter(Boolean); }

  several(written) {
    const all = this.split(written);
    return typed(all.length === 1 ? all[0] : all);
  }

  list(node, rule, path, tools) {
    const title = words(path[path.length - 1]);
    const items = this.schema.resolved(rule.items);
    const ways = Object.keys(this.schema.ways(items));
    const entries = node.members.map((each, place) => this.entry(node, each, place, items, [...path, place], ways));
    return make('fieldset', {}, make('legend', { text: title === 'along' ? 'Along it, from the front to the rear' : title }), tools,
      make('ol', { class: 'along' }, ...entries), this.addingItem(node, items, path, ways));
  }

  entry(node, each, place, rule, path, ways) {
    const mark = path.join('/');
    const kind = each.value.kind === 'object' ? ways.find(way => member(each.value, way)) : null;
    const name = kind ? `${words(kind)} ${plain(member(each.value, kind).value)}` : `${place + 1}`;
    const other = step => this.put(swap(this.text, node, place, place + step), `${[...path.slice(0, -1), place + step].join('/')}#${step < 0 ? 'up' : 'down'}`);
    const moves = make('div', { class: 'moves' }, make('strong', { text: name }),
      this.button('↑', `${mark}#up`, () => other(-1), { 'aria-label': `Move ${name} toward the front`, disabled: place === 0 }),
      this.button('↓', `${mark}#down`, () => other(1), { 'aria-label': `Move ${name} toward the rear`, disabled: place === node.members.length - 1 }),
      this.elsewhere(node, each, path, name),
      this.button('Take out', `${mark}#out`, () => this.put(remove(this.text, node, each)), { 'aria-label': `Take out ${name}` }));
    const line = lineOf(this.text, each.from);
    return make('li', { 'data-stands': line, 'data-found': this.found().has(line) }, moves, each.value.kind === 'object'
      ? this.bare(each.value, rule, path)
      : this.loose(each, rule, path));
  }

  // An item without a frame around it: its list has one.
  bare(node, rule, path) {
    const frame = this.object(node, rule, path, '');
    frame.querySelector('legend').remove();
    return make('div', {}, ...frame.children);
  }

  loose(each, rule, path) {
    const id = `fact-${this.serial++}`;
    return make('div', { class: 'fact' }, make('label', { for: id, text: 'name' }),
      make('input', { id, 'data-at': path.join('/'), value: this.shown(plain(each.value)), list: 'known-names', autocomplete: 'off', onchange: event => this.put(replace(this.text, each.value, JSON.stringify(event.target.value))) }));
  }

  // To another shaft, at its rear end.
  elsewhere(node, each, path, name) {
    if (path[0] !== 'shafts' || path.length !== 4) return null;
    const others = at(this.root, ['shafts']).members.map(shaft => shaft.key).filter(shaft => shaft !== path[1]);
    return others.length > 0 && make('select', {
      'aria-label': `Move ${name} to another shaft`,
      'data-at': `${path.join('/')}#shaft`,
      onchange: event => {
        const item = this.text.slice(each.from, each.to);
        const shaft = event.target.value;
        const left = remove(this.text, node, each);
        const there = at(read(left), ['shafts', shaft, 'along']);
        if (there) this.put(append(left, there, item));
      },
    }, make('option', { value: '', text: 'to another shaft…' }), ...others.map(shaft => make('option', { value: shaft, text: shaft })));
  }

  free(name) {
    let free = name;
    for (let number = 2; this.known.has(free); number++) free = `${name}-${number}`;
    return free;
  }

  // Something to begin with for everything that a rule requires.
  begun(rule, name) {
    const resolved = this.schema.resolved(rule);
    if (resolved.enum) return resolved.enum[0];
    if (this.schema.is(rule, 'object') && !this.schema.is(rule, 'string')) {
      return Object.fromEntries((resolved.required || Object.keys(resolved.properties || {}).slice(0, resolved.minProperties || 0))
        .map(key => [key, this.begun(resolved.properties[key], this.free(`new-${key}`))]));
    }
    if (this.schema.is(rule, 'array') && !this.schema.is(rule, 'string')) return [];
    if (this.schema.is(rule, 'boolean')) return !this.schema.is(rule, 'string');
    if (this.isNumber(rule)) return Math.max(resolved.minimum || 0, 1);
    return name || this.free('new');
  }

  addingItem(node, rule, path, ways) {
    const mark = path.join('/');
    const add = (begun, name) => this.put(append(this.text, node, typed(begun)), `${mark}/${node.members.length}/${name}`);
    if (!ways.length) {
      return make('div', { class: 'adding' }, this.button('Add one', `${mark}#add`, () => add(this.begun(rule), '')));
    }
    return make('div', { class: 'adding' }, make('span', { text: 'Add at the rear:' }),
      ...ways.map(way => this.button(words(way), `${mark}#add-${way}`, () => add(this.begun(this.schema.ways(rule)[way]), way), { 'aria-label': `Add a ${words(way)} at the rear of ${path[1]}` })));
  }

  addingEntry(node, rule, path) {
    const mark = path.join('/');
    const what = words(path[path.length - 1] || 'entry').replace(/s$/, '');
    return make('div', { class: 'adding' }, this.button(`Add a ${what}`, `${mark}#add`, () => {
      const name = prompt(`What is the new ${what} called?`, this.free(what));
      if (!name) return;
      const begun = this.begun(rule.additionalProperties, '');
      this.put(append(this.text, node, `${JSON.stringify(name)}: ${typed(begun)}`), `${mark}#add`);
    }));
  }

  addingFact(node, rule, present, path) {
    const missing = this.schema.keys(rule, present).filter(([key]) => !present.includes(key));
    if (!missing.length) return null;
    const mark = `${path.join('/')}#fact`;
    return make('div', { class: 'adding' }, make('select', {
      'aria-label': `Add a fact to ${path.length ? path.map(step => typeof step === 'number' ? step + 1 : step).join(' ') : 'the layout'}`,
      'data-at': mark,
      onchange: event => {
        const key = event.target.value;
        if (!key) return;
        const begun = this.begun(this.schema.under(rule, key, present), '');
        this.put(append(this.text, node, `${JSON.stringify(key)}: ${typed(begun)}`), [...path, key].join('/'));
      },
    }, make('option', { value: '', text: 'add a fact…' }), ...missing.map(([key, means]) => make('option', { value: key, text: words(key), title: means }))));
  }
}

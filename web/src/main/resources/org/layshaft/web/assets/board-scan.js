// Reads a text that may be half typed, up to a place, and tells what stands there: inside which objects, behind which key.

const NAMING = ['gear', 'sliding', 'sleeve', 'bearing', 'dogs', 'clutch', 'id', 'lever', 'rail'];

// {stack, key, word, from}: the objects and lists that are open, the key whose value is typed, the word begun and its start.
export const scan = (text, end = text.length, named = () => {}) => {
  const stack = [];
  let key = null;
  let expectsKey = false;
  let at = 0;
  const top = () => stack[stack.length - 1];
  const path = () => stack.map(each => each.step).slice(1);
  while (at < end) {
    const sign = text[at];
    if (text.startsWith('//', at)) {
      const line = text.indexOf('\n', at);
      if (line < 0 || line >= end) return { stack, comment: true };
      at = line;
    } else if (text.startsWith('/*', at)) {
      const close = text.indexOf('*/', at + 2);
      if (close < 0 || close + 2 > end) return { stack, comment: true };
      at = close + 2;
    } else if (sign === '"') {
      let to = at + 1;
      while (to < text.length && text[to] !== '"' && text[to] !== '\n') to += text[to] === '\\' ? 2 : 1;
      if (to >= end) return { stack, key, expectsKey, from: at, word: text.slice(at + 1, end), quoted: true, to };
      const word = text.slice(at + 1, to);
      if (expectsKey) {
        key = word;
        top()?.keys.push(word);
        if (stack.length === 2 && top().step === 'shafts') named(word, 'shaft');
      } else if (NAMING.includes(key) && path().length) {
        named(word, key === 'id' ? 'part' : key);
      }
      at = to + 1;
    } else if (sign === '{' || sign === '[') {
      const parent = top();
      const step = parent ? (parent.list ? parent.index : key) : null;
      stack.push({ list: sign === '[', step, index: 0, keys: [] });
      expectsKey = sign === '{';
      key = null;
      at++;
    } else if (sign === '}' || sign === ']') {
      stack.pop();
      expectsKey = false;
      key = null;
      at++;
    } else if (sign === ':') {
      expectsKey = false;
      at++;
    } else if (sign === ',') {
      if (top()?.list) top().index++;
      else { expectsKey = true; key = null; }
      at++;
    } else {
      const bare = /^[A-Za-z0-9_.+-]+/.exec(text.slice(at, end));
      if (bare && at + bare[0].length === end) return { stack, key, expectsKey, from: at, word: bare[0], quoted: false, to: end };
      at += bare ? bare[0].length : 1;
    }
  }
  return { stack, key, expectsKey, from: end, word: '', quoted: false, to: end };
};

// Every name that is typed in the text, with what it is of.
export const names = text => {
  const found = new Map();
  scan(text, text.length, (name, kind) => { if (name && !found.has(name)) found.set(name, kind); });
  return found;
};

// Reads a layout as it is typed, comments and trailing commas included, keeps where everything stands, and changes it
// without touching what is beside.

const SPACE = /\s/;

// Behind white space and comments.
const past = (text, at) => {
  for (;;) {
    if (SPACE.test(text[at] || '')) at++;
    else if (text.startsWith('//', at)) at = (text.indexOf('\n', at) + 1 || text.length + 1) - 1;
    else if (text.startsWith('/*', at)) at = (text.indexOf('*/', at + 2) + 1 || text.length) + 1;
    else return Math.min(at, text.length);
  }
};

class Unreadable extends Error {}

const expect = (text, at, sign) => {
  if (text[at] !== sign) throw new Unreadable(`${sign} is expected at ${at}`);
  return at + 1;
};

const readString = (text, from) => {
  let at = expect(text, from, '"');
  while (at < text.length && text[at] !== '"' && text[at] !== '\n') at += text[at] === '\\' ? 2 : 1;
  at = expect(text, at, '"');
  return { kind: 'string', from, to: at, value: JSON.parse(text.slice(from, at)) };
};

const readMembers = (text, from, open, close, readOne) => {
  const members = [];
  let at = past(text, expect(text, from, open));
  while (text[at] !== close) {
    const member = readOne(at);
    at = past(text, member.to);
    member.comma = text[at] === ',' ? at : -1;
    members.push(member);
    if (member.comma < 0) break;
    at = past(text, at + 1);
  }
  return { members, to: expect(text, at, close) };
};

const readValue = (text, from) => {
  if (text[from] === '{') {
    const { members, to } = readMembers(text, from, '{', '}', at => {
      const key = readString(text, at);
      const value = readValue(text, past(text, expect(text, past(text, key.to), ':')));
      return { key: key.value, from: key.from, to: value.to, keyTo: key.to, value };
    });
    return { kind: 'object', from, to, members };
  }
  if (text[from] === '[') {
    const { members, to } = readMembers(text, from, '[', ']', at => {
      const value = readValue(text, at);
      return { from: value.from, to: value.to, value };
    });
    return { kind: 'list', from, to, members };
  }
  if (text[from] === '"') return readString(text, from);
  const word = /^(true|false|null|-?[0-9][0-9.eE+-]*)/.exec(text.slice(from, from + 60));
  if (!word) throw new Unreadable(`no value at ${from}`);
  return { kind: 'word', from, to: from + word[0].length, value: JSON.parse(word[0]) };
};

// The whole text; throws where it cannot be read.
export const read = text => {
  const root = readValue(text, past(text, 0));
  if (past(text, root.to) < text.length) throw new Unreadable('more after the end');
  return root;
};

export const member = (node, step) => node.kind === 'object'
  ? node.members.find(each => each.key === step)
  : node.kind === 'list' ? node.members[step] : undefined;

export const at = (root, path) => path.reduce((node, step) => node && member(node, step)?.value, root);

export const plain = node => node.kind === 'object' ? Object.fromEntries(node.members.map(each => [each.key, plain(each.value)]))
  : node.kind === 'list' ? node.members.map(each => plain(each.value))
    : node.value;

// As it would be typed by hand: on one line, with spaces inside braces.
export const typed = value => Array.isArray(value) ? `[${value.map(typed).join(', ')}]`
  : value !== null && typeof value === 'object'
    ? Object.keys(value).length ? `{ ${Object.entries(value).map(([key, each]) => `${JSON.stringify(key)}: ${typed(each)}`).join(', ')} }` : '{}'
    : JSON.stringify(value);

const splice = (text, from, to, put) => text.slice(0, from) + put + text.slice(to);

export const replace = (text, node, json) => splice(text, node.from, node.to, json);

const indentAt = (text, at) => /^[ \t]*/.exec(text.slice(text.lastIndexOf('\n', at - 1) + 1))[0];

// Adds a member at the end, on a line of its own where the others have such.
export const append = (text, node, json) => {
  const manyLines = text.slice(node.from, node.to).includes('\n');
  const last = node.members[node.members.length - 1];
  if (!last) {
    const inside = text.slice(node.from + 1, node.to - 1).trimEnd();
    const indent = indentAt(text, node.from);
    if (manyLines) return splice(text, node.from + 1, node.to - 1, `${inside}\n${indent}  ${json}\n${indent}`);
    const gap = node.kind === 'object' ? ' ' : '';
    return splice(text, node.from + 1, node.to - 1, `${inside}${gap}${json}${gap}`);
  }
  if (last.comma < 0) {
    text = splice(text, last.to, last.to, ',');
  }
  const comma = last.comma < 0 ? last.to : last.comma;
  if (!manyLines || !text.slice(node.from, last.from).includes('\n')) return splice(text, comma + 1, comma + 1, ` ${json}`);
  const lineEnd = text.indexOf('\n', comma);
  const rest = text.slice(comma + 1, lineEnd);
  const behind = /^\s*(\/\/.*|\/\*[^*]*\*\/\s*)?$/.test(rest) ? lineEnd : comma + 1;
  const tail = last.comma < 0 ? '' : ',';
  return splice(text, behind, behind, `\n${indentAt(text, last.from)}${json}${tail}`);
};

// Takes a member out, with its line where it has one to itself, comment and all.
export const remove = (text, node, gone) => {
  const place = node.members.indexOf(gone);
  let { from } = gone;
  let to = gone.comma < 0 ? gone.to : gone.comma + 1;
  const lineStart = text.lastIndexOf('\n', from - 1) + 1;
  const lineEnd = text.indexOf('\n', to) < 0 ? text.length : text.indexOf('\n', to);
  const alone = !text.slice(lineStart, from).trim() && /^\s*(\/\/.*)?$/.test(text.slice(to, lineEnd));
  if (alone) {
    from = lineStart;
    to = Math.min(lineEnd + 1, text.length);
  } else if (text[to] === ' ') {
    to++;
  }
  let left = splice(text, from, to, '');
  const before = node.members[place - 1];
  if (gone.comma < 0 && before && before.comma >= 0) left = splice(left, before.comma, before.comma + 1, '');
  return left;
};

// Changes the places of two members; comments before and behind them stay where they are.
export const swap = (text, node, one, other) => {
  const [first, second] = [node.members[one], node.members[other]].sort((a, b) => a.from - b.from);
  return text.slice(0, first.from) + text.slice(second.from, second.to) + text.slice(first.to, second.from)
    + text.slice(first.from, first.to) + text.slice(second.to);
};

export const lineOf = (text, place) => text.slice(0, place).split('\n').length;

// Looks at the text while it is typed: findings, gears and the drawing follow it. Without this script the page does the
// same at the push of a button.
import { Schema } from './board-schema.js';
import { offering } from './board-offers.js';
import { Form } from './board-form.js';

const PAUSE_MS = 350;
const the = id => document.getElementById(id);
const board = the('drafting');

const start = async () => {
  const area = the('text');
  const gutter = the('gutter');
  let findings = [];
  let gear = board.querySelector('[name="gear"][aria-pressed="true"]')?.value || '';
  let saved = area.value;
  let sending = false;

  // What was, for undoing: a text for each pause and each change by the form.
  const past = [area.value];
  let now = 0;

  const buttons = () => {
    the('undo').disabled = now === 0;
    the('redo').disabled = now === past.length - 1;
  };

  const remember = () => {
    if (past[now] === area.value) return;
    past.splice(now + 1, past.length, area.value);
    now = past.length - 1;
    buttons();
  };

  const lineAtCaret = () => area.value.slice(0, area.selectionStart).split('\n').length;

  const sayHere = () => {
    const line = lineAtCaret();
    the('here').textContent = findings.filter(each => each.line === line)
      .map(each => `Line ${line}: ${each.what} ${each.advice}`).join(' ');
  };

  const number = () => {
    const grades = new Map();
    findings.forEach(each => { if (grades.get(each.line) !== 'broken') grades.set(each.line, each.grade); });
    const lines = area.value.split('\n').length;
    gutter.replaceChildren(...Array.from({ length: lines }, (any, index) => {
      const line = document.createElement('span');
      const grade = grades.get(index + 1);
      line.textContent = `${grade ? (grade === 'broken' ? '✗ ' : '? ') : ''}${index + 1}`;
      if (grade) line.className = grade;
      line.dataset.line = index + 1;
      return line;
    }));
    gutter.style.height = `${area.offsetHeight}px`;
    gutter.scrollTop = area.scrollTop;
  };

  const goTo = line => {
    asText();
    const lines = area.value.split('\n');
    const from = lines.slice(0, line - 1).reduce((sum, each) => sum + each.length + 1, 0);
    area.focus();
    area.setSelectionRange(from, from + (lines[line - 1] || '').length);
    area.scrollTop = (line - 5) * parseFloat(getComputedStyle(area).lineHeight);
    sayHere();
  };

  const found = (finding, ours) => {
    const item = document.createElement('li');
    item.className = finding.grade === 'broken' ? 'found broken' : 'found';
    const place = document.createElement(ours ? 'a' : 'span');
    place.textContent = ours ? `line ${finding.line}` : `${finding.file}, line ${finding.line}:`;
    if (ours) { place.href = `#line-${finding.line}`; place.dataset.line = finding.line; }
    const grade = document.createElement('strong');
    grade.textContent = finding.grade === 'broken' ? 'Broken:' : 'Doubtful:';
    const value = document.createElement('code');
    value.textContent = finding.value;
    const advice = document.createElement('span');
    advice.className = 'advice';
    advice.textContent = finding.advice;
    item.append(place, ' ', grade, ` ${finding.what} `, ...(finding.value ? [value, ' '] : []), advice);
    return item;
  };

  const row = each => {
    const line = document.createElement('tr');
    const head = document.createElement('th');
    head.scope = 'row';
    const button = document.createElement('button');
    button.name = 'gear';
    button.value = each.gear;
    button.textContent = each.gear;
    button.setAttribute('aria-label', `Draw ${each.gear}`);
    if (each.gear === gear) { button.setAttribute('aria-pressed', 'true'); line.className = 'meant'; }
    head.append(button);
    const cells = [each.ratio.value.toFixed(3), each.printed ?? '', each.direction].map(text => {
      const cell = document.createElement('td');
      cell.textContent = text;
      return cell;
    });
    if (each.ratio.exact !== String(each.ratio.value)) {
      const exact = document.createElement('span');
      exact.className = 'exact';
      exact.textContent = ` ${each.ratio.exact}`;
      cells[0].append(exact);
    }
    line.append(head, ...cells);
    return line;
  };

  const show = look => {
    const focused = document.activeElement?.name === 'gear' ? document.activeElement.value : null;
    findings = look.findings;
    gear = look.gear || gear;
    the('verdict').textContent = look.verdict;
    the('verdict').classList.toggle('sound', look.sound);
    the('findings').replaceChildren(...look.findings.map(each => found(each, true)));
    the('elsewhere').replaceChildren(...look.elsewhere.map(each => found(each, false)));
    number();
    sayHere();
    the('picture').classList.toggle('stale', !look.svg);
    if (!look.svg) {
      the('drawn').textContent = 'As it was when it last was sound';
      return;
    }
    the('picture').hidden = false;
    the('canvas').innerHTML = look.svg;
    the('drawn').textContent = look.gear ? `${look.name}, gear ${look.gear}` : look.name;
    the('gears').hidden = !look.gears.length;
    the('ratios').replaceChildren(...look.gears.map(row));
    the('differences').replaceChildren(...look.differences.map(each => {
      const item = document.createElement('li');
      item.className = 'found';
      item.textContent = each.says;
      return item;
    }));
    if (focused) board.querySelector(`[name="gear"][value="${CSS.escape(focused)}"]`)?.focus();
  };

  let waiting = 0;
  let asking = null;

  const look = async () => {
    remember();
    asking?.abort();
    asking = new AbortController();
    try {
      const reply = await fetch('/api/board/look', {
        method: 'POST',
        headers: { 'Content-Type': 'application/json' },
        body: JSON.stringify({ text: area.value, pack: board.elements.pack.value, gear }),
        signal: asking.signal,
      });
      const answer = await reply.json();
      if (!reply.ok) throw new Error(answer.detail);
      show(answer);
      form.mark();
    } catch (problem) {
      if (problem.name !== 'AbortError') the('verdict').textContent = `It cannot be looked at: ${problem.message}. The text is still here.`;
    }
  };

  const soon = () => {
    clearTimeout(waiting);
    waiting = setTimeout(look, PAUSE_MS);
  };

  const schema = new Schema(await (await fetch('/api/layout.schema.json')).json());

  const set = text => {
    area.value = text;
    number();
    soon();
  };

  const form = new Form(the('form-way'), schema, text => { set(text); remember(); },
    () => new Set(findings.map(each => each.line)));

  const way = isForm => {
    the('text-way').hidden = isForm;
    the('form-way').hidden = !isForm;
    the('as-text').setAttribute('aria-pressed', String(!isForm));
    the('as-form').setAttribute('aria-pressed', String(isForm));
  };
  const asText = () => { way(false); number(); };

  const step = by => {
    remember();
    now = Math.min(Math.max(now + by, 0), past.length - 1);
    set(past[now]);
    buttons();
    if (!the('form-way').hidden) form.draw(area.value);
  };

  offering(area, schema, (from, to, text) => {
    area.focus();
    area.setSelectionRange(from, to);
    // keeps the browser's own undoing; where it is gone, the text is put in all the same
    if (!document.execCommand('insertText', false, text)) area.setRangeText(text, from, to, 'end');
    number();
    soon();
  });

  the('as-text').addEventListener('click', asText);
  the('as-form').addEventListener('click', () => { way(true); form.draw(area.value); });
  the('undo').addEventListener('click', () => step(-1));
  the('redo').addEventListener('click', () => step(1));
  area.addEventListener('input', () => { number(); soon(); });
  area.addEventListener('scroll', () => { gutter.scrollTop = area.scrollTop; });
  new ResizeObserver(number).observe(area);
  ['keyup', 'click'].forEach(event => area.addEventListener(event, sayHere));
  board.elements.pack.addEventListener('input', soon);

  board.addEventListener('click', event => {
    const link = event.target.closest('[data-line]');
    if (link) { event.preventDefault(); goTo(Number(link.dataset.line)); }
    const drawn = event.target.closest('[name="gear"]');
    if (drawn) { event.preventDefault(); gear = drawn.value; look(); }
  });

  board.addEventListener('submit', event => {
    if (event.submitter?.value === 'check') { event.preventDefault(); clearTimeout(waiting); look(); }
    else sending = event.submitter?.value !== 'download';
  });

  addEventListener('beforeunload', event => { if (!sending && area.value !== saved) event.preventDefault(); });
  addEventListener('pageshow', () => { sending = false; });

  document.querySelectorAll('.undoing, .ways, #typing-help, #gutter').forEach(each => { each.hidden = false; });
  the('numbered').hidden = true;
  buttons();
  number();
  look();
};

if (board) start();

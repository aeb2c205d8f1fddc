// Turns the drawing at true relative speeds: marks run along the rims seen from the side, wheels turn seen from the end. It
// never begins by itself; where motion is not wanted, each press turns the input on by an eighth instead.
(() => {
  'use strict';
  const MARKS = 6;
  // Fastest of all, in turns a second: no rim then shows more than three marks a second.
  const FASTEST = 0.4;
  const PACES = [0.25, 0.5, 1];
  const FEW = matchMedia('(prefers-reduced-motion: reduce)');

  let playing = false;
  let pace = 1;
  let turned = 0;
  let last = 0;
  let rims = [];
  let wheels = [];
  let unit = FASTEST;

  const tool = name => document.querySelector(`[data-tool=${name}]`);

  const read = () => {
    const svg = document.querySelector('.board svg.drawing');
    const number = (element, name) => Number(element.getAttribute('data-' + name));
    rims = [...svg.querySelectorAll('.rolling')].map(path => ({
      path, turns: number(path, 'turns'), left: number(path, 'left'), right: number(path, 'right'),
      axis: number(path, 'axis'), outer: number(path, 'outer'), inner: number(path, 'inner'),
    }));
    wheels = [...svg.querySelectorAll('.spinning[data-turns]')].map(group => ({
      group, turns: number(group, 'turns'), x: number(group, 'x'), y: number(group, 'y'),
    }));
    const most = Math.max(0, ...[...rims, ...wheels].map(each => Math.abs(each.turns)));
    unit = FASTEST / Math.max(1, most);
    const button = tool('turn');
    const still = most === 0;
    for (const name of ['turn', 'slower', 'faster']) tool(name).hidden = still || name !== 'turn' && FEW.matches;
    button.textContent = FEW.matches ? 'Turn on by an eighth' : playing ? 'Pause' : 'Turn it';
    button.setAttribute('aria-pressed', playing && !FEW.matches);
    tool('slower').disabled = pace === 0;
    tool('faster').disabled = pace === PACES.length - 1;
  };

  const paint = () => {
    for (const { path, turns, left, right, axis, outer, inner } of rims) {
      let lines = '';
      for (let mark = 0; mark < MARKS; mark++) {
        const angle = ((turned * turns + mark / MARKS) % 1 + 1) % 1;
        if (angle > 0.5) continue;
        const up = Math.cos(angle * 2 * Math.PI) * outer;
        if (Math.abs(up) < inner) continue;
        lines += `M${left} ${(axis - up).toFixed(1)}H${right}`;
      }
      path.setAttribute('d', lines);
    }
    for (const { group, turns, x, y } of wheels) {
      group.setAttribute('transform', `rotate(${(turned * turns * 360 % 360).toFixed(2)} ${x} ${y})`);
    }
  };

  const frame = now => {
    if (!playing) return;
    turned += Math.min(100, now - last) / 1000 * unit * PACES[pace];
    last = now;
    paint();
    requestAnimationFrame(frame);
  };

  const say = words => { document.querySelector('.pace').textContent = words; };

  const turn = () => {
    if (FEW.matches) {
      turned += 1 / 8;
      paint();
      say('The input has turned on by an eighth.');
      return;
    }
    playing = !playing;
    last = performance.now();
    if (playing) requestAnimationFrame(frame);
    read();
  };

  const change = by => {
    pace = Math.max(0, Math.min(PACES.length - 1, pace + by));
    say(['Slow', 'Middling', 'Fast'][pace]);
    read();
  };

  const tools = { turn, slower: () => change(-1), faster: () => change(1) };
  document.addEventListener('click', event => {
    const pressed = event.target instanceof Element && event.target.closest('[data-tool]');
    if (pressed && tools[pressed.dataset.tool]) tools[pressed.dataset.tool]();
  });
  document.addEventListener('sheet', () => {
    read();
    if (playing || turned) paint();
  });
  FEW.addEventListener('change', () => {
    playing = false;
    read();
  });
  if (document.querySelector('.board svg.drawing')) read();
})();

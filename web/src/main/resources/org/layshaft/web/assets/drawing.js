// Looking at the drawing: nearer, farther, about; what a part is; sleeves dragged; PNG for a handout. All of it works from
// delegated events, since the sheet is replaced whenever something is followed. Without this script links do the same.
(() => {
  'use strict';
  const STEP = 1.25;
  const MOST = 8;
  const DRAG = 14;

  const canvas = () => document.querySelector('.board .canvas');
  const svgOf = box => box.querySelector('svg.drawing');
  const closest = (event, css) => (event.target instanceof Element ? event.target.closest(css) : null);

  // Looked at: the drawing is made wider than its canvas, which scrolls as any such box does. Kept from sheet to sheet.
  let zoom = 0;

  const natural = box => box.clientWidth - parseFloat(getComputedStyle(box).paddingLeft) * 2;

  const widthAt = (box, factor) => {
    const [, , width, height] = svgOf(box).getAttribute('viewBox').split(' ').map(Number);
    const whole = Math.min(natural(box), innerHeight * 0.75 * width / height);
    return whole * factor;
  };

  const look = (factor, at) => {
    const box = canvas();
    const svg = svgOf(box);
    const before = svg.getBoundingClientRect();
    const point = at || { x: box.getBoundingClientRect().left + box.clientWidth / 2, y: box.getBoundingClientRect().top + box.clientHeight / 2 };
    const across = (point.x - before.left) / before.width;
    const down = (point.y - before.top) / before.height;
    zoom = Math.min(MOST, Math.max(1, factor));
    apply(box);
    const after = svg.getBoundingClientRect();
    box.scrollLeft += after.left + across * after.width - point.x;
    box.scrollTop += after.top + down * after.height - point.y;
  };

  const apply = box => {
    const svg = svgOf(box);
    box.classList.toggle('looked', zoom > 0);
    svg.style.width = zoom ? widthAt(box, zoom) + 'px' : '';
    document.querySelector('[data-tool=farther]').disabled = zoom === 1;
  };

  const nearer = () => look((zoom || svgOf(canvas()).getBoundingClientRect().width / widthAt(canvas(), 1)) * STEP);
  const farther = () => look((zoom || svgOf(canvas()).getBoundingClientRect().width / widthAt(canvas(), 1)) / STEP);
  const tools = { nearer, farther, fit: () => look(1) };

  document.addEventListener('click', event => {
    const tool = closest(event, '[data-tool]');
    if (tool && tools[tool.dataset.tool]) tools[tool.dataset.tool]();
  });

  document.addEventListener('keydown', event => {
    if (event.key === 'Escape') hide();
    if (!closest(event, '.canvas') || event.ctrlKey || event.metaKey || event.altKey) return;
    const wanted = { '+': nearer, '=': nearer, '-': farther, '0': tools.fit }[event.key];
    if (wanted) {
      event.preventDefault();
      wanted();
    }
  });

  // A wheel scrolls the page, as everywhere; with Ctrl, which a pinch on a touch pad sends as well, it looks nearer.
  document.addEventListener('wheel', event => {
    const box = closest(event, '.board .canvas');
    if (!box) return;
    if (event.ctrlKey) {
      event.preventDefault();
      look((zoom || 1) * Math.exp(-event.deltaY / 300), { x: event.clientX, y: event.clientY });
    } else if (zoom && !event.shiftKey && Math.abs(event.deltaY) > Math.abs(event.deltaX)) {
      event.preventDefault();
      scrollBy(0, event.deltaMode === 1 ? event.deltaY * 30 : event.deltaY);
    }
  }, { passive: false });

  // Two fingers look nearer and move about; one scrolls, as everywhere.
  let pinch = null;
  const spread = touches => Math.hypot(touches[0].clientX - touches[1].clientX, touches[0].clientY - touches[1].clientY);
  document.addEventListener('touchstart', event => {
    pinch = event.touches.length === 2 && closest(event, '.board .canvas') ? { spread: spread(event.touches), zoom: zoom || 1 } : null;
  }, { passive: true });
  document.addEventListener('touchmove', event => {
    if (!pinch || event.touches.length !== 2 || !event.cancelable) return;
    event.preventDefault();
    const [one, other] = event.touches;
    look(pinch.zoom * spread(event.touches) / pinch.spread, { x: (one.clientX + other.clientX) / 2, y: (one.clientY + other.clientY) / 2 });
  }, { passive: false });

  // Dragging: a sleeve, or its fork or rail, goes to its next place; the paper goes about.
  let drag = null;
  const arrows = member => [...document.querySelectorAll('.drawing a.move')].filter(each =>
    each.dataset.member === member || (each.dataset.with || '').split(' ').includes(member));
  const sliding = event => {
    const part = closest(event, '.drawing .part');
    return part && arrows(part.dataset.part).length ? part : null;
  };

  document.addEventListener('pointerdown', event => {
    const box = closest(event, '.board .canvas');
    if (!box || event.button || event.pointerType === 'touch' && !sliding(event)) return;
    drag = { box, x: event.clientX, y: event.clientY, left: box.scrollLeft, top: box.scrollTop, part: sliding(event), far: false };
  });

  document.addEventListener('pointermove', event => {
    if (!drag) return;
    const by = { x: event.clientX - drag.x, y: event.clientY - drag.y };
    if (!drag.far && Math.hypot(by.x, by.y) < 5) return;
    drag.far = true;
    hide();
    if (drag.part) {
      const scale = svgOf(drag.box).getBoundingClientRect().width / svgOf(drag.box).viewBox.baseVal.width;
      const most = 22;
      drag.part.setAttribute('transform', `translate(${Math.max(-most, Math.min(most, by.x / scale))} 0)`);
    } else if (zoom) {
      drag.box.classList.add('dragged');
      drag.box.scrollLeft = drag.left - by.x;
      drag.box.scrollTop = drag.top - by.y;
    }
  });

  const drop = event => {
    if (!drag) return;
    const was = drag;
    drag = null;
    was.box.classList.remove('dragged');
    if (was.far) {
      // What was dragged was not meant to be followed.
      const swallow = click => {
        click.preventDefault();
        click.stopPropagation();
      };
      addEventListener('click', swallow, true);
      setTimeout(() => removeEventListener('click', swallow, true));
    }
    if (!was.part) return;
    was.part.removeAttribute('transform');
    const by = event.clientX - was.x;
    if (event.type === 'pointerup' && was.far && Math.abs(by) > DRAG) {
      const arrow = arrows(was.part.dataset.part).find(each => each.dataset.way === (by < 0 ? 'front' : 'rear'));
      if (arrow) setTimeout(() => arrow.dispatchEvent(new MouseEvent('click', { bubbles: true, cancelable: true })));
    }
  };
  document.addEventListener('pointerup', drop);
  document.addEventListener('pointercancel', drop);
  document.addEventListener('dragstart', event => { if (closest(event, '.drawing')) event.preventDefault(); });

  // What a part is: its title becomes a panel that stays while it is pointed at, and goes at Escape.
  let shown = null;
  let leaving = 0;
  const tip = () => document.getElementById('tip');

  function hide() {
    clearTimeout(leaving);
    if (tip()) tip().hidden = true;
    if (shown) shown.removeAttribute('aria-describedby');
    shown = null;
  }

  const show = part => {
    clearTimeout(leaving);
    if (part === shown) return;
    hide();
    const words = part.dataset.says;
    if (!words) return;
    shown = part;
    const [name, ...facts] = words.split(', ');
    const heading = document.createElement('strong');
    heading.textContent = name;
    const panel = tip();
    panel.replaceChildren(heading, ...facts.map(fact => {
      const line = document.createElement('span');
      line.textContent = fact;
      return line;
    }));
    panel.hidden = false;
    part.setAttribute('aria-describedby', 'tip');
    const board = panel.parentElement.getBoundingClientRect();
    const box = part.getBoundingClientRect();
    const left = Math.max(4, Math.min(box.left - board.left + box.width / 2 + 12, board.width - panel.offsetWidth - 4));
    const beneath = box.bottom - board.top + 6;
    const top = beneath + panel.offsetHeight < board.height ? beneath : Math.max(4, box.top - board.top - panel.offsetHeight - 6);
    panel.style.left = left + 'px';
    panel.style.top = top + 'px';
  };

  const leave = () => {
    clearTimeout(leaving);
    leaving = setTimeout(hide, 250);
  };

  document.addEventListener('pointerover', event => {
    if (drag && drag.far || event.pointerType === 'touch') return;
    const part = closest(event, '.drawing .part');
    if (part) show(part);
    else if (closest(event, '#tip')) clearTimeout(leaving);
    else if (shown) leave();
  });
  document.addEventListener('focusin', event => {
    const part = closest(event, '.drawing .part');
    if (part && part.matches(':focus-visible')) show(part);
    else if (shown && !closest(event, '#tip')) hide();
  });

  // PNG: the file of the drawing, painted larger than on the screen, for print.
  document.addEventListener('click', event => {
    const link = closest(event, 'a[data-png]');
    if (!link) return;
    event.preventDefault();
    const image = new Image();
    image.onload = () => {
      const scale = 2400 / image.naturalWidth;
      const paper = document.createElement('canvas');
      paper.width = Math.round(image.naturalWidth * scale);
      paper.height = Math.round(image.naturalHeight * scale);
      paper.getContext('2d').drawImage(image, 0, 0, paper.width, paper.height);
      paper.toBlob(blob => {
        const file = document.createElement('a');
        file.href = URL.createObjectURL(blob);
        file.download = link.download;
        file.click();
        setTimeout(() => URL.revokeObjectURL(file.href), 10000);
      });
    };
    image.src = link.getAttribute('href');
  });

  // A new sheet: its tools come out, and titles move to where the panel takes them from.
  let dressed = null;
  const dress = () => {
    const box = canvas();
    if (!box || svgOf(box) === dressed) return;
    dressed = svgOf(box);
    shown = null;
    document.querySelector('.tools').hidden = false;
    document.querySelectorAll('a[data-png]').forEach(link => { link.hidden = false; });
    dressed.querySelectorAll('.part').forEach(part => {
      const title = part.querySelector(':scope > title');
      if (!title) return;
      part.dataset.says = title.textContent;
      if (part.hasAttribute('aria-label')) part.setAttribute('aria-label', title.textContent);
      title.remove();
      if (arrows(part.dataset.part).length) part.classList.add('sliding');
    });
    if (zoom) apply(box);
    document.dispatchEvent(new CustomEvent('sheet'));
  };
  new MutationObserver(dress).observe(document.getElementById('main'), { childList: true });
  dress();
})();

// Offers whole questions while somebody types. Without this script the field is a plain one.
(() => {
  'use strict';
  const PAUSE_MS = 150;
  let pause;
  let latest = 0;

  const offer = async field => {
    const turn = ++latest;
    let completions;
    try {
      const reply = await fetch(field.dataset.complete + encodeURIComponent(field.value));
      completions = reply.ok ? (await reply.json()).completions : [];
    } catch {
      return;
    }
    if (turn !== latest || !field.isConnected) return;
    field.list.replaceChildren(...completions.map(text => {
      const option = document.createElement('option');
      option.value = text;
      return option;
    }));
  };

  document.addEventListener('input', event => {
    const field = event.target;
    if (!field.matches('[data-complete]')) return;
    clearTimeout(pause);
    if (field.value.trim().length < 2 || [...field.list.options].some(option => option.value === field.value)) return;
    pause = setTimeout(() => offer(field), PAUSE_MS);
  });
})();

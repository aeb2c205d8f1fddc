// Light or dark as somebody chose on this machine, before anything is painted; without a choice, as the system has it.
(() => {
  'use strict';
  const KEY = 'layshaft-look';
  const SCHEME = /\(prefers-color-scheme:\s*(light|dark)\)/;

  const chosen = () => {
    try {
      return localStorage.getItem(KEY) || 'system';
    } catch {
      return 'system';
    }
  };

  const keep = look => {
    try {
      localStorage.setItem(KEY, look);
    } catch {
      // it then holds for this page
    }
  };

  const known = new Map();

  const rulesOfScheme = () => {
    for (const sheet of document.styleSheets) {
      for (const rule of sheet.cssRules) {
        if (rule.media && !known.has(rule) && SCHEME.test(rule.media.mediaText)) known.set(rule, rule.media.mediaText);
      }
    }
    return known;
  };

  const apply = look => {
    document.documentElement.style.colorScheme = look === 'system' ? '' : look;
    rulesOfScheme().forEach((written, rule) => {
      rule.media.mediaText =
        look === 'system' ? written : written.replace(SCHEME, (all, scheme) => (scheme === look ? '(min-width: 0)' : '(max-width: 0)'));
    });
  };

  let look = chosen();
  if (look !== 'system') apply(look);
  window.addEventListener('layshaft:styled', () => apply(look));

  document.addEventListener('DOMContentLoaded', () => {
    const choice = document.getElementById('look');
    choice.value = look;
    choice.closest('.look').hidden = false;
    choice.addEventListener('change', () => {
      look = choice.value;
      keep(look);
      apply(look);
    });
  });
})();

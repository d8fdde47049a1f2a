// What the set-up page does beyond posting its form: what is typed is kept in the browser, arrow keys
// in a field step it, parts of the drawing can be dragged, and a draft that no longer fits the form
// says so. Everything here can also be done with the buttons, and the page works without it.
(() => {
  'use strict';
  const main = () => document.getElementById('main');
  const live = () => document.getElementById('live');
  const form = () => document.getElementById('setup');
  if (!live() || !form() || !window.htmx) return;
  document.documentElement.classList.add('scripted');

  // A verdict that is older than the form must never look like its verdict.
  const age = () => {
    live().classList.add('is-stale');
    document.getElementById('now').classList.add('is-stale');
  };
  const stale = () => {
    age();
    const stale = live().querySelector('.stale');
    if (stale) stale.textContent = stale.dataset.words;
  };
  document.body.addEventListener('htmx:afterSwap', (e) => {
    if (e.detail.target.id !== 'live') return;
    e.detail.target.classList.remove('is-stale');
    document.getElementById('now').classList.remove('is-stale');
  });
  for (const failed of ['htmx:sendError', 'htmx:responseError', 'htmx:timeout']) {
    document.body.addEventListener(failed, stale);
  }
  document.body.addEventListener('htmx:afterSettle', () => {
    for (const error of form().querySelectorAll('.error')) {
      const field = document.getElementById(error.id.replace(/-error$/, ''));
      const wrong = error.textContent.trim() !== '';
      error.parentElement.classList.toggle('bad', wrong);
      if (!field) continue;
      if (wrong) field.setAttribute('aria-invalid', 'true');
      else field.removeAttribute('aria-invalid');
    }
  });

  // What was typed stays in this browser, under the address of the page it was typed on.
  const key = 'set-up ' + location.pathname + location.search;
  const token = '_csrf';
  const entered = () => {
    const values = {};
    for (const [name, value] of new FormData(form())) if (name !== token) values[name] = value;
    return values;
  };
  const keep = () => {
    try {
      localStorage.setItem(key, JSON.stringify(entered()));
    } catch (full) { /* a browser that keeps nothing still has the page */ }
  };
  const kept = () => {
    try {
      return JSON.parse(localStorage.getItem(key));
    } catch (spoilt) {
      return null;
    }
  };
  const differs = (values) => {
    const here = entered();
    return Object.keys({ ...values, ...here }).some((n) => (values[n] || '') !== (here[n] || ''));
  };
  // The page is written anew by the service with other values, without leaving its address.
  const rewrite = (values, focus) => {
    const csrf = form().elements[token];
    const sent = csrf ? { ...values, [token]: csrf.value } : values;
    return htmx
      .ajax('POST', '/', { values: sent, source: main(), target: '#main', select: '#main', swap: 'outerHTML' })
      .then(() => {
        keep();
        if (focus) document.querySelector(focus)?.focus();
      });
  };
  const offer = () => {
    const before = kept();
    if (!form().dataset.fresh) {
      keep();
      return;
    }
    if (!before || !differs(before)) return;
    const how = performance.getEntriesByType('navigation')[0]?.type;
    if (how === 'reload' || how === 'back_forward') {
      rewrite({ ...before, draft: 'yes' });
    } else {
      const note = document.querySelector('.resume[hidden]');
      if (note) note.hidden = false;
    }
  };
  document.addEventListener('input', (e) => {
    if (e.target.form !== form()) return;
    age();
    keep();
  });
  document.addEventListener('change', (e) => {
    if (e.target.form === form()) keep();
  });
  document.addEventListener('click', (e) => {
    const button = e.target.closest('button');
    if (button?.dataset.resume) {
      rewrite({ ...kept(), draft: 'yes' });
    } else if (button?.dataset.inPlace) {
      e.preventDefault();
      rewrite({ ...entered(), [button.name]: button.value }, 'button[name="' + button.name + '"]');
    }
    // A field that is folded away shows when a link leads to it.
    const link = e.target.closest('a[href^="#f-"]');
    const field = link && document.getElementById(link.getAttribute('href').slice(1));
    if (!field) return;
    e.preventDefault();
    for (let d = field.closest('details'); d; d = d.parentElement.closest('details')) d.open = true;
    field.focus();
  });
  window.addEventListener('pageshow', (e) => {
    if (!e.persisted) offer();
  });

  // Steps pressed while an answer is awaited are added up, so that none is lost.
  let drag = null;
  const steps = new Map();
  let busy = false;
  let sent = null;
  const step = (pressed) => {
    const [path, sign] = pressed.split(' ');
    steps.set(path, (steps.get(path) || 0) + (sign === '-' ? -1 : 1));
    send();
  };
  const send = () => {
    if (busy) return;
    const next = [...steps].find(([, by]) => by !== 0);
    if (next) {
      steps.delete(next[0]);
      sent = { step: next[0] + ' ' + (next[1] < 0 ? '' : '+') + next[1] };
    } else if (drag?.path && drag.by !== drag.sent) {
      drag.sent = drag.by;
      sent = { drag: drag.path, from: drag.from, by: String(drag.by) };
    } else {
      return;
    }
    busy = true;
    age();
    htmx.trigger(live(), 'moved');
  };
  document.body.addEventListener('htmx:configRequest', (e) => {
    if (e.detail.elt !== live() || e.detail.triggeringEvent?.type !== 'moved') return;
    for (const name in sent) e.detail.parameters[name] = sent[name];
  });
  document.body.addEventListener('htmx:afterRequest', (e) => {
    if (e.detail.requestConfig?.triggeringEvent?.type !== 'moved') return;
    busy = false;
    keep();
    send();
  });
  document.addEventListener('click', (e) => {
    const pressed = e.target.closest('#live button[name="step"]');
    if (!pressed) return;
    e.preventDefault();
    step(pressed.value);
  });
  document.addEventListener('keydown', (e) => {
    if (e.target.form !== form()) return;
    const sign = e.key === 'ArrowUp' ? '+' : e.key === 'ArrowDown' ? '-' : '';
    const handled = live().querySelector('[data-path="' + CSS.escape(e.target.name || '') + '"]');
    if (!sign || e.target.tagName !== 'INPUT' || !handled) return;
    e.preventDefault();
    step(e.target.name + ' ' + sign);
  });

  // Which way a part moves in each view, and what stands in the form for it.
  const ways = {
    plan: { cutter: [{ axis: 'y', sign: -1, part: 'cutter' }] },
    end: {
      cutter: [{ axis: 'x', sign: 1, part: 'cutter' }, { axis: 'y', sign: 1, part: 'depth' }],
      stock: [{ axis: 'y', sign: 1, part: 'stock' }],
      packing: [{ axis: 'y', sign: 1, part: 'packing' }],
    },
  };

  const field = (path) => form().querySelector('[name="' + path + '"]');
  const start = (e) => {
    const grabbed = e.target.closest('[data-part]');
    const view = e.target.closest('[data-view]');
    const svg = e.target.closest('svg[data-per-m]');
    const way = grabbed && view && svg && ways[view.dataset.view]?.[grabbed.dataset.part];
    if (!way) return;
    e.preventDefault();
    const same = [...svg.querySelectorAll('[data-part="packing"]')].indexOf(grabbed);
    const perM = Number(svg.dataset.perM) * svg.getBoundingClientRect().width
      / svg.viewBox.baseVal.width;
    drag = { x: e.clientX, y: e.clientY, way, nth: Math.max(0, same), perM, sent: 0 };
  };
  const move = (e) => {
    if (!drag || drag.over) return;
    const by = { x: e.clientX - drag.x, y: e.clientY - drag.y };
    if (!drag.axis) {
      if (Math.max(Math.abs(by.x), Math.abs(by.y)) < 4) return;
      const along = Math.abs(by.x) > Math.abs(by.y) ? 'x' : 'y';
      drag.axis = drag.way.find((w) => w.axis === along) || drag.way[0];
      const handle = live().querySelectorAll('[data-path][data-part="' + drag.axis.part + '"]')[drag.nth];
      if (!handle || !field(handle.dataset.path)) { drag = null; return; }
      drag.path = handle.dataset.path;
      drag.from = field(drag.path).value;
      drag.sign = drag.axis.sign * Number(handle.dataset.sign);
    }
    drag.by = drag.sign * by[drag.axis.axis] / drag.perM;
    send();
  };
  document.addEventListener('pointerdown', (e) => {
    if (e.target.closest('#live')) start(e);
  });
  document.addEventListener('pointermove', move);
  for (const end of ['pointerup', 'pointercancel']) {
    document.addEventListener(end, () => {
      send();
      if (drag) drag.over = true;
    });
  }
})();

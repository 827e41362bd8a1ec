// Puts what was typed before signing in back into the form it was typed in; the person sends it.
(() => {
  const kept = document.querySelector("[data-kept]");
  if (!kept) return;
  const typed = Array.from(kept.querySelectorAll("[data-typed]"), (one) => [one.dataset.typed, one.textContent]);
  const values = (name) => typed.filter(([field]) => field === name).map(([, value]) => value);
  const controls = (form) => Array.from(form.elements).filter((one) => one.name && one.type !== "file");
  const isHidden = (one) => one.type === "hidden" && one.name !== "_csrf" && one.name !== "id";

  // a page may have one form to each thing: the one is meant that names the same things
  const agrees = (form) => controls(form).filter(isHidden).every((one) => values(one.name).includes(one.value));
  const forms = Array.from(document.querySelectorAll("form[method=post]")).filter(
    (form) => new URL(form.action).pathname === kept.dataset.kept);
  const form = forms.find(agrees) || (forms.length === 1 ? forms[0] : null);
  if (!form) return;

  const left = new Map();
  for (const one of controls(form)) {
    const given = values(one.name);
    if (one.name === "_csrf" || one instanceof HTMLButtonElement) continue;
    if (one.type === "checkbox" || one.type === "radio") {
      one.checked = given.includes(one.value);
    } else if (given.length > 0) {
      const nth = left.get(one.name) || 0;
      one.value = given[Math.min(nth, given.length - 1)];
      left.set(one.name, nth + 1);
    }
  }
  const folded = form.closest("details");
  if (folded) folded.open = true;
  const first = controls(form).find((one) => one.type !== "hidden" && !one.disabled);
  if (first) first.focus();
})();

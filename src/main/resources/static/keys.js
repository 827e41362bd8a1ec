// Keys for those who do without a mouse: "/" searches, "g" and a letter goes to a page, "?" lists the keys.
(() => {
  const keys = document.getElementById("keys");
  let goes = false;

  const isTyping = (target) => target instanceof Element && target.closest("input, textarea, select, [contenteditable]");

  const search = () => {
    const box = document.querySelector("main input[name=q]") || document.getElementById("search");
    if (box) {
      box.focus();
      box.select();
    }
    return Boolean(box);
  };

  const showKeys = () => {
    if (keys && !keys.open) {
      keys.showModal();
    }
    return Boolean(keys);
  };

  const go = (letter) => {
    const link = document.querySelector(`[data-key="g ${letter}"]`);
    if (link) {
      link.click();
    }
    return Boolean(link);
  };

  const press = (key) => {
    if (goes) {
      goes = false;
      return go(key);
    }
    if (key === "g") {
      goes = true;
      return true;
    }
    return key === "/" ? search() : key === "?" && showKeys();
  };

  document.addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey || event.key === "Shift" || isTyping(event.target)) {
      return;
    }
    if (press(event.key)) {
      event.preventDefault();
    }
  });

  for (const button of document.querySelectorAll("[data-shows-keys]")) {
    button.hidden = false;
    button.addEventListener("click", showKeys);
  }
  for (const button of document.querySelectorAll("[data-prints]")) {
    button.hidden = false;
    button.addEventListener("click", () => window.print());
  }
})();

// What scrolls sideways is reached by keys too, unless something in it is reached already.
(() => {
  const parts = document.querySelectorAll(".scroll, pre");
  const reaches = "a[href], button, input, select, textarea, summary, [tabindex]";
  const look = () => {
    for (const part of parts) {
      const scrolls = part.scrollWidth > part.clientWidth;
      if (scrolls && !part.hasAttribute("tabindex") && !part.querySelector(reaches)) {
        part.tabIndex = 0;
        part.dataset.scrolls = "";
      } else if (!scrolls && "scrolls" in part.dataset) {
        part.removeAttribute("tabindex");
        delete part.dataset.scrolls;
      }
    }
  };
  look();
  window.addEventListener("resize", look);
  document.addEventListener("toggle", look, true);
})();

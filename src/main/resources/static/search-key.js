// "/" puts the cursor into the search box, unless something is being typed already.
document.addEventListener("keydown", (event) => {
  const typing = event.target.closest("input, textarea, select, [contenteditable]");
  if (event.key === "/" && !typing && !event.ctrlKey && !event.metaKey && !event.altKey) {
    const box = document.querySelector("main input[name=q]") || document.getElementById("search");
    if (box) {
      event.preventDefault();
      box.focus();
      box.select();
    }
  }
});

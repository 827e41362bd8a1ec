// Scanners that type send the separators of a label as Ctrl and a character, which browsers throw away or take for
// commands of their own. In fields for scans they are put in as pictures, which the server reads as what they show.
(() => {
  const pictures = { "]": "\u241D", "^": "\u241E", "d": "\u2404", "\\": "\u241C" };

  document.addEventListener("keydown", (event) => {
    const field = event.target;
    const picture = event.ctrlKey && !event.altKey && !event.metaKey && pictures[event.key.toLowerCase()];
    if (picture && field instanceof HTMLInputElement && "scan" in field.dataset) {
      event.preventDefault();
      field.setRangeText(picture, field.selectionStart, field.selectionEnd, "end");
    }
  });
})();

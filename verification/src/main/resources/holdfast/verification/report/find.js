(function () {
  "use strict";
  const form = document.getElementById("find"), found = document.getElementById("found");
  const rows = Array.from(document.querySelectorAll("main tbody tr, main li"));
  const sections = Array.from(document.querySelectorAll("main details"));
  const open = sections.map(section => section.open);
  form.hidden = false;
  form.addEventListener("submit", event => {
    event.preventDefault();
    const words = form.elements.words.value.trim().toLowerCase();
    let count = 0;
    rows.forEach(row => { row.hidden = !row.textContent.toLowerCase().includes(words); count += row.hidden ? 0 : 1; });
    sections.forEach(section => {
      const some = section.querySelector("tbody tr:not([hidden]), li:not([hidden])") !== null;
      section.hidden = !some;
      section.open = some && words !== "";
    });
    found.textContent = count + " of " + rows.length + " rows";
  });
  form.addEventListener("reset", () => {
    rows.forEach(row => { row.hidden = false; });
    sections.forEach((section, i) => { section.hidden = false; section.open = open[i]; });
    found.textContent = "";
  });
})();

"use strict";
// Shows the findings that fit every choice, and says how many those are.
(function () {
  const form = document.querySelector(".filters");
  const findings = Array.from(document.querySelectorAll("#finding-list .finding"));
  const shown = document.getElementById("shown");
  const choices = ["equipment", "kind", "severity", "drawing"].map(name => ({ name: name, by: document.getElementById("by-" + name) }));

  function apply() {
    let n = 0;
    for (const finding of findings) {
      const fits = choices.every(c => c.by.value === "" || finding.dataset[c.name].split(" ").includes(c.by.value));
      finding.hidden = !fits;
      if (fits) n++;
    }
    shown.textContent = n === findings.length ? "All " + n + " shown" : n + " of " + findings.length + " shown";
  }

  function target() {
    const wanted = location.hash ? document.getElementById(decodeURIComponent(location.hash.slice(1))) : null;
    if (!wanted || !wanted.hidden || !wanted.classList.contains("finding")) return;
    form.reset();
    wanted.scrollIntoView();
  }

  form.addEventListener("change", apply);
  form.addEventListener("submit", event => event.preventDefault());
  form.addEventListener("reset", function () {
    for (const c of choices) c.by.value = "";
    apply();
  });
  window.addEventListener("hashchange", target);
  apply();
})();

// Paper cannot be unfolded.
window.addEventListener("beforeprint", function () {
  for (const fold of document.querySelectorAll("details:not(.circuits)")) fold.open = true;
});

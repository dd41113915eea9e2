"use strict";
// Finds equipment by any way of writing its name: LP2A finds LP-2A.
(function () {
  const MOST = 12;
  const form = document.querySelector(".search");
  const input = document.getElementById("search");
  const list = document.getElementById("hits");
  const count = document.getElementById("hits-count");
  const plain = text => text.toUpperCase().normalize("NFKD").replace(/[^\p{L}\p{N}]+/gu, "");
  let all = null;

  function index() {
    if (!all) all = Array.from(document.querySelectorAll("#equipment .piece"), p => ({
      id: p.id, name: p.dataset.name, about: p.querySelector(".stands b") ? p.querySelector(".stands b").textContent : "source",
      key: plain(p.dataset.name), rest: plain(p.dataset.words)
    }));
    return all;
  }

  function rank(entry, key) {
    if (entry.key === key) return 0;
    if (entry.key.startsWith(key)) return 1;
    if (entry.key.includes(key)) return 2;
    return entry.rest.includes(key) ? 3 : 9;
  }

  function search() {
    const key = plain(input.value);
    form.classList.toggle("open", key !== "");
    list.replaceChildren();
    if (key === "") { count.textContent = ""; return; }
    const hits = index().map((e, i) => ({ e: e, i: i, r: rank(e, key) })).filter(h => h.r < 9)
      .sort((a, b) => a.r - b.r || a.i - b.i);
    count.textContent = hits.length === 0 ? "Nothing by that name."
      : hits.length <= MOST ? hits.length + " found" : MOST + " of " + hits.length + " shown: write more of the name";
    for (const hit of hits.slice(0, MOST)) {
      const item = document.createElement("li"), link = document.createElement("a"), about = document.createElement("small");
      link.href = "#" + encodeURIComponent(hit.e.id);
      link.textContent = hit.e.name;
      about.textContent = hit.e.about;
      link.append(" ", about);
      item.append(link);
      list.append(item);
    }
  }

  function shut() { form.classList.remove("open"); }

  input.addEventListener("input", search);
  input.addEventListener("focus", search);
  form.addEventListener("submit", function (event) {
    event.preventDefault();
    const first = list.querySelector("a");
    if (first) first.click();
  });
  form.addEventListener("keydown", function (event) {
    const links = Array.from(list.querySelectorAll("a"));
    const at = links.indexOf(document.activeElement);
    if (event.key === "ArrowDown" && links.length) links[Math.min(at + 1, links.length - 1)].focus();
    else if (event.key === "ArrowUp" && at >= 0) (at === 0 ? input : links[at - 1]).focus();
    else if (event.key === "Escape") { shut(); input.focus(); shut(); }
    else return;
    event.preventDefault();
  });
  list.addEventListener("click", shut);
  document.addEventListener("click", event => { if (!form.contains(event.target)) shut(); });
  document.addEventListener("keydown", function (event) {
    const typing = /^(INPUT|SELECT|TEXTAREA)$/.test(document.activeElement.tagName);
    if (event.key !== "/" || typing || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    input.focus();
  });
})();

"use strict";
// The equipment's sheet at the side: a copy of its article, opened from any link to it.
(function () {
  const sheet = document.getElementById("sheet");
  const body = document.getElementById("sheet-body");
  let opener = null;
  let shown = "";

  function open(id, from) {
    const article = document.getElementById(id);
    if (!article || !article.classList.contains("piece")) return false;
    const copy = article.cloneNode(true);
    copy.removeAttribute("id");
    body.replaceChildren(copy);
    const heading = copy.querySelector("h3");
    sheet.setAttribute("aria-label", heading.textContent);
    if (sheet.hidden) opener = from || document.activeElement;
    sheet.hidden = false;
    sheet.scrollTop = 0;
    sheet.focus({ preventScroll: true });
    shown = id;
    document.dispatchEvent(new CustomEvent("equipment", { detail: { id: id, show: false } }));
    return true;
  }

  function close() {
    if (sheet.hidden) return;
    sheet.hidden = true;
    body.replaceChildren();
    if (opener && opener.isConnected) opener.focus({ preventScroll: true });
  }

  document.addEventListener("click", function (event) {
    const link = event.target.closest("a[href^='#']");
    if (!link || event.ctrlKey || event.metaKey || event.shiftKey) return;
    const id = decodeURIComponent(link.getAttribute("href").slice(1));
    if (open(id, link)) event.preventDefault();
    else if (sheet.contains(link)) close();
  });
  document.addEventListener("keydown", function (event) {
    if (event.key === "Escape" && !event.defaultPrevented) close();
  });
  document.getElementById("sheet-close").addEventListener("click", close);
  document.getElementById("sheet-find").addEventListener("click", function () {
    const id = shown;
    close();
    document.dispatchEvent(new CustomEvent("equipment", { detail: { id: id, show: true } }));
  });
  window.addEventListener("load", function () {
    if (location.hash.startsWith("#eq-")) open(decodeURIComponent(location.hash.slice(1)), null);
  });
  for (const part of document.querySelectorAll("[data-script]")) part.hidden = false;
})();
